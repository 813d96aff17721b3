import { hasValue } from '../../figure'
import { closest, type JsonPath, listed, type Problem, placeIn, shown } from '../problem'
import type { HeightPosition, Kitchen } from '../schema'
import { objectsIn } from './objects-in'

/** One place in the file that names a thing listed elsewhere. */
interface Reference {
  readonly id: string
  readonly path: JsonPath
  /** What it names, as people say it: "wall". */
  readonly thing: string
  readonly among: readonly string[]
}

type Ids = Readonly<
  Record<
    'walls' | 'units' | 'lines' | 'appliances' | 'worktops' | 'inARun' | 'onOperations',
    readonly string[]
  >
>

/** A file without lines has one all the same: the line itself, called "line". */
const THE_LINE = 'line'

const ids = (list: readonly { readonly id: string }[]): readonly string[] => list.map((item) => item.id)

function idsOf(kitchen: Kitchen): Ids {
  const [walls, units, lines] = [ids(kitchen.walls), ids(kitchen.units), ids(kitchen.lines)]
  const [appliances, worktops, parts] = [
    ids(kitchen.appliances),
    ids(kitchen.worktops),
    ids(kitchen.finishing),
  ]
  return {
    walls,
    units,
    lines: lines.length === 0 ? [THE_LINE] : lines,
    appliances,
    worktops,
    inARun: [...units, ...parts],
    onOperations: [...units, ...walls, ...appliances, ...parts, ...worktops, ...ids(kitchen.rails)],
  }
}

function each(
  found: readonly string[],
  path: JsonPath,
  thing: string,
  among: readonly string[],
): readonly Reference[] {
  return found.map((id, index) => ({ id, path: [...path, index], thing, among }))
}

function one(
  id: string | null | undefined,
  path: JsonPath,
  thing: string,
  among: readonly string[],
): readonly Reference[] {
  return id === null || id === undefined ? [] : [{ id, path, thing, among }]
}

function isHeight(value: object): value is HeightPosition {
  return 'aboveFloor' in value && 'line' in value
}

/** Walls and lines are named in many places, always by the same key. A line is only used by a height read from it. */
function toWallsAndLines(kitchen: Kitchen, { walls, lines }: Ids): readonly Reference[] {
  return objectsIn(kitchen).flatMap(({ value, path }) => {
    if (isHeight(value)) {
      const isUsed = hasValue(value.up) || hasValue(value.down)
      return isUsed ? one(value.line, [...path(), 'line'], 'line', lines) : []
    }
    return 'wall' in value && typeof value.wall === 'string'
      ? one(value.wall, [...path(), 'wall'], 'wall', walls)
      : []
  })
}

function toLines(kitchen: Kitchen, { lines }: Ids): readonly Reference[] {
  const readings = kitchen.floor.readings.flatMap((reading, i) =>
    hasValue(reading.drop) ? one(reading.line, ['floor', 'readings', i, 'line'], 'line', lines) : [],
  )
  const carried = kitchen.lines.flatMap((line, i) =>
    line.carried.flatMap((mark, j) =>
      one(mark.line, ['lines', i, 'carried', j, 'line'], 'line before it', lines.slice(0, i)),
    ),
  )
  return [...readings, ...carried]
}

function ofUnits(kitchen: Kitchen, { appliances, inARun }: Ids): readonly Reference[] {
  return kitchen.units.flatMap((unit, i) => [
    ...one(unit.order.rightOf, ['units', i, 'order', 'rightOf'], 'unit or finishing part', inARun),
    ...one(unit.order.leftOf, ['units', i, 'order', 'leftOf'], 'unit or finishing part', inARun),
    ...one(unit.applianceBay, ['units', i, 'applianceBay'], 'appliance', appliances),
  ])
}

function ofTheRest(kitchen: Kitchen, { units, appliances, worktops, inARun }: Ids): readonly Reference[] {
  return [
    ...kitchen.rails.flatMap((rail, i) => each(rail.units, ['rails', i, 'units'], 'unit', units)),
    ...kitchen.appliances.flatMap((appliance, i) =>
      one(appliance.over, ['appliances', i, 'over'], 'unit or worktop', [...units, ...worktops]),
    ),
    ...kitchen.finishing.flatMap((part, i) => [
      ...each(part.of, ['finishing', i, 'of'], 'unit', units),
      ...one(part.order?.rightOf, ['finishing', i, 'order', 'rightOf'], 'unit or finishing part', inARun),
      ...one(part.order?.leftOf, ['finishing', i, 'order', 'leftOf'], 'unit or finishing part', inARun),
    ]),
    ...kitchen.worktops.flatMap((worktop, i) => [
      ...each(worktop.over, ['worktops', i, 'over'], 'unit', units),
      ...worktop.cutouts.flatMap((cutout, k) =>
        one(cutout.for, ['worktops', i, 'cutouts', k, 'for'], 'appliance', appliances),
      ),
    ]),
  ]
}

function ofWishes(kitchen: Kitchen, { onOperations }: Ids): readonly Reference[] {
  return kitchen.wishes.order.flatMap((wish, i) =>
    (['before', 'after'] as const).flatMap((side) =>
      one(wish[side].on, ['wishes', 'order', i, side, 'on'], 'wall, unit or other part', onOperations),
    ),
  )
}

function missing(kitchen: Kitchen, { id, path, thing, among }: Reference): Problem {
  const meant = closest(id, among)
  const there = among.length === 0 ? 'None is listed.' : `Listed: ${listed(among)}.`
  const mend = meant === undefined ? 'Name one that is listed, or list it.' : `Did you mean ${shown(meant)}?`
  const message = `There is no ${thing} ${shown(id)}. ${there}`
  return { kind: 'missing-reference', path: placeIn(kitchen, path), message, mend }
}

/** Names of walls, lines, units, appliances and parts that are not in the file. */
export function references(kitchen: Kitchen): readonly Problem[] {
  const all = idsOf(kitchen)
  return [
    ...toWallsAndLines(kitchen, all),
    ...toLines(kitchen, all),
    ...ofUnits(kitchen, all),
    ...ofTheRest(kitchen, all),
    ...ofWishes(kitchen, all),
  ]
    .filter(({ id, among }) => !among.includes(id))
    .map((reference) => missing(kitchen, reference))
}
