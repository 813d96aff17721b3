import { fieldAt } from '../../core/form/numbers'
import { PAGES } from '../../core/form/pages'
import { thingsAt } from '../../core/form/rename'
import type { AppActions } from '../../state/actions'

/** The address of the page a fact is typed on; undefined where it is on none. */
export function addressOfFact(fact: string): string | undefined {
  const page = PAGES.find((p) => fieldAt([p], fact) !== undefined)
  return page === undefined ? undefined : `#survey/${page.id}`
}

/** Opens every listed thing a fact belongs to, and puts the focus on its field once that is shown. */
export function goToFact(actions: AppActions, fact: string): void {
  const keys = fact.split('.')
  for (let i = 1; i < keys.length; i += 1) {
    const list = keys.slice(0, i).join('.')
    if (thingsAt(list) !== undefined) actions.choose(list, keys[i] as string)
  }
  window.setTimeout(() => focusFact(fact, TRIES), WAIT)
}

const WAIT = 80
const TRIES = 25

function focusFact(fact: string, left: number): void {
  const field = document.querySelector<HTMLElement>(
    `[data-fact="${CSS.escape(fact)}"], [data-fact^="${CSS.escape(fact)}."]`,
  )
  if (field === null) {
    if (left > 0) window.setTimeout(() => focusFact(fact, left - 1), WAIT)
    return
  }
  for (
    let folded = field.closest('details');
    folded !== null;
    folded = folded.parentElement?.closest('details') ?? null
  )
    folded.open = true
  field.focus({ preventScroll: true })
  field.scrollIntoView?.({ block: 'center' })
}
