import { useEffect } from 'react'
import { useActions } from '../app-context'

/** Where a key leads anywhere in Rehearse; undefined: it is not one of ours. Up and down are left for scrolling. */
export function stepTarget(key: string, index: number, count: number): number | undefined {
  if (key === 'ArrowRight') return index + 1
  if (key === 'ArrowLeft') return index - 1
  if (key === 'Home') return 0
  return key === 'End' ? count - 1 : undefined
}

/** The same on the tape, which as a slider goes by up, down and whole pages too. */
export function tapeTarget(key: string, index: number, count: number): number | undefined {
  if (key === 'ArrowUp') return index + 1
  if (key === 'ArrowDown') return index - 1
  if (key === 'PageUp') return index + 10
  if (key === 'PageDown') return index - 10
  return stepTarget(key, index, count)
}

/** Keys that step through, wherever the focus is but in something that uses them itself. */
export function useStepKeys(isOn: boolean, index: number, count: number): void {
  const actions = useActions()
  useEffect(() => {
    if (!isOn) return
    const onKey = (event: KeyboardEvent) => {
      const target = event.target instanceof Element ? event.target : null
      const isTaken = target?.closest('input:not([type=checkbox]), select, textarea, [role=slider]') != null
      if (isTaken || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return
      const to = stepTarget(event.key, index, count)
      if (to === undefined) return
      event.preventDefault()
      actions.goToIndex(to)
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [actions, isOn, index, count])
}
