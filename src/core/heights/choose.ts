import { type Bound, type Room, tightestRoom } from '../difference/bounds'
import type { Constraint } from '../difference/network'
import { type Basis, type Figure, hasValue, quantise, type ValueFigure } from '../figure'
import type { Demand, HeightVariable } from '../plan/types'
import type { Component } from './components'
import { type DemandNetwork, fixedAt, fixedBy, type Limit } from './demand-network'
import type { Settled } from './settled'

/** A height as it was chosen, and the room it had. */
export interface Chosen {
  readonly height: Figure
  readonly lowest: number | null
  readonly highest: number | null
  readonly lowestBy: readonly string[]
  readonly highestBy: readonly string[]
  readonly marginal: boolean
}

const inTheMiddle: Basis = {
  kind: 'geometry',
  why: 'the whole millimetre nearest the middle of the room that all demands leave, kept clear of its ends by their precision',
}
const onTheFloor: Basis = {
  kind: 'common-practice',
  why: 'a box on shims goes down on the highest floor under any of them, with nothing to shim there, and the rest is shimmed up to it',
}
/** mm away from the only end there is. Common practice: room to level both ways. */
const OFF_ONE_END = 10

/** The order in which heights are chosen; each leaves the later ones what it has not taken. */
const FIRST: readonly HeightVariable[] = [
  'base-underside',
  'base-top',
  'worktop-top',
  'tall-underside',
  'wall-top',
  'tall-top',
  'wall-underside',
]

function inTurn(a: HeightVariable, b: HeightVariable): number {
  const rank = (variable: HeightVariable) =>
    FIRST.includes(variable) ? FIRST.indexOf(variable) : FIRST.length
  return rank(a) - rank(b) || (a < b ? -1 : 1)
}

/**
 * Chooses the heights of the components one after another, each in the room that the ones before have left it.
 * `setsDown` tells the demands of boxes that go down on the floor itself.
 */
export function chooseHeights(
  components: readonly Component[],
  network: DemandNetwork,
  settled: Settled,
  setsDown: (demand: Demand) => boolean,
): ReadonlyMap<HeightVariable, Chosen> {
  const constraints: Constraint[] = [...network.constraints]
  for (const [variable, height] of settled.heights) {
    if (hasValue(height)) constraints.push(...fixedAt(variable, height.value))
  }
  const before = roomOf(constraints)
  const chosen = new Map<HeightVariable, Chosen>()
  const componentOf = new Map(components.flatMap((one) => one.heights.map((height) => [height, one])))
  for (const variable of [...componentOf.keys()].sort(inTurn)) {
    const component = componentOf.get(variable) as Component
    if (component.missing.length > 0) {
      chosen.set(variable, notChosen(component, component.missing))
      continue
    }
    const now = roomOf(constraints).get(variable) ?? OPEN
    const choice = choiceIn(now, { network, chosen, settled, component, setsDown })
    const room = described(before.get(variable) ?? OPEN, network, settled)
    chosen.set(variable, choice === undefined ? notChosen(component, [WISHES]) : { ...room, height: choice })
    if (choice !== undefined) constraints.push(...fixedAt(variable, choice.value))
  }
  return chosen
}

const OPEN: Room = { lowest: null, highest: null }
/** Nothing bounds such a height at all: a wish would settle it. */
const WISHES = 'wishes.heights'

function roomOf(constraints: readonly Constraint[]): ReadonlyMap<string, Room> {
  return tightestRoom(constraints, 'line') ?? new Map()
}

function notChosen({ from }: Component, missing: readonly string[]): Chosen {
  const height: Figure = { state: 'unknown', unit: 'mm', basis: inTheMiddle, from, missing }
  return { height, lowest: null, highest: null, lowestBy: [], highestBy: [], marginal: false }
}

interface Choosing {
  readonly network: DemandNetwork
  readonly chosen: ReadonlyMap<HeightVariable, Chosen>
  readonly settled: Settled
  readonly component: Component
  readonly setsDown: (demand: Demand) => boolean
}

function choiceIn(room: Room, choosing: Choosing): ValueFigure | undefined {
  const floor = floorUnder(room, choosing)
  const value = floor ?? valueIn(room, choosing.network)
  if (value === undefined) return undefined
  const isAssumed = [...(room.lowest?.by ?? []), ...(room.highest?.by ?? [])].some((id) =>
    restsOnAssumed(id, choosing),
  )
  const state = isAssumed ? 'assumed' : 'known'
  const basis = floor === undefined ? inTheMiddle : onTheFloor
  return { state, value, pm: 0, unit: 'mm', basis, from: choosing.component.from }
}

/** The lowest height, where it is a box coming down on the floor that bounds it; else undefined. */
function floorUnder({ lowest }: Room, { network, setsDown }: Choosing): number | undefined {
  const limits = limitsOf(lowest, network.limits)
  return lowest !== null && limits.some(({ demand }) => setsDown(demand)) ? quantise(lowest.value) : undefined
}

function restsOnAssumed(constraint: string, { network, chosen, settled }: Choosing): boolean {
  const variable = fixedBy(constraint)
  if (variable === undefined) return network.limits.get(constraint)?.figure.state === 'assumed'
  return (chosen.get(variable)?.height ?? settled.heights.get(variable))?.state === 'assumed'
}

/**
 * The whole millimetre nearest the middle of the room, after each end is drawn in by the precision of what sets it, as
 * long as something remains. Half-way goes down. Where no whole millimetre lies in the room, its middle. With one end
 * only: 10 mm off it, to the next whole millimetre away. Undefined with none.
 */
function valueIn({ lowest, highest }: Room, network: DemandNetwork): number | undefined {
  const pm = precisionOf({ lowest, highest }, network)
  if (lowest === null)
    return highest === null ? undefined : Math.floor(quantise(highest.value - pm.highest) - OFF_ONE_END)
  if (highest === null) return Math.ceil(quantise(lowest.value + pm.lowest) + OFF_ONE_END)
  const drawnIn = { from: quantise(lowest.value + pm.lowest), to: quantise(highest.value - pm.highest) }
  const { from, to } = drawnIn.from <= drawnIn.to ? drawnIn : { from: lowest.value, to: highest.value }
  const whole = Math.ceil(quantise((from + to) / 2) - 0.5) + 0
  return whole >= lowest.value && whole <= highest.value ? whole : quantise((from + to) / 2)
}

/** A size moves both ends of a room together. */
const isSize = ({ demand }: Limit): boolean => demand.min === demand.max

/**
 * How well each end is known: the precisions of the demands that set it, added up. What sets both ends and moves them
 * together takes nothing from the room between.
 */
function precisionOf(
  { lowest, highest }: Room,
  { limits }: DemandNetwork,
  movesBoth: (limit: Limit) => boolean = isSize,
): { lowest: number; highest: number } {
  const [low, high] = [limitsOf(lowest, limits), limitsOf(highest, limits)]
  const shared = (limit: Limit, others: readonly Limit[]) =>
    movesBoth(limit) && others.some(({ demand }) => demand === limit.demand)
  const sumOf = (own: readonly Limit[], others: readonly Limit[]) =>
    own.reduce((total, limit) => (shared(limit, others) ? total : total + limit.figure.pm), 0)
  return { lowest: quantise(sumOf(low, high)), highest: quantise(sumOf(high, low)) }
}

function limitsOf(bound: Bound | null, limits: DemandNetwork['limits']): readonly Limit[] {
  return bound === null ? [] : bound.by.flatMap((id) => limits.get(id) ?? [])
}

/** The room before anything was chosen, by the names of the demands that set its ends. */
function described(room: Room, network: DemandNetwork, settled: Settled): Omit<Chosen, 'height'> {
  const { lowest, highest } = room
  // Both ends of one wish or of one leg hang on the same reading: to read it again makes no more room.
  const pm = precisionOf(room, network, () => true)
  const width = lowest === null || highest === null ? Infinity : highest.value - lowest.value
  return {
    lowest: lowest === null ? null : quantise(lowest.value),
    highest: highest === null ? null : quantise(highest.value),
    lowestBy: namesOf(lowest, network, settled),
    highestBy: namesOf(highest, network, settled),
    marginal: quantise(width) < quantise(pm.lowest + pm.highest),
  }
}

function namesOf(bound: Bound | null, { limits }: DemandNetwork, settled: Settled): readonly string[] {
  const names = (bound?.by ?? []).flatMap((id) => {
    const variable = fixedBy(id)
    if (variable !== undefined) return settled.by.get(variable) ?? []
    const limit = limits.get(id)
    return limit === undefined ? [] : [limit.demand.id]
  })
  return [...new Set(names)]
}
