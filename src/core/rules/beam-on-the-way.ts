import { type Basis, type Figure, hasValue, known } from '../figure'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { type Polygon, planOverlap, prismsAt, sweptHull } from '../placing/solid'
import type { PlacingPath, UnitPlan } from '../plan/types'
import { lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = { kind: 'common-practice', why: 'a tall unit is walked in 10 mm off the floor' }
const WALKED = known(10, 0, 'mm', [], practice)

/** From the highest floor under the corners of a beam up to something. */
function overTheFloor(site: Site, { wall, left, right, near, out }: BoxOnWall, height: Figure): Figure {
  const floors = [left, right].flatMap((along) => [near, out].map((o) => site.survey.floorAt(wall, along, o)))
  const heights = floors.filter(hasValue).map((floor) => sum('mm', rule.basis, [height], [floor]))
  return heights.length === 0 ? height : lowestOf('mm', rule.basis, heights)
}

/** Whether it is walked through under the beam, on the way that was found for it. */
function goesUnder(unit: UnitPlan, path: PlacingPath, beam: Polygon): boolean {
  return path.segments.some((segment) => {
    if (segment.kind !== 'move') return false
    const [dx, dy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y]
    return prismsAt(unit.solid, segment.from).some(
      ({ polygon }) => planOverlap(sweptHull(polygon, dx, dy), beam) > 0,
    )
  })
}

function judged(site: Site, unit: UnitPlan, beam: BoxOnWall): Found | null {
  const polygon = site.obstacles.find(({ id }) => id === beam.id)?.polygon
  const path = site.paths.find((one) => one.unit === unit.unit)
  if (polygon === undefined || !hasValue(beam.bottom)) return null
  const walked = sum('mm', practice, [unit.top, WALKED])
  const short = sum('mm', rule.basis, [walked], [beam.bottom])
  if (!hasValue(short) || short.value <= -short.pm) return null
  // A way that keeps clear of the beam was found: how low it is does not matter.
  if (path !== undefined && !goesUnder(unit, path, polygon)) return null
  const heights = { clear: overTheFloor(site, beam, beam.bottom), needed: overTheFloor(site, beam, walked) }
  const isSure = path === undefined && short.value > short.pm
  return {
    subjects: [unit.unit, beam.id],
    about: [unit.unit, beam.id],
    weight: isSure ? 'stop' : 'ask',
    said: [isSure ? 'low' : 'near', { unit: unit.name, beam: beam.name, ...heights, short }],
    where: { wall: beam.wall, along: beam.left, height: beam.bottom },
    ask: ['ask'],
  }
}

/** F51: a tall unit that is stood up elsewhere and cannot be walked to its place under a beam or downstand. */
export const rule: Rule = {
  id: 'beam-on-the-way',
  heading: 'A beam on the way in',
  catches: ['F51'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'height of the unit as it is walked in against the clear height under the beam',
  },
  why: 'It stood up well in the other half of the room, and now it does not go through.',
  words: {
    low: 'Upright, {unit} needs {needed} to be walked in. Under {beam} there are only {clear}: {short} is missing, and no other way in was found.',
    near: 'Upright, {unit} needs {needed} to be walked in, and its way goes under {beam}, where there are {clear}. Readings this near cannot tell: measure under the beam, at its lowest.',
    ask: 'Carry it under lying down and stand it up past the beam, if the floor there is long enough; wind its legs in or take them off; or build it in its place.',
  },
  check: (site) => {
    const beams = boxesOnWalls(site.kitchen, site.survey).filter(({ kind }) => kind === 'beam')
    if (beams.length === 0) return []
    const talls = site.units.filter(({ kind, pose }) => kind === 'tall' && pose !== null)
    return talls.flatMap((unit) => beams.flatMap((beam) => judged(site, unit, beam) ?? []))
  },
}
