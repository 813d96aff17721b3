import { createStore } from 'zustand/vanilla'
import type { FirstLine } from '../core/first/line'
import type { Problem } from '../core/kitchen/problem'
import type { Trial } from '../core/levelling/trial-heights'
import type { Tried } from '../core/order/try-order'
import type { Forced } from '../core/order/what-if'
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

/** Which of the kitchens kept on this device is open, and as of which revision it was read. */
export interface Kept {
  readonly id: string
  readonly revision: number
}

/** Where what is opened was kept, and the step it was left at; a file from elsewhere has neither. */
export interface KeptPlace {
  readonly kept?: Kept
  readonly at?: string | null
}

/** The one small state of the app: two documents, what came of them, and where the user is. */
export interface AppState extends Documents {
  /** What has been asked for and not answered yet: opened, it becomes the documents only when it is accepted. */
  readonly pending: (Documents & KeptPlace) | null
  /** Null until a place is found for what was opened. */
  readonly kept: Kept | null
  /** The kitchen as it was before each edit, oldest first, and as it was before each that was taken back. */
  readonly past: readonly unknown[]
  readonly future: readonly unknown[]
  /** What was typed does not go together yet: the plan is the one from before it. */
  readonly isBehind: boolean
  /** The field being typed into: further letters in it are the same edit. */
  readonly joined: string | null
  readonly plan: Plan | null
  readonly noPlan: NoPlan | null
  /** What can be said before it is surveyed, of the kitchen that was planned last. */
  readonly first: readonly FirstLine[]
  /** Ways out of findings of this plan that hold, by finding; they come one by one after the plan. */
  readonly ways: Readonly<Record<string, readonly WayOut[]>>
  /** One operation tried before another, and what came of it; null until that is worked out. */
  readonly trial: { readonly forced: Forced; readonly tried: Tried | null } | null
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
  /** Levelling tried in the rehearsal: a unit out of level, and the turns made. It is kept nowhere. */
  readonly tried: Trial | null
  /** The page of the survey in front: what was found, or one to type into. */
  readonly page: string
  /** Of lists shown one thing at a time, which: by the list's path. */
  readonly chosen: Readonly<Record<string, string>>
  /** The sheet in front, by its id: `wall:<id>`, or one of the others. */
  readonly sheet: string | null
}

export const initialState: AppState = {
  kitchen: null,
  log: emptyLog,
  pending: null,
  kept: null,
  past: [],
  future: [],
  isBehind: false,
  joined: null,
  plan: null,
  noPlan: null,
  first: [],
  ways: {},
  trial: null,
  problems: [],
  working: false,
  broken: null,
  place: 'rehearse',
  at: null,
  finding: null,
  tried: null,
  page: 'found',
  chosen: {},
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

/** How many edits can be taken back. */
const KEPT_EDITS = 1000

/**
 * An edited kitchen in place of the one that is open. Edits with the same `joins`, one after another, are taken back as
 * one: the letters typed into a field, the way of one drag.
 */
export function edited(state: AppState, kitchen: unknown, joins: string | null = null): Partial<AppState> {
  if (kitchen === state.kitchen) return {}
  const isSame = joins !== null && joins === state.joined && state.future.length === 0
  const past = isSame ? state.past : [...state.past, state.kitchen].slice(-KEPT_EDITS)
  return { kitchen, past, future: [], joined: joins }
}

/** The kitchen as it was before the last edit; nothing when there is none. */
export function undone({ past, future, kitchen }: AppState): Partial<AppState> {
  if (past.length === 0) return {}
  return { kitchen: past.at(-1), past: past.slice(0, -1), future: [...future, kitchen], joined: null }
}

/** The last edit taken back, made again. */
export function redone({ past, future, kitchen }: AppState): Partial<AppState> {
  if (future.length === 0) return {}
  return { kitchen: future.at(-1), past: [...past, kitchen], future: future.slice(0, -1), joined: null }
}

/** Whether the kitchen that was planned is the open one as it was edited, and not one that was opened. */
const isEdited = (state: AppState): boolean =>
  state.pending !== null && state.pending.kitchen === state.kitchen

/** Of another kind or version: nothing here may touch it. */
const NOT_OURS: readonly Problem['kind'][] = ['not-this-format', 'newer-version', 'older-version', 'not-json']

/**
 * Nothing is open, or a kitchen kept here was asked for, and something in it does not go together yet: it is to be
 * mended.
 */
function isToMend({ kitchen, pending }: AppState, problems: readonly Problem[]): boolean {
  const isFile = typeof pending?.kitchen === 'object' && pending.kitchen !== null
  const isAsked = kitchen === null || pending?.kept !== undefined
  return isAsked && isFile && !problems.some(({ kind }) => NOT_OURS.includes(kind))
}

/**
 * Takes what came of the documents asked for. A refusal leaves everything as it was, with the reasons beside it. An
 * impossible order takes the old plan away: it is not a plan of what is open now.
 */
export function received(state: AppState, outcome: Outcome, kitchen: unknown): Partial<AppState> {
  const settled = { working: false, pending: null, trial: null }
  if (outcome.kind === 'refused') {
    const refused = { ...settled, problems: outcome.problems }
    if (!isEdited(state) && isToMend(state, outcome.problems)) {
      return {
        ...refused,
        kitchen: state.pending?.kitchen,
        log: state.pending?.log ?? emptyLog,
        kept: state.pending?.kept ?? null,
        past: [],
        future: [],
        joined: null,
        plan: null,
        noPlan: null,
        ways: {},
        finding: null,
        isBehind: true,
      }
    }
    return { ...refused, isBehind: isEdited(state) || state.isBehind }
  }
  const log = state.pending?.log ?? state.log
  // What was edited stays as it is, with what it was before; what was opened begins anew.
  const opened = isEdited(state)
    ? {}
    : { kitchen, kept: state.pending?.kept ?? null, past: [], future: [], joined: null, tried: null }
  const documents = { ...opened, log, problems: [], isBehind: false, ways: {}, finding: null }
  if (outcome.kind === 'no-order') return { ...settled, ...documents, noPlan: outcome.noPlan, plan: null }
  const wanted = (isEdited(state) ? null : state.pending?.at) ?? state.at
  const still = outcome.plan.operations.some((o) => o.id === wanted)
  const at = still ? wanted : (outcome.plan.operations[0]?.id ?? null)
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
