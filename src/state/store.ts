import { createStore } from 'zustand/vanilla'
import type { Problem } from '../core/kitchen/problem'
import type { Outcome } from '../core/plan/entry'
import type { NoPlan, Plan, WayOut } from '../core/plan/types'

export const PLACES = ['survey', 'rehearse', 'paper', 'day'] as const
export type PlaceName = (typeof PLACES)[number]

/** One entry of the day log as typed; the planner checks the rest of it. */
export interface KeptEntry {
  readonly id: string
  readonly kind: string
  readonly at?: string
  readonly [field: string]: unknown
}

/** A day log as kept: the file itself, entries as they were made. */
export interface KeptLog {
  readonly format: 'dryrun-daylog'
  readonly version: 1
  readonly kitchen?: string
  readonly entries: readonly KeptEntry[]
}
export const emptyLog: KeptLog = { format: 'dryrun-daylog', version: 1, entries: [] }

/** The two files that are open: a kitchen as typed, and what was written down on the day. */
export interface Documents {
  readonly kitchen: unknown
  readonly log: KeptLog
}

/** The one small state of the app: two documents, what came of them, and where the user is. */
export interface AppState extends Documents {
  /** What has been asked for and not answered yet: it becomes the documents only when it is accepted. */
  readonly pending: Documents | null
  readonly plan: Plan | null
  readonly noPlan: NoPlan | null
  /** Ways out of findings of this plan that hold, by finding; they come one by one after the plan. */
  readonly ways: Readonly<Record<string, readonly WayOut[]>>
  /** Why the last file or entry was refused; what was open stays open. */
  readonly problems: readonly Problem[]
  readonly working: boolean
  /** Why the planner itself stopped. */
  readonly broken: string | null
  readonly place: PlaceName
  /** The operation at the hook, by id, so that it stays at the hook when the plan is renewed. */
  readonly at: string | null
  /** The finding that is open beside the picture, and whether the picture has turned to it. */
  readonly finding: { readonly id: string; readonly isLookedAt: boolean } | null
  /** The sheet in front, by its id: `wall:<id>`, or one of the others. */
  readonly sheet: string | null
}

export const initialState: AppState = {
  kitchen: null,
  log: emptyLog,
  pending: null,
  plan: null,
  noPlan: null,
  ways: {},
  problems: [],
  working: false,
  broken: null,
  place: 'rehearse',
  at: null,
  finding: null,
  sheet: null,
}

export type AppStore = ReturnType<typeof makeStore>
export function makeStore(start: Partial<AppState> = {}) {
  return createStore<AppState>()(() => ({ ...initialState, ...start }))
}

/** Position of the operation at the hook; the first one when there is none, or when it has gone. */
export function indexOf(state: Pick<AppState, 'plan' | 'at'>): number {
  const found = state.plan?.operations.findIndex((o) => o.id === state.at) ?? -1
  return Math.max(found, 0)
}

/**
 * Takes what came of the documents asked for. A refusal leaves everything as it was, with the reasons beside it. An
 * impossible order takes the old plan away: it is not a plan of what is open now.
 */
export function received(state: AppState, outcome: Outcome, kitchen: unknown): Partial<AppState> {
  const settled = { working: false, pending: null }
  if (outcome.kind === 'refused') return { ...settled, problems: outcome.problems }
  const documents = { kitchen, log: state.pending?.log ?? state.log, problems: [], ways: {}, finding: null }
  if (outcome.kind === 'no-order') return { ...settled, ...documents, noPlan: outcome.noPlan, plan: null }
  const still = outcome.plan.operations.some((o) => o.id === state.at)
  const at = still ? state.at : (outcome.plan.operations[0]?.id ?? null)
  return { ...settled, ...documents, noPlan: null, plan: outcome.plan, at }
}

/** Moves the hook; clamps at both ends. */
export function goTo(state: AppState, index: number): Partial<AppState> {
  const operations = state.plan?.operations ?? []
  const to = operations[Math.max(0, Math.min(operations.length - 1, index))]
  return to === undefined ? {} : { at: to.id, finding: null }
}

/** Appends an entry to the day log under the next free number. */
export function logged(log: KeptLog, entry: Omit<KeptEntry, 'id'> & { readonly kind: string }): KeptLog {
  const taken = new Set(log.entries.map((e) => e.id))
  let number = log.entries.length + 1
  while (taken.has(`e${number}`)) number += 1
  return { ...log, entries: [...log.entries, { ...entry, id: `e${number}` }] }
}
