import { createContext, useContext } from 'react'

/** Where on the slip a sentence stands, and which of those there. */
export interface ReadingAt {
  readonly at: string
  readonly text: string
}

/** The sentence that is being read out; null: none is. */
export const ReadingContext = createContext<ReadingAt | null>(null)

/** Whether what is read out now stands here; with `text`, whether it is this very sentence. */
export function useIsRead(at: string, text?: string): '' | undefined {
  const reading = useContext(ReadingContext)
  return reading?.at === at && (text === undefined || reading.text === text) ? '' : undefined
}
