import { makePlanner, type PlanWorker } from './planner'
import { type AppState, type AppStore, emptyLog, goTo, indexOf, type KeptLog, logged, type PlaceName, received } from './store'

/** Everything a screen may do. Screens never touch the store by themselves. */
export interface AppActions {
  /** Opens a kitchen file, as a value or as the text of a file; what is open stays until it is accepted. */
  open(kitchen: unknown, log?: KeptLog): void
  go(place: PlaceName): void
  step(by: number): void
  goToIndex(index: number): void
  goToOperation(id: string): void
  scrub(t: number): void
  showWall(wall: string): void
  showFinding(finding: string | null): void
  log(entry: Readonly<Record<string, unknown>>): void
  clearLog(): void
}

/** Wires the store to the planner; `start` makes the worker. */
export function makeActions(store: AppStore, start: () => PlanWorker): AppActions {
  const set = (change: (state: AppState) => Partial<AppState>) => store.setState((s) => change(s))
  const planner = makePlanner(
    start,
    ({ outcome, kitchen }) => set((s) => received(s, outcome, kitchen)),
    (why) => set(() => ({ working: false, pending: null, broken: why })),
  )
  const ask = (kitchen: unknown, log: KeptLog) => {
    set(() => ({ pending: { kitchen, log }, working: true, broken: null }))
    planner.request(kitchen, log.entries.length === 0 ? null : log)
  }
  const current = () => {
    const { pending, kitchen, log } = store.getState()
    return pending ?? { kitchen, log }
  }
  return {
    open: (kitchen, log = emptyLog) => ask(kitchen, log),
    go: (place) => set(() => ({ place })),
    step: (by) => set((s) => goTo(s, indexOf(s) + by)),
    goToIndex: (index) => set((s) => goTo(s, index)),
    goToOperation: (id) => set((s) => (s.plan?.operations.some((o) => o.id === id) ? { at: id, t: 0 } : {})),
    scrub: (t) => set(() => ({ t })),
    showWall: (wall) => set(() => ({ wall })),
    showFinding: (finding) => set(() => ({ finding })),
    log(entry) {
      const { kitchen, log } = current()
      ask(kitchen, logged(log, entry))
    },
    clearLog: () => ask(current().kitchen, emptyLog),
  }
}
