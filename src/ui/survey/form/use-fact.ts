import { useMemo } from 'react'
import { type StandsIn, standsInFor } from '../../../core/form/stands-in'
import { thingAt } from '../../../core/form/things'
import type { Problem } from '../../../core/kitchen/problem'
import type { AppState } from '../../../state/store'
import { useActions, useApp } from '../../app-context'
import { problemsAt } from './typed-place'

/** One and the same, so that nothing is drawn anew when there is still nothing wrong. */
const NONE: readonly Problem[] = []

/** One fact of the open kitchen: what stands in the file, what is wrong with it, and how it is changed. */
export interface Fact {
  readonly value: unknown
  readonly problems: readonly Problem[]
  /** Puts something else in its place; while `isTyping`, further changes are the same edit. */
  readonly set: (value: unknown, isTyping?: boolean) => void
}

export function useFact(path: string): Fact {
  const value = useApp((s) => thingAt(s.kitchen, path))
  const all = useApp((s) => (s.problems.length === 0 ? NONE : s.problems))
  const problems = useMemo(() => problemsAt(all, path), [all, path])
  const actions = useActions()
  return {
    value,
    problems,
    // What is not known is left out of the file.
    set: (to, isTyping = false) =>
      actions.edit([{ set: path, to: to ?? undefined }], isTyping ? path : undefined),
  }
}

/** What the planner takes for a fact while the file holds nothing there. */
export function useStandIn(path: string, value: unknown): StandsIn | undefined {
  const isOpen = value === undefined || value === null
  return useApp((s) => (isOpen ? standsInFor(s.kitchen, path) : undefined))
}

/** Words read off the state: the same list until one of them changes, whatever else is typed. */
export function useWords(read: (state: AppState) => readonly string[]): readonly string[] {
  const text = useApp((s) => JSON.stringify(read(s)))
  return useMemo(() => JSON.parse(text) as readonly string[], [text])
}

/** The unit bare figures are in, as the kitchen shows lengths. */
export function useLengthUnit(): 'mm' | 'inch' {
  return useApp((s) => (thingAt(s.kitchen, 'display') === 'inch' ? 'inch' : 'mm'))
}
