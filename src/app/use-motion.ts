import { useCallback, useState } from 'react'
import type { Run } from '../scene/run'

interface Motion {
  /** 0..1 through the operation, while it isn't run through. */
  readonly t: number
  /** It is run through, by the clock of the picture; null: it stands still. */
  readonly run: Run | null
  /** The picture has run through it. */
  readonly ended: (run: Run) => void
  /** Runs through it from its start. */
  readonly again: () => void
  /** Shows its other end at once. */
  readonly turnOver: () => void
}

/**
 * Runs once through the motion of an operation when it comes to the hook. Nothing moves at the first opening or for people
 * who ask for none: they see how it begins, as the words say it, and turn over to its end. An operation that moves nothing
 * is seen as it is done. `seconds`: how long it takes on the screen; 0: nothing moves.
 */
export function useMotion(id: string, seconds: number, reducedMotion: boolean): Motion {
  const moves = seconds > 0
  const start = (): { id: string; t: number; run: Run | null } => ({
    id,
    t: moves ? 0 : 1,
    run: moves && !reducedMotion ? { seconds } : null,
  })
  const [shown, show] = useState(() => ({ ...start(), run: null as Run | null }))
  if (shown.id !== id) show(start())
  const ended = useCallback(
    (run: Run) => show((was) => (was.run === run ? { ...was, t: 1, run: null } : was)),
    [],
  )
  return {
    t: shown.t,
    run: reducedMotion || shown.id !== id ? null : shown.run,
    ended,
    again: () => show(start()),
    turnOver: () => show((was) => ({ ...was, t: was.t < 1 ? 1 : 0, run: null })),
  }
}
