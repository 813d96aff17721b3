import type { KeptLog } from '../state/store'

/** What is known of a kept kitchen without reading it. */
export interface KeptHead {
  readonly id: string
  /** One more with every change that was written. A tab writes only over the revision it has seen. */
  readonly revision: number
  readonly name: string
  /** Invented, for practice. */
  readonly isPractice: boolean
  readonly changedAt: string
  /** The tab that wrote it last. */
  readonly writer: string
  /** Edits in all, and how many of them were in it when it was last saved as a file. */
  readonly edits: number
  readonly savedEdits: number
  readonly savedAt: string | null
  /** Nothing is said of saving it as a file before it has so many edits. */
  readonly remindAt: number
  /** The step at the hook. */
  readonly at: string | null
  /** Taken out of the list, with a way back. */
  readonly takenOutAt: string | null
}

/** The two files as text, byte for byte as they are kept. */
export interface KeptTexts {
  readonly kitchen: string
  readonly log: string
}

export interface KeptKitchen extends KeptTexts {
  readonly head: KeptHead
}

/** What one write says of its kitchen; the rest of its head stays as it is kept. */
export interface Change {
  readonly name: string
  readonly isPractice: boolean
  readonly changedAt: string
  readonly writer: string
  readonly at: string | null
  /** Edits since the last write. */
  readonly edits: number
}

/** Marks that are no change of the kitchen: they leave its revision as it is, and the last one stands. */
export type Marks = Partial<Pick<KeptHead, 'savedEdits' | 'savedAt' | 'remindAt' | 'at' | 'takenOutAt'>>

export type Written =
  | { readonly kind: 'written'; readonly head: KeptHead }
  /** Somebody else wrote it since: nothing was written over that. */
  | { readonly kind: 'elsewhere'; readonly head: KeptHead }
  /** It was kept, and is not any more. */
  | { readonly kind: 'gone' }

/** Why a version was kept: its user gave it a name; or something else was about to stand in its place. */
export type VersionReason = 'named' | 'file' | 'return' | 'elsewhere'

export interface VersionHead {
  readonly id: string
  /** The kitchen it is a version of. */
  readonly of: string
  readonly name: string
  readonly keptAt: string
  readonly why: VersionReason
}
export interface Version extends VersionHead, KeptTexts {}

/** How many versions kept without being asked for each kitchen has; those with a name stay until it is removed. */
export const MOST_UNASKED = 20

/**
 * Where kitchens are kept. Each call is done whole or not at all, and rejects where it cannot be done; what is written
 * has been read back before a call says so.
 */
export interface Keeper {
  heads(): Promise<readonly KeptHead[]>
  read(id: string): Promise<KeptKitchen | undefined>
  /** Writes both files and their head in one go, over the revision that was seen last; 0: nothing is kept yet. */
  write(id: string, change: Change, texts: KeptTexts, over: number): Promise<Written>
  mark(id: string, marks: Marks): Promise<KeptHead | undefined>
  /** Removes a kitchen with its versions: there is no way back. */
  forget(id: string): Promise<void>
  /** Newest first. */
  versions(of: string): Promise<readonly VersionHead[]>
  version(id: string): Promise<Version | undefined>
  /** Keeps a version, unless nobody asked for it and the newest one is the same. */
  keepVersion(version: Version): Promise<void>
  /** The kitchen that was opened last, in whatever tab. */
  lastOpen(): Promise<string | undefined>
  setLastOpen(id: string): Promise<void>
}

/** What becomes of the head of a kitchen by a write; a write brings it back into the list. */
export function headAfter(id: string, kept: KeptHead | undefined, { edits, ...change }: Change): KeptHead {
  return {
    id,
    savedEdits: 0,
    savedAt: null,
    remindAt: 0,
    ...kept,
    ...change,
    revision: (kept?.revision ?? 0) + 1,
    edits: (kept?.edits ?? 0) + edits,
    takenOutAt: null,
  }
}

/**
 * What stands in the way of a write over a revision that was seen, if anything does. Nothing has been written since by
 * anybody else where this tab wrote last, even if it was never told that it had.
 */
export function inTheWay(kept: KeptHead | undefined, over: number, writer: string): Written | undefined {
  if (kept === undefined) return over === 0 ? undefined : { kind: 'gone' }
  return kept.revision === over || (over > 0 && kept.writer === writer)
    ? undefined
    : { kind: 'elsewhere', head: kept }
}

/** Of the versions of one kitchen, newest first, those that make room for a further one that nobody asked for. */
export const versionsToDrop = (newestFirst: readonly VersionHead[]): readonly VersionHead[] =>
  newestFirst.filter((v) => v.why !== 'named').slice(MOST_UNASKED - 1)

export const newestFirst = (a: VersionHead, b: VersionHead): number =>
  a.keptAt === b.keptAt ? (a.id < b.id ? 1 : -1) : a.keptAt < b.keptAt ? 1 : -1

export const textsOf = (kitchen: unknown, log: KeptLog): KeptTexts => ({
  kitchen: JSON.stringify(kitchen),
  log: JSON.stringify(log),
})
