import type { Problem } from '../core/kitchen/problem'
import type { AppActions } from '../state/actions'
import { kitchenName, renamed } from '../state/kitchen-name'
import { textOfLink } from '../state/link'
import type { AppStore, Kept } from '../state/store'

/** What is asked of the keeping. */
export interface Keeps {
  /** An id and a name that no kept kitchen has. */
  fresh(name: string): { readonly kept: Kept; readonly name: string }
  flush(): void
  /** Whether anything of what is open is not kept. */
  wouldLose(): boolean
}

/** How long what was open last is waited for, ms. */
const OPEN_WITHIN = 15_000
/** How long it may take until what is open is kept, ms. */
const KEPT_WITHIN = 4000

const notKept: Problem = {
  kind: 'contradiction',
  path: 'the link',
  message: 'It was not opened: what is open now is not kept in this browser, and would be lost.',
  mend: 'Save what is open as a file first, then open the link again.',
}

/**
 * Opens the kitchen that an address carries, as a further one beside those that are kept. What was open comes first and
 * is kept; where it cannot be, the link is not opened.
 */
export async function openLink(
  part: string,
  store: AppStore,
  actions: AppActions,
  keeping?: Keeps,
  patience = KEPT_WITHIN,
): Promise<void> {
  const text = await textOfLink(part)
  await until(() => isStarted(store), OPEN_WITHIN)
  if (typeof text !== 'string') return actions.refuse(text)
  if (isOpenAlready(text, store)) return
  if (keeping === undefined) return actions.open(text)
  if (keeping.wouldLose()) keeping.flush()
  if (!(await until(() => !keeping.wouldLose(), patience))) return actions.refuse(notKept)
  const kitchen = parsed(text)
  // What is no kitchen is refused by who reads it.
  if (kitchen === undefined) return actions.open(text)
  const { kept, name } = keeping.fresh(kitchenName(kitchen))
  actions.open(name === kitchenName(kitchen) ? text : renamed(kitchen, name), undefined, { kept })
}

const isStarted = (store: AppStore): boolean => {
  const { kitchen, pending, problems, broken } = store.getState()
  return pending === null && (kitchen !== null || problems.length > 0 || broken !== null)
}

/** The same link again, while nothing in its kitchen was changed. */
const isOpenAlready = (text: string, store: AppStore): boolean =>
  JSON.stringify(store.getState().kitchen) === text

async function until(isSo: () => boolean, patience: number): Promise<boolean> {
  for (const end = performance.now() + patience; !isSo(); await soon()) {
    if (performance.now() > end) return false
  }
  return true
}

const soon = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20))

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
