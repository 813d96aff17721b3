import { withEdits } from '../core/kitchen/edit'
import type { Problem } from '../core/kitchen/problem'
import type { Trial } from '../core/levelling/trial-heights'
import type { Forced } from '../core/order/what-if'
import type { Edit } from '../core/plan/types'
import { makePlanner, type PlanWorker } from './planner'
import {
  type AppState,
  type AppStore,
  type Documents,
  edited,
  emptyLog,
  goTo,
  indexOf,
  type KeptEntry,
  type KeptLog,
  type KeptPlace,
  logged,
  type PlaceName,
  received,
  redone,
  undone,
} from './store'

type NewEntry = Omit<KeptEntry, 'id'> & { readonly kind: string }

/** Everything a screen may do. Screens never touch the store by themselves. */
export interface AppActions {
  /**
   * Opens a kitchen file, as a value or as the text of a file; what is open stays until it is accepted. `place`: where it
   * was kept on this device.
   */
  open(kitchen: unknown, log?: KeptLog, place?: KeptPlace): void
  /** Says why something could not be opened; what is open stays. */
  refuse(problem: Problem): void
  /** Opens a day log, as the text of a file, beside the kitchen that is open. */
  openLog(text: string): void
  /** Changes the open kitchen at once; it is planned after. The same `joins` one after another is one edit. */
  edit(edits: readonly Edit[], joins?: string): void
  /** Ends what is joined: the next edit is one of its own. */
  settle(): void
  /** Puts the open kitchen, changed throughout, in its own place: one edit. */
  replace(kitchen: unknown): void
  undo(): void
  redo(): void
  /** Shows a place; what was refused elsewhere is put away. */
  go(place: PlaceName): void
  step(by: number): void
  goToIndex(index: number): void
  goToOperation(id: string): void
  /** Opens a finding beside the picture; the picture stays as it is. */
  openFinding(id: string): void
  /** Opens a finding at an operation, and turns the picture to its place; null: the picture turns back. */
  lookAtFinding(id: string | null, operation?: string): void
  /** Shows levelling as it is tried; null: no more. */
  tryOut(tried: Trial | null): void
  showSheet(sheet: string): void
  showPage(page: string): void
  /** Shows one thing of a list. */
  choose(list: string, mark: string): void
  /** Tries one operation before another by planning again; nothing is changed by it. Null: nothing is tried any more. */
  tryOrder(forced: Forced | null): void
  /** Writes one thing down in the day log; nothing is ever taken out of it. */
  log(entry: NewEntry): void
}

/** Wires the store to the planner; `start` makes the worker, `now` tells the time for the day log. */
export function makeActions(store: AppStore, start: () => PlanWorker, now: () => string): AppActions {
  const set = store.setState
  const planner = makePlanner(
    start,
    ({ outcome, kitchen, first }) =>
      set((s) => ({ ...received(s, outcome, kitchen), ...(first === undefined ? {} : { first }) })),
    (why) => set({ working: false, pending: null, trial: null, broken: why }),
    ({ finding, waysOut }) => set((s) => ({ ways: { ...s.ways, [finding]: waysOut } })),
    ({ forced, tried }) =>
      set(({ trial }) =>
        trial?.forced.before === forced.before && trial.forced.after === forced.after
          ? { trial: { forced, tried } }
          : {},
      ),
  )
  const ask = (asked: Documents & KeptPlace) => {
    const { kitchen, log } = asked
    set({ pending: asked, working: true, broken: null })
    planner.request(kitchen, log.entries.length === 0 ? null : log)
  }
  const current = (): Documents & KeptPlace => {
    const { pending, kitchen, log } = store.getState()
    return pending ?? { kitchen, log }
  }
  /** Makes an edit and plans what came of it. */
  const change = (by: (state: AppState) => Partial<AppState>) => {
    const changed = by(store.getState())
    if (!('kitchen' in changed)) return
    set(changed)
    ask({ kitchen: store.getState().kitchen, log: store.getState().log })
  }
  return {
    open: (kitchen, log = emptyLog, place = {}) => ask({ ...place, kitchen, log }),
    refuse: (problem) => set({ problems: [problem] }),
    openLog(text) {
      const read = logFrom(text)
      if (isProblem(read)) set({ problems: [read] })
      else ask({ ...current(), log: read })
    },
    edit(edits, joins) {
      const next = withEdits(store.getState().kitchen, edits)
      if (next !== undefined) change((s) => edited(s, next, joins ?? null))
    },
    settle: () => set({ joined: null }),
    replace: (kitchen) => change((s) => edited(s, kitchen)),
    undo: () => change(undone),
    redo: () => change(redone),
    go: (place) => set((s) => ({ place, problems: s.plan === null ? s.problems : [] })),
    step: (by) => set((s) => goTo(s, indexOf(s) + by)),
    goToIndex: (index) => set((s) => goTo(s, index)),
    goToOperation: (id) =>
      set((s) => (s.plan?.operations.some((o) => o.id === id) ? { at: id, finding: null } : {})),
    openFinding: (id) => set({ finding: { id, isLookedAt: false } }),
    lookAtFinding: (id, operation) =>
      set((s) => {
        if (id === null) return { finding: s.finding === null ? null : { ...s.finding, isLookedAt: false } }
        if (!s.plan?.findings.some((f) => f.id === id)) return {}
        return { at: operation ?? s.at, finding: { id, isLookedAt: true } }
      }),
    tryOut: (tried) => set({ tried }),
    showSheet: (sheet) => set({ sheet }),
    showPage: (page) => set({ page }),
    choose: (list, mark) => set((s) => ({ chosen: { ...s.chosen, [list]: mark } })),
    tryOrder(forced) {
      set({ trial: forced === null ? null : { forced, tried: null } })
      const { kitchen, log } = store.getState()
      if (forced !== null) planner.attempt(kitchen, log.entries.length === 0 ? null : log, forced)
    },
    log(entry) {
      const documents = current()
      ask({ ...documents, log: logged(documents.log, { ...entry, at: now() }) })
    },
  }
}

const isProblem = (read: KeptLog | Problem): read is Problem => 'mend' in read

/** The shape without which it cannot be kept at all; the planner checks every entry. */
function logFrom(text: string): KeptLog | Problem {
  const mend = 'Choose a day log saved by this tool.'
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    return { kind: 'not-json', path: 'the file', message: 'This is not JSON.', mend }
  }
  const log = value as Partial<KeptLog> | null
  if (log?.format !== 'dryrun-daylog' || !Array.isArray(log.entries)) {
    return { kind: 'not-this-format', path: 'format', message: 'This is not a day log.', mend }
  }
  return log as KeptLog
}
