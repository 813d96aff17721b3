import { useEffect } from 'react'
import { useActions } from '../app-context'

/** Where a key leads anywhere in Rehearse; undefined: it is not one of ours. Whatever goes up or down is left for scrolling. */
export function stepTarget(key: string, index: number): number | undefined {
  if (key === 'ArrowRight') return index + 1
  return key === 'ArrowLeft' ? index - 1 : undefined
}

/** The same on the tape, which as a slider goes by up, down and whole pages too, and to its ends. */
export function tapeTarget(key: string, index: number, count: number): number | undefined {
  if (key === 'ArrowUp') return index + 1
  if (key === 'ArrowDown') return index - 1
  if (key === 'PageUp') return index + 10
  if (key === 'PageDown') return index - 10
  if (key === 'Home') return 0
  return key === 'End' ? count - 1 : stepTarget(key, index)
}

/** What uses the keys itself: the tape, whatever is typed into, and the level that is tried. */
const TAKES_KEYS = 'input:not([type=checkbox]), select, textarea, [role=slider]'
const TAKES_ARROWS = `${TAKES_KEYS}, .trial[data-open]`
/** What scrolls by itself while it has the focus. */
const SCROLLS = `${TAKES_KEYS}, .slip, .flat`

/** Keys that step through, and those that scroll the slip, wherever the focus is but in something that uses them itself. */
export function useStepKeys(isOn: boolean, index: number): void {
  const actions = useActions()
  useEffect(() => {
    if (!isOn) return
    const onKey = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return
      const target = event.target instanceof Element ? event.target : null
      const isIn = (selector: string) => target?.closest(selector) != null
      const to = stepTarget(event.key, index)
      if (to !== undefined && !isIn(TAKES_ARROWS)) {
        event.preventDefault()
        actions.goToIndex(to)
      }
      if (!isIn(SCROLLS) && scrollsSlip(event.key)) event.preventDefault()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [actions, isOn, index])
}

/** A page keeps a little of the one before it in sight. */
const OF_A_PAGE = 0.875

/** Scrolls the slip as if it had the focus; false where the key is for something else, or the slip shows all it holds. */
function scrollsSlip(key: string): boolean {
  const slip = document.querySelector('.rehearse .slip')
  if (slip === null || slip.scrollHeight <= slip.clientHeight) return false
  const page = slip.clientHeight * OF_A_PAGE
  const by = { PageDown: page, PageUp: -page, Home: -slip.scrollTop, End: slip.scrollHeight }[key]
  if (by === undefined) return false
  slip.scrollTop += by
  return true
}
