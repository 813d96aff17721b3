import type { HeightLine, WallMark } from '../../core/plan/types'
import { disagreement, NEAR, round } from '../agree'
import { type Case, topOf, wallOf } from '../case'
import type { GivenUnit } from '../given'
import { chosen } from '../height-demands'
import { hasBrackets, hookEdge } from '../holes/fixing-heights'
import { isKnown, less, type Measure, nought, sum, work } from '../measure'
import { isCarcass, isHung } from '../positions'
import { fromLeft } from '../room'

/** Every line to be struck is at a height chosen, every mark at the edge it marks; and no unit's edge goes unmarked. */
export function checkLines(c: Case): void {
  for (const line of c.plan.lines) checkLine(c, line)
  for (const mark of c.plan.marks) checkMark(c, mark)
  checkAllMarked(c)
  const ids = [...c.plan.lines, ...c.plan.marks].map((x) => x.id)
  if (new Set(ids).size < ids.length) c.refuse('line', 'lines and marks', 'an id is given twice')
}

function checkLine(c: Case, line: HeightLine): void {
  const wall = wallOf(c, line.wall)
  if (wall === undefined) {
    c.refuse('line', line.id, 'it is struck on a wall that is not there')
    return
  }
  const own = heightsOf(c, line)
  const faults = own.map((height) => disagreement(line.height, height))
  // A rail nobody has hung anything on has no height yet.
  const emptyRail =
    line.of === 'rail' && c.given.rails.some((r) => r.wall === line.wall && r.units.length === 0)
  const open = emptyRail && line.height.state === 'unknown'
  const fits = open || faults.some((fault) => fault === null)
  if (!fits) c.refuse('line', line.id, faults[0] ?? 'nothing on this wall asks for such a line')
  const length = wall.length.value
  const ends = [line.from, line.to].filter((x) => x !== null)
  const [from, to] = [line.from, line.to]
  const backwards = from !== null && to !== null && from > to
  // As far as any unit of the wall sticks out past its ends.
  const at = [...c.units.values()].filter((u) => u.wall === line.wall)
  const low = Math.min(0, ...at.map((u) => u.left.value ?? 0)) - 1
  const high = Math.max(length ?? 0, ...at.map((u) => u.right.value ?? 0)) + 1
  const past = length !== null && ends.some((x) => x < low || x > high)
  if (backwards || past) c.refuse('line', line.id, 'it does not run along its wall')
}

/** Where such a line may be on this wall: one height for a group, one per unit for plates, rails and brackets. */
function heightsOf(c: Case, line: HeightLine): readonly Measure[] {
  const units = c.given.units.filter((u) => u.wall === line.wall && isCarcass(u))
  switch (line.of) {
    case 'line':
      return [nought]
    case 'plate':
      return units.filter((u) => u.stands === 'plates').flatMap((u) => hookLines(c, u))
    case 'rail':
      return units.filter((u) => u.stands === 'rail').flatMap((u) => hookLines(c, u))
    case 'bracket':
      return units.filter(hasBrackets).flatMap((u) => {
        const holes = c.plan.holes.filter((h) => h.for.includes(u.id) && h.verdict !== 'refused')
        const railed = work(
          [topOf(c, u), u.backRail.edge, u.backRail.height],
          (t = 0, d = 0, h = 0) => t - d - h / 2,
        )
        const below = u.kind === 'tall' ? 60 : 40
        const own =
          isKnown(u.backRail.edge) && isKnown(u.backRail.height)
            ? railed
            : less(topOf(c, u), { ...nought, value: below })
        return holes.length === 0 && isHung(u) ? [] : [own]
      })
    default:
      return [chosen(c, line.of)]
  }
}

/** The hook-on edge, and the line its fixing holes lie on. */
function hookLines(c: Case, unit: GivenUnit): readonly Measure[] {
  const edge = hookEdge(c, unit)
  return [edge, less(edge, unit.hanging.plateHoleBelow)]
}

function checkMark(c: Case, mark: WallMark): void {
  const wall = wallOf(c, mark.wall)
  const own = marksOf(c, mark)
  if (wall === undefined || own.length === 0) {
    c.refuse('mark', mark.id, 'there is nothing on this wall for it to mark')
    return
  }
  const faults = own.map((along) => disagreement(mark.along, along))
  if (!faults.some((fault) => fault === null)) c.refuse('mark', mark.id, faults[0] ?? '')
}

function marksOf(c: Case, mark: WallMark): readonly Measure[] {
  const wall = wallOf(c, mark.wall)
  if (mark.kind === 'stud') {
    const stud = wall?.studs.find(
      (s) => mark.about === s.id || mark.about === `walls.${wall.id}.studs.${s.id}`,
    )
    if (wall === undefined || stud === undefined) return []
    const centre = fromLeft(wall, stud.centre)
    const half = work([stud.width], (w = 0) => w / 2)
    return [centre, less(centre, half), sum(centre, half)]
  }
  const at = c.units.get(mark.about) ?? c.parts.get(mark.about)
  return at === undefined || at.wall !== mark.wall ? [] : [at.left, at.right]
}

function checkAllMarked(c: Case): void {
  for (const [id, at] of c.units) {
    if (at.unit.kind === 'island') continue
    for (const edge of [at.left, at.right]) {
      const { value } = edge
      if (value === null) continue
      const marked = c.plan.marks.some(
        (m) => m.wall === at.wall && m.along.state !== 'unknown' && Math.abs(m.along.value - value) <= NEAR,
      )
      if (!marked) c.refuse('mark', id, `its edge at ${round(value)} is not marked`)
    }
  }
}
