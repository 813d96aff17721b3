import { type Basis, derive, type Figure, hasValue, type ValueFigure } from '../figure'
import { HIGH_KINDS } from '../kitchen/kinds'
import type { FinishingPart } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { partName } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

/** A gap that grows by more than this from one end to the other is seen, and so near the ceiling that it is. Common practice. */
const SEEN = 5
const NEAR_THE_CEILING = 100
/** Units with more than this between them are not one row. Common practice. */
const APART = 100
const seen: Basis = {
  kind: 'common-practice',
  why: 'a gap under the ceiling of less than 100 mm that grows by more than 5 mm is seen',
}

/** The gap from the top of a unit to the ceiling at one of its ends: the smaller of that at the wall and at its front. */
interface Gap {
  readonly unit: UnitPlan
  readonly along: Figure
  readonly gap: ValueFigure
}

function gapsOver(site: Site, units: readonly UnitPlan[]): readonly Gap[] {
  return units.flatMap((unit) => {
    const position = site.positions.find((one) => one.unit.id === unit.unit)
    if (position === undefined) return []
    const front = sum('mm', rule.basis, [position.out, unit.depth])
    return [unit.left, unit.right].flatMap((along): readonly Gap[] => {
      const gaps = [position.out, front].map((out) =>
        sum('mm', rule.basis, [site.survey.ceilingAt(unit.wall, along, out)], [unit.top]),
      )
      const [wall, room] = gaps
      if (wall === undefined || room === undefined || !hasValue(wall) || !hasValue(room)) return []
      return [{ unit, along, gap: wall.value < room.value ? wall : room }]
    })
  })
}

/** Units that stand or hang side by side, row by row: an eye does not carry a line over a wide gap. */
function rowsOf(units: readonly UnitPlan[]): readonly (readonly UnitPlan[])[] {
  const rows: UnitPlan[][] = []
  for (const unit of units) {
    const last = rows.at(-1)?.at(-1)
    const isNext =
      last !== undefined &&
      hasValue(last.right) &&
      hasValue(unit.left) &&
      unit.left.value - last.right.value < APART
    if (isNext) rows.at(-1)?.push(unit)
    else rows.push([unit])
  }
  return rows
}

/** A stretch of high units on one wall, and the cornice over them if one is listed. */
function judged(site: Site, wall: string, units: readonly UnitPlan[], cornice?: FinishingPart): Found | null {
  const gaps = [...gapsOver(site, units)].sort((a, b) => a.gap.value - b.gap.value)
  const [narrow, wide] = [gaps[0], gaps.at(-1)]
  if (narrow === undefined || wide === undefined) return null
  const what = cornice === undefined ? undefined : partName(site.kitchen, cornice)
  const where = { wall, along: narrow.along, height: narrow.unit.top }
  const ends = { wall: site.name(wall), at: narrow.along, least: narrow.gap, most: wide.gap, far: wide.along }
  const about = [...(cornice === undefined ? [] : [cornice.id]), narrow.unit.unit, wide.unit.unit]
  const first = units[0]?.unit ?? wall
  const common = { subjects: [cornice?.id ?? first, wall], about, where }
  if (cornice !== undefined && what !== undefined && hasValue(cornice.height)) {
    const over = sum('mm', rule.basis, [cornice.height], [narrow.gap])
    const stands = overLimit(over)
    if (stands === 'over' || stands === 'near') {
      const said = stands === 'over' ? 'no-room' : 'may-be-no-room'
      const values = { ...ends, what, unit: narrow.unit.name, tall: cornice.height, over }
      return { ...common, weight: stands === 'over' ? 'stop' : 'ask', said: [said, values], ask: ['ask'] }
    }
  }
  const taper = derive('mm', seen, [wide.gap, narrow.gap], (w, n) => (w as number) - (n as number))
  if (!hasValue(taper) || taper.value - taper.pm <= SEEN) return null
  const over = cornice !== undefined && hasValue(cornice.height) ? cornice.height.value : 0
  // Where there is no gap at all, that they do not fit is said elsewhere.
  if (narrow.gap.value <= 0 || narrow.gap.value - over > NEAR_THE_CEILING) return null
  const values = { ...ends, taper }
  return { ...common, weight: 'warn', said: ['taper', values], basis: seen, ask: ['ask.taper'] }
}

/** F57: a ceiling that falls along a row of high units: the cornice closes on it at one end, or the gap is seen to taper. */
export const rule: Rule = {
  id: 'cornice-taper',
  heading: 'Under the ceiling',
  catches: ['F57'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'from the tops of the units to the ceiling between its readings, at both ends of every unit, at the wall and at the front',
  },
  why: 'Units are level and ceilings are not.',
  words: {
    'no-room':
      'The {what} does not go in over {unit}: the ceiling is {least} over it, {at} along {wall}, and the {what} is {tall} high. It is {over} too high there.',
    'may-be-no-room':
      'The {what} may not go in over {unit}: the ceiling is {least} over it, {at} along {wall}, and the {what} is {tall} high. Readings this near cannot tell: read the ceiling there again.',
    taper:
      'The gap over the units on {wall} grows from {least} at {at} to {most} at {far} along the wall: {taper}. So near the ceiling this is seen.',
    ask: 'Take a lower cornice, or set the units lower. A cornice is not cut thinner from above.',
    'ask.taper':
      'Plan a strip over the units, cut to the ceiling, or leave the gap wide and even to the eye.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap(({ id: wall }) => {
      const high = site.along(wall).filter(({ kind }) => HIGH_KINDS.includes(kind))
      const cornices = site.kitchen.finishing.filter(({ kind }) => kind === 'cornice')
      const under = cornices.map((cornice) => ({
        cornice,
        units: high.filter(({ unit }) => cornice.of.includes(unit)),
      }))
      const covered = under.flatMap(({ units }) => units)
      const bare = high.filter((unit) => !covered.includes(unit))
      return [
        ...under.flatMap(({ cornice, units }) => judged(site, wall, units, cornice) ?? []),
        ...rowsOf(bare).flatMap((units) => judged(site, wall, units) ?? []),
      ]
    }),
}
