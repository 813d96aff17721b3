import { type Basis, type Figure, valueOf } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { HeightName } from '../kitchen/kinds'
import type { Kitchen } from '../kitchen/schema'
import type {
  HeightLine,
  Heights,
  HeightVariable,
  Hole,
  RailPlan,
  UnitId,
  WallId,
  WallMark,
} from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import { groupUnits, type HeightGroup } from './groups'

export interface LinesAndMarks {
  readonly lines: readonly HeightLine[]
  readonly marks: readonly WallMark[]
}

/**
 * Every line to strike on the walls and every mark to make along them: the line itself on every wall; the heights of
 * the units that stand there, as far as they reach; the hook-on edges of rails and plates; the heights on which brackets
 * and restraints are drilled; the sides of units and bays; the studs that were found.
 *
 * `undersides` gives each unit's own height where it is not just that of its group, as once it has been set.
 */
export function workOutLines(
  kitchen: Kitchen,
  survey: Pick<Survey, 'frames' | 'along'>,
  positions: { readonly units: readonly UnitPosition[] },
  heights: Pick<Heights, 'values'>,
  rails: readonly RailPlan[],
  holes: readonly Hole[],
  undersides: ReadonlyMap<UnitId, Figure> = new Map(),
): LinesAndMarks {
  const wallTop = heights.values.find(({ of }) => of === 'wall-top')?.height
  const lines = survey.frames.flatMap(({ wall, length }) => [
    datum(wall, length),
    ...unitLines(kitchen, wall, positions.units, heights),
    ...rails.filter((rail) => rail.wall === wall).map(railLine),
    ...plateLines(
      positions.units.filter(({ unit }) => unit.wall === wall && unit.stands === 'plates'),
      wallTop,
      undersides,
    ),
    ...bracketLines(holes.filter((hole) => hole.wall === wall)),
  ])
  const marks = survey.frames.flatMap(({ wall }) => [
    ...unitMarks(positions.units.filter(({ unit }) => unit.wall === wall)),
    ...studMarks(kitchen, survey, wall),
  ])
  return { lines, marks }
}

function datum(wall: WallId, length: Figure): HeightLine {
  const height: Figure = {
    state: 'known',
    value: 0,
    pm: 0,
    unit: 'mm',
    basis: { kind: 'geometry', why: 'the line is height 0' },
    from: [],
  }
  return { id: `line.${wall}`, wall, of: 'line', height, from: 0, to: valueOf(length) ?? null }
}

/** The heights that are struck for each group of units. Undersides of standing units are levelled to, not struck. */
const STRUCK: Readonly<Record<HeightGroup, readonly HeightName[]>> = {
  base: ['base-top', 'worktop-top'],
  wall: ['wall-underside', 'wall-top'],
  tall: ['tall-top'],
}

function unitLines(
  kitchen: Kitchen,
  wall: WallId,
  positions: readonly UnitPosition[],
  { values }: Pick<Heights, 'values'>,
): readonly HeightLine[] {
  const units = groupUnits(positions).filter(({ position }) => position.unit.wall === wall)
  const spaces = positions.filter(({ unit }) => unit.wall === wall && unit.kind === 'appliance-space')
  return values.flatMap(({ of, height }) => {
    const reaching = units.filter(
      ({ group, underside }) => STRUCK[group].includes(of) && lineBearsOn(of, underside),
    )
    const along = [...reaching.map(({ position }) => position), ...(of === 'worktop-top' ? spaces : [])]
    const under = of === 'worktop-top' ? along.filter(({ unit }) => isCovered(kitchen, unit.id)) : along
    return under.length === 0 ? [] : [{ id: `${of}.${wall}`, wall, of, height, ...extentOf(under) }]
  })
}

/** A unit with an underside of its own is not set to its group's. */
function lineBearsOn(of: HeightName, underside: HeightVariable): boolean {
  return of !== 'wall-underside' || underside === of
}

function isCovered({ worktops }: Kitchen, unit: string): boolean {
  return worktops.some(({ over }) => over.includes(unit))
}

/** From the leftmost side to the rightmost; null while one of them is not known. */
function extentOf(positions: readonly UnitPosition[]): { from: number | null; to: number | null } {
  const all = (side: 'left' | 'right') => {
    const places = positions.map((position) => valueOf(position[side]))
    return places.every((place) => place !== undefined) ? places : undefined
  }
  const [lefts, rights] = [all('left'), all('right')]
  return {
    from: lefts === undefined ? null : Math.min(...lefts),
    to: rights === undefined ? null : Math.max(...rights),
  }
}

function railLine({ rail, wall, edge, from, to }: RailPlan): HeightLine {
  return {
    id: `rail.${rail}`,
    wall,
    of: 'rail',
    height: edge,
    from: valueOf(from) ?? null,
    to: valueOf(to) ?? null,
  }
}

const hookOnEdge: Basis = {
  kind: 'geometry',
  why: 'the top of the unit, less how far the hook-on edge lies below it',
}

/** One line for each height at which plates hold the units of a wall, named by the first of them. */
function plateLines(
  positions: readonly UnitPosition[],
  wallTop: Figure | undefined,
  undersides: ReadonlyMap<UnitId, Figure>,
): readonly HeightLine[] {
  const edges = positions.flatMap((position) => {
    const { unit, height } = position
    const own = undersides.get(unit.id)
    const top = own === undefined ? wallTop : sum('mm', hookOnEdge, [own, height])
    return top === undefined
      ? []
      : [{ position, edge: sum('mm', hookOnEdge, [top], [unit.hanging.plateBelowTop]) }]
  })
  return rowsOf(edges, ({ edge }) => edge).map((row): HeightLine => {
    const [first] = row as [(typeof row)[number]]
    const { unit } = first.position
    const extent = extentOf(row.map(({ position }) => position))
    return { id: `plate.${unit.id}`, wall: unit.wall, of: 'plate', height: first.edge, ...extent }
  })
}

/** Things at one height together, those whose height is not known too. */
function rowsOf<T>(things: readonly T[], heightOf: (thing: T) => Figure): readonly (readonly T[])[] {
  const rows = new Map<number | undefined, T[]>()
  for (const thing of things) {
    const height = valueOf(heightOf(thing))
    rows.set(height, [...(rows.get(height) ?? []), thing])
  }
  return [...rows.values()]
}

const BRACKETS: readonly Hole['purpose'][] = ['base-bracket', 'tall-restraint']

/** One line for each height at which brackets or restraints are drilled on a wall, named by the first hole. */
function bracketLines(holes: readonly Hole[]): readonly HeightLine[] {
  return BRACKETS.flatMap((purpose) => {
    const drilled = holes
      .filter((hole) => hole.purpose === purpose && hole.verdict !== 'refused')
      .sort((a, b) => (a.id < b.id ? -1 : 1))
    return rowsOf(drilled, ({ height }) => height).map((row): HeightLine => {
      const [first] = row as [Hole]
      const places = row.flatMap(({ along }) => valueOf(along) ?? [])
      const [from, to] =
        places.length < row.length ? [null, null] : [Math.min(...places), Math.max(...places)]
      return {
        id: `bracket.${first.id}`,
        wall: first.wall,
        of: 'bracket',
        height: first.height,
        from,
        to,
        ...(first.throughRail === true ? { throughRail: true } : {}),
      }
    })
  })
}

function unitMarks(positions: readonly UnitPosition[]): readonly WallMark[] {
  return positions.flatMap(({ unit, left, right }) => {
    const kind = unit.kind === 'appliance-space' ? 'bay-edge' : 'unit-edge'
    const mark = (side: 'left' | 'right', along: Figure): WallMark => ({
      id: `${kind}.${unit.id}.${side}`,
      wall: unit.wall,
      kind,
      about: unit.id,
      along,
    })
    return [mark('left', left), mark('right', right)]
  })
}

function studMarks(kitchen: Kitchen, survey: Pick<Survey, 'along'>, wall: WallId): readonly WallMark[] {
  const studs = kitchen.walls.find(({ id }) => id === wall)?.studs ?? []
  return studs
    .filter(({ confirmed }) => confirmed !== 'not-found')
    .map(({ id, centre }) => ({
      id: `stud.${wall}.${id}`,
      wall,
      kind: 'stud',
      about: factId('walls', wall, 'studs', id),
      along: survey.along(wall, centre),
    }))
}
