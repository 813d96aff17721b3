import { hasValue } from '../../core/figure'
import type { NamedFigure } from '../../core/plan/types'
import { shownFigure } from '../shown-figure'

/** Holes on a wall that are at one height, and to one depth where they are drilled: said once for all of them. */
export interface HoleGroup {
  readonly height: NamedFigure | null
  readonly depth: NamedFigure | null
  /** Number on the wall drawing, and how far from the left corner; in the order they come. */
  readonly holes: readonly { readonly hole: string; readonly along: NamedFigure | null }[]
}

/** One hole measured in the unit it goes through: a figure for each column, or null. */
export interface UnitHoleRow {
  readonly hole: string
  readonly cells: readonly (NamedFigure | null)[]
}
export interface UnitHoles {
  readonly heads: readonly string[]
  readonly rows: readonly UnitHoleRow[]
}

const ON_WALL = ['label.hole-along', 'label.hole-height', 'label.hole-depth']
const IN_UNIT: readonly (readonly [string, string])[] = [
  ['label.hole-in', 'from the left side, inside'],
  ['label.hole-in-outside', 'from the left side, outside'],
  ['label.hole-up', 'up from the bottom panel, inside'],
  ['label.hole-up-outside', 'up from the underside'],
  ['label.hole-down', 'down from the top'],
  ['label.hole-stop', 'depth stop from the rail'],
]

interface Sorted {
  readonly onWall: readonly HoleGroup[]
  readonly inUnit: UnitHoles
  /** What is about something else. */
  readonly others: readonly NamedFigure[]
}

/** The figures about holes, gathered: those on the wall by height, those in a unit as rows. */
export function holeRows(figures: readonly NamedFigure[]): Sorted {
  const inUnit = figures.filter((f) => IN_UNIT.some(([key]) => key === f.label.key))
  const onWall = figures.filter((f) => ON_WALL.includes(f.label.key))
  return {
    onWall: groups(onWall),
    inUnit: unitHoles(inUnit),
    others: figures.filter((f) => !inUnit.includes(f) && !onWall.includes(f)),
  }
}

const holeOf = (named: NamedFigure) => String(named.label.values['hole'] ?? '')

function byHole(figures: readonly NamedFigure[]): readonly (readonly [string, readonly NamedFigure[]])[] {
  const holes = [...new Set(figures.map(holeOf))]
  return holes.map((hole) => [hole, figures.filter((f) => holeOf(f) === hole)])
}

function groups(figures: readonly NamedFigure[]): readonly HoleGroup[] {
  const found = new Map<string, HoleGroup>()
  for (const [hole, own] of byHole(figures)) {
    const of = (key: string) => own.find((f) => f.label.key === key) ?? null
    const [height, depth] = [of('label.hole-height'), of('label.hole-depth')]
    const key = `${shownText(height)} ${shownText(depth)}`
    const group = found.get(key) ?? { height, depth, holes: [] }
    found.set(key, { ...group, holes: [...group.holes, { hole, along: of('label.hole-along') }] })
  }
  return [...found.values()]
}

/** What is written, and whether it is assumed: figures that differ in either aren't said as one. */
function shownText(named: NamedFigure | null): string {
  if (named === null) return ''
  const { figure, label } = named
  return hasValue(figure) ? `${figure.state} ${shownFigure(label.key, figure).number}` : 'unknown'
}

function unitHoles(figures: readonly NamedFigure[]): UnitHoles {
  const columns = IN_UNIT.filter(([key]) => figures.some((f) => f.label.key === key))
  return {
    heads: columns.map(([, head]) => head),
    rows: byHole(figures).map(([hole, own]) => ({
      hole,
      cells: columns.map(([key]) => own.find((f) => f.label.key === key) ?? null),
    })),
  }
}
