import { type JsonPath, listed, type Problem, placeIn, shown } from '../problem'
import type { Kitchen } from '../schema'

/** A unit or finishing part that stands somewhere along a wall. */
interface Standing {
  readonly id: string
  readonly wall: string | null
  readonly path: JsonPath
  readonly given: readonly string[]
  readonly neighbour: string | undefined
}

type Order = Kitchen['units'][number]['order'] | NonNullable<Kitchen['finishing'][number]['order']>

const WAYS = ['left', 'rightOf', 'leftOf'] as const

function standing(id: string, wall: string | null, order: Order, path: JsonPath): Standing {
  const given = WAYS.filter((way) => order[way] !== undefined)
  return { id, wall, path: [...path, 'order'], given, neighbour: order.rightOf ?? order.leftOf }
}

function allStanding(kitchen: Kitchen): readonly Standing[] {
  return [
    ...kitchen.units.map((unit, i) => standing(unit.id, unit.wall, unit.order, ['units', i])),
    ...kitchen.finishing.flatMap((part, i) =>
      part.order ? [standing(part.id, part.wall, part.order, ['finishing', i])] : [],
    ),
  ]
}

function notOneWay(kitchen: Kitchen, { given, path }: Standing): readonly Problem[] {
  if (given.length === 1) return []
  const message =
    given.length === 0
      ? 'It is not said where along the wall this stands.'
      : `It is said in ${given.length} ways where along the wall this stands: ${listed(given)}.`
  const mend = 'Give one of left (from a corner), rightOf or leftOf (a neighbour).'
  const onScreen = 'Choose how it stands: with its left side so far from a corner, or beside a neighbour.'
  return [{ kind: 'order', path: placeIn(kitchen, path), message, mend, onScreen }]
}

function onAnotherWall(kitchen: Kitchen, one: Standing, target: Standing | undefined): readonly Problem[] {
  if (target === undefined || one.wall === null || target.wall === null || one.wall === target.wall) return []
  const message = `This stands on wall ${shown(one.wall)}, its neighbour ${shown(target.id)} on wall ${shown(target.wall)}.`
  const mend = 'Name a neighbour on the same wall, or give left, measured from the corner.'
  const onScreen = 'Choose a neighbour on the same wall, or “with its left side” and measure from the corner.'
  return [{ kind: 'order', path: placeIn(kitchen, one.path), message, mend, onScreen }]
}

/** The ring of neighbours that a chain from here runs into, if any, from its smallest id on. */
function ringFrom(start: Standing, byId: ReadonlyMap<string, Standing>): readonly string[] {
  const chain: string[] = []
  let here: Standing | undefined = start
  while (here !== undefined && !chain.includes(here.id)) {
    chain.push(here.id)
    here = here.neighbour === undefined ? undefined : byId.get(here.neighbour)
  }
  if (here === undefined) return []
  const ring = chain.slice(chain.indexOf(here.id))
  const first = ring.reduce((least, id, at) => (id < (ring[least] ?? id) ? at : least), 0)
  return [...ring.slice(first), ...ring.slice(0, first)]
}

function rings(
  kitchen: Kitchen,
  all: readonly Standing[],
  byId: ReadonlyMap<string, Standing>,
): readonly Problem[] {
  const told = new Set<string>()
  return all.flatMap((start): Problem[] => {
    const ring = ringFrom(start, byId)
    const [first] = ring
    if (first === undefined || told.has(first)) return []
    told.add(first)
    const message =
      ring.length === 1
        ? `${shown(first)} is its own neighbour.`
        : `${listed(ring)} stand beside each other in a ring, so that none of them has a place.`
    const mend = 'Give one of them left, measured from a corner.'
    const onScreen = 'Choose “with its left side” for one of them, and measure it from a corner.'
    return [{ kind: 'order', path: placeIn(kitchen, byId.get(first)?.path ?? []), message, mend, onScreen }]
  })
}

/** Places along a wall: said in exactly one way, beside a neighbour on the same wall, and never in a ring. */
export function orderAlongWalls(kitchen: Kitchen): readonly Problem[] {
  const all = allStanding(kitchen)
  const byId = new Map(all.map((one) => [one.id, one]))
  return [
    ...all.flatMap((one) => notOneWay(kitchen, one)),
    ...all.flatMap((one) => onAnotherWall(kitchen, one, byId.get(one.neighbour ?? ''))),
    ...rings(kitchen, all, byId),
  ]
}
