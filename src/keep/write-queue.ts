import { isPractice, kitchenName } from '../state/kitchen-name'
import type { KeptLog } from '../state/store'
import { type Keeper, type KeptHead, type Marks, textsOf } from './keeper'

/** The two documents as they were at one moment, still to be written, and how many edits that writes down. */
export interface Snapshot {
  readonly kitchen: unknown
  readonly log: KeptLog
  readonly at: string | null
  readonly edits: number
}

export interface QueueEvents {
  onWritten(head: KeptHead): void
  /** Written by somebody else since: it is held back until the user has chosen. */
  onElsewhere(head: KeptHead): void
  /** It was kept and is not any more; it is written anew. */
  onGone(id: string): void
  onFailed(error: unknown): void
}

export interface WriteQueue {
  /** To be written at once; of what waits for the same kitchen the latest is written. */
  put(id: string, snapshot: Snapshot): void
  /** After all that was asked for before it. */
  run<T>(job: () => Promise<T>): Promise<T>
  mark(id: string, marks: Marks): Promise<KeptHead | undefined>
  /** Tries again to write all that waits. */
  flush(): Promise<void>
  /** What waits to be written, as far as it is known not to be kept. */
  waiting(id: string): Snapshot | undefined
  /** From here on what is written is written over this revision; what waited is given up. */
  start(id: string, revision: number): void
  seen(id: string): number
  hold(id: string): void
  isHeld(id: string): boolean
  /** Whether an edit is anywhere but kept. */
  hasEdits(): boolean
}

/** One write after the other, the first at once: nothing waits for a clock, and nothing is written twice. */
export function writeQueue(keeper: Keeper, writer: string, now: () => string, on: QueueEvents): WriteQueue {
  const waiting = new Map<string, Snapshot>()
  const writing = new Map<string, Snapshot>()
  const seen = new Map<string, number>()
  const held = new Set<string>()
  let last: Promise<unknown> = Promise.resolve()

  const run = <T>(job: () => Promise<T>): Promise<T> => {
    const done = last.then(job)
    last = done.catch(() => undefined)
    return done
  }
  const add = (id: string, { edits, ...latest }: Snapshot, before: Snapshot | undefined) =>
    waiting.set(id, { ...latest, edits: edits + (before?.edits ?? 0) })

  const write = async (id: string): Promise<void> => {
    const snapshot = waiting.get(id)
    if (snapshot === undefined || held.has(id)) return
    waiting.delete(id)
    writing.set(id, snapshot)
    const { kitchen, log, at, edits } = snapshot
    const giveBack = () => add(id, waiting.get(id) ?? { ...snapshot, edits: 0 }, snapshot)
    try {
      const said = { name: kitchenName(kitchen), isPractice: isPractice(kitchen), changedAt: now() }
      const change = { ...said, writer, at, edits }
      const written = await keeper.write(id, change, textsOf(kitchen, log), seen.get(id) ?? 0)
      if (written.kind === 'written') {
        seen.set(id, written.head.revision)
        on.onWritten(written.head)
      } else {
        giveBack()
        if (written.kind === 'elsewhere') {
          held.add(id)
          on.onElsewhere(written.head)
        } else {
          seen.set(id, 0)
          on.onGone(id)
          void run(() => write(id))
        }
      }
    } catch (error) {
      giveBack()
      on.onFailed(error)
    } finally {
      writing.delete(id)
    }
  }

  return {
    run,
    put(id, snapshot) {
      add(id, snapshot, waiting.get(id))
      void run(() => write(id))
    },
    mark: (id, marks) => run(() => keeper.mark(id, marks)),
    async flush() {
      for (const id of waiting.keys()) void run(() => write(id))
      await last
    },
    waiting: (id) => waiting.get(id) ?? writing.get(id),
    start(id, revision) {
      seen.set(id, revision)
      held.delete(id)
      waiting.delete(id)
    },
    seen: (id) => seen.get(id) ?? 0,
    hold: (id) => void held.add(id),
    isHeld: (id) => held.has(id),
    hasEdits: () => [...waiting.values(), ...writing.values()].some(({ edits }) => edits > 0),
  }
}
