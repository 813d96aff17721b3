import { type Figure, hasValue, type InputId } from '../../src/core/figure'
import type { KitchenFile } from '../../src/core/kitchen/schema'
import { workThrough } from '../../src/core/plan/entry'
import { figuresIn } from '../../src/core/plan/figures-in'
import type { Band, Plan } from '../../src/core/plan/types'
import { withoutFact } from './facts'

/** What comes of a plan when a fact is taken away: what rested on it must go, what did not must stay. */

export interface Fault {
  readonly fact: InputId
  /** Name of the figure, made of ids. */
  readonly name: string
  readonly what: 'kept its value' | 'moved' | 'lost' | 'gone'
  readonly was: string
  readonly is: string
}

export interface Blanked {
  readonly faults: readonly Fault[]
  /** Of the figures that cited the fact: now unknown, no longer there, or resting on something else. */
  readonly unknown: number
  readonly gone: number
  readonly elsewhere: number
  /** Of the others: gone with the thing they belong to. */
  readonly whole: number
}

export type Outcome = { readonly plan: Plan } | { readonly why: string }

export function planOrWhy(file: KitchenFile): Outcome {
  const outcome = workThrough(file)
  if (outcome.kind === 'plan') return { plan: outcome.plan }
  if (outcome.kind === 'refused')
    return { why: `refused: ${outcome.problems.map((p) => p.message).join(' ')}` }
  return {
    why: `no order: ${JSON.stringify(outcome.noPlan.trapped)}${JSON.stringify(outcome.noPlan.conflicts)}`,
  }
}

/** A band has edges and says what they came from, though it is no figure: one that lacks something counts as unknown. */
function bandFigures(bands: readonly Band[], into: Map<string, Figure>): void {
  for (const { id, left, right, bottom, top, basis, from, pm, unknownBecause } of bands) {
    for (const [name, at] of Object.entries({ left, right, bottom, top })) {
      const figure: Figure | null =
        unknownBecause.length > 0
          ? { state: 'unknown', unit: 'mm', basis, from, missing: unknownBecause }
          : at === null
            ? null
            : { state: 'known', value: at, pm, unit: 'mm', basis, from }
      if (figure !== null) into.set(`bands/${id}/${name}`, figure)
    }
  }
}

/**
 * Names that are looked at elsewhere or say nothing here: words of sentences; lists by position, in reasons and findings,
 * which repeat figures that have a name; the height a tall unit swings through, which goes by the side over which a free
 * way of standing it up was found, and a way is chosen, not worked out from one fact.
 */
const REPEATED =
  /\/(say|because|does|against|ask|title|label|cautions)(\/|$)|\/figures\/\d+$|^units\/[^/]+\/standUp\/needed$|^operations\/stand-up:[^/]+\/figures\/needed\/figure$/

/** Every figure of a plan by its name, edges of bands among them. */
export function figuresOf(plan: Plan): ReadonlyMap<string, Figure> {
  const all = figuresIn(plan)
  bandFigures(plan.bands, all)
  return new Map([...all].filter(([name]) => !REPEATED.test(name)))
}

const shown = (figure: Figure | undefined): string =>
  figure === undefined
    ? 'not there'
    : hasValue(figure)
      ? `${figure.value} ${figure.unit} (${figure.state})`
      : 'unknown'

/** Things of a plan that come and go whole, and the facts that decide it: names as figures have them. */
function wholeThings(plan: Plan): ReadonlyMap<string, readonly InputId[]> {
  return new Map(
    [
      ...plan.holes.map(
        (h) => [`holes/${h.id}`, [...h.along.from, ...h.height.from, ...h.depth.from]] as const,
      ),
      ...plan.findings.map((f) => [`findings/${f.id}`, f.from] as const),
      ...plan.operations.map((o) => [`operations/${o.id}`, o.from] as const),
      ...plan.reasons.map((r) => [`reasons/${r.id}`, r.from] as const),
      // A reading is drawn where it has a place in the room, whatever was read there.
      ...plan.floor.points.map((p) => [`floor/points/${p.id}`, null] as const),
    ].map(([name, from]) => [name, from ?? ANY]),
  )
}

const ANY: readonly InputId[] = ['*']

export interface Before {
  readonly figures: ReadonlyMap<string, Figure>
  readonly things: ReadonlyMap<string, readonly InputId[]>
}

export function beforeBlanking(plan: Plan): Before {
  return { figures: figuresOf(plan), things: wholeThings(plan) }
}

/** The thing a figure belongs to, by its name: lines to drill on and figures of operations are named by their hole. */
function thingOf(name: string, { things }: Before): string {
  const [list = '', id = '', third = '', fourth = ''] = name.split('/')
  const hole = `holes/${(list === 'lines' ? id : fourth).replace(/^(drill|plate|bracket)\./, '').replace(/\.(along|height|depth|in|up|stop)$/, '')}`
  const isOfHole = list === 'lines' || (list === 'operations' && third === 'figures')
  if (isOfHole && things.has(hole)) return hole
  return list === 'floor' ? `${list}/${id}/${third}` : `${list}/${id}`
}

/** Whether a figure went with the thing it belongs to, and that thing hung on the fact. */
function wentWhole(name: string, fact: InputId, before: Before, after: Before): boolean {
  const thing = thingOf(name, before)
  const from = before.things.get(thing)
  return from !== undefined && !after.things.has(thing) && (from === ANY || from.includes(fact))
}

/**
 * Compares the figures of a plan with those of the same kitchen without one fact. Figures that go with a thing that
 * goes whole (a hole that would have been moved, a finding, an operation) are counted with it, when the thing itself
 * cites the fact; and a floor reading is not drawn when its wall has no place in the room.
 */
export function compareBlanked(fact: InputId, before: Before, after: Before): Blanked {
  const faults: Fault[] = []
  const counts = { unknown: 0, gone: 0, elsewhere: 0, whole: 0 }
  for (const [name, was] of before.figures) {
    const is = after.figures.get(name)
    const note = (what: Fault['what']) => faults.push({ fact, name, what, was: shown(was), is: shown(is) })
    if (was.from.includes(fact)) {
      if (is === undefined) counts.gone++
      else if (!hasValue(is)) counts.unknown++
      else if (is.from.includes(fact)) note('kept its value')
      else counts.elsewhere++
    } else if (is === undefined) {
      if (wentWhole(name, fact, before, after)) counts.whole++
      else note('gone')
    } else if (hasValue(was) && !hasValue(is)) note('lost')
    else if (hasValue(is) && (!hasValue(was) || was.value !== is.value || was.state !== is.state))
      note('moved')
  }
  return { faults, ...counts }
}

export function blanked(
  file: KitchenFile,
  facts: readonly InputId[],
): { readonly file: KitchenFile; readonly outcome: Outcome } {
  const without = facts.reduce((f, id) => withoutFact(f, id), file)
  return { file: without, outcome: planOrWhy(without) }
}
