import type { Problem } from '../core/kitchen/problem'
import { makePlanner, type PlanWorker } from './planner'
import {
  type AppStore,
  type Documents,
  emptyLog,
  goTo,
  indexOf,
  type KeptEntry,
  type KeptLog,
  logged,
  type PlaceName,
  received,
} from './store'

type NewEntry = Omit<KeptEntry, 'id'> & { readonly kind: string }

/** Everything a screen may do. Screens never touch the store by themselves. */
export interface AppActions {
  /** Opens a kitchen file, as a value or as the text of a file; what is open stays until it is accepted. */
  open(kitchen: unknown, log?: KeptLog): void
  /** Opens a day log, as the text of a file, beside the kitchen that is open. */
  openLog(text: string): void
  /** Shows a place; what was refused elsewhere is put away. */
  go(place: PlaceName): void
  step(by: number): void
  goToIndex(index: number): void
  goToOperation(id: string): void
  /** Opens a finding beside the picture; the picture stays as it is. */
  openFinding(id: string): void
  /** Opens a finding at an operation, and turns the picture to its place; null: the picture turns back. */
  lookAtFinding(id: string | null, operation?: string): void
  showSheet(sheet: string): void
  /** Writes one thing down in the day log; nothing is ever taken out of it. */
  log(entry: NewEntry): void
}

/** Wires the store to the planner; `start` makes the worker, `now` tells the time for the day log. */
export function makeActions(store: AppStore, start: () => PlanWorker, now: () => string): AppActions {
  const set = store.setState
  const planner = makePlanner(
    start,
    ({ outcome, kitchen }) => set((s) => received(s, outcome, kitchen)),
    (why) => set({ working: false, pending: null, broken: why }),
    ({ finding, waysOut }) => set((s) => ({ ways: { ...s.ways, [finding]: waysOut } })),
  )
  const ask = ({ kitchen, log }: Documents) => {
    set({ pending: { kitchen, log }, working: true, broken: null })
    planner.request(kitchen, log.entries.length === 0 ? null : log)
  }
  const current = (): Documents => {
    const { pending, kitchen, log } = store.getState()
    return pending ?? { kitchen, log }
  }
  return {
    open: (kitchen, log = emptyLog) => ask({ kitchen, log }),
    openLog(text) {
      const read = logFrom(text)
      if (isProblem(read)) set({ problems: [read] })
      else ask({ ...current(), log: read })
    },
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
    showSheet: (sheet) => set({ sheet }),
    log(entry) {
      const { kitchen, log } = current()
      ask({ kitchen, log: logged(log, { ...entry, at: now() }) })
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
