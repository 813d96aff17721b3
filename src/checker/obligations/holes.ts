import type { Hole } from '../../core/plan/types'
import { agree, NEAR, round } from '../agree'
import { hits, OPEN } from '../bands/band'
import { type Case, wallOf } from '../case'
import { expectedHoles } from '../holes/expected-holes'
import type { ExpectedHole, HoleGroup } from '../holes/hole'
import { metBeside } from '../holes/in-timber'
import { isKnown } from '../measure'
import { drills } from '../must-come-before'
import { type Refusal, type Refuse, refusalList } from '../report'
import { fromLeft } from '../room'
import { isStudWall, isUsable } from '../wall-make-up'
import { checkDepth } from './hole-depth'

/** Every hole is where the rules of the trade put it, none is missing, and none is called better than it is. */
export function checkHoles(c: Case): void {
  const expected = expectedHoles(c).flatMap((group) => {
    const { holes, faults } = bestWay(c, group)
    for (const { rule, what, say } of faults) c.refuse(rule, what, say)
    return holes
  })
  for (const hole of c.plan.holes) {
    const own = expected.find((e) => e.id === hole.id)
    if (own === undefined) checkUnruled(c, hole)
    else if (!isKnown(own.along)) checkBehind(c, hole)
    checkVerdict(c, hole)
    checkDepth(c, hole)
    checkTimber(c, hole)
  }
  checkNumbers(c)
  checkDrilledOnce(c)
}

/** The way the holes of a group come out that the plan keeps, or else the one it is nearest to. */
function bestWay(c: Case, group: HoleGroup): Way {
  let best: Way | undefined
  for (const ways of group.ways) {
    for (const holes of ways()) {
      const way = { holes, faults: faultsOf(c, group.prefix, holes) }
      if (way.faults.length === 0) return way
      if (best === undefined || way.faults.length < best.faults.length) best = way
    }
  }
  return best ?? { holes: [], faults: [] }
}

interface Way {
  readonly holes: readonly ExpectedHole[]
  readonly faults: readonly Refusal[]
}

/** What is wrong with the plan if these are the holes the rules ask for. */
function faultsOf(c: Case, prefix: string, holes: readonly ExpectedHole[]): readonly Refusal[] {
  const { refuse, report } = refusalList()
  for (const own of holes) checkExpected(c, own, refuse)
  for (const hole of c.plan.holes) {
    if (hole.id.startsWith(prefix) && !holes.some((own) => own.id === hole.id)) {
      refuse('hole', hole.id, 'no rule puts a hole there')
    }
  }
  return report().refusals
}

function checkExpected(c: Case, own: ExpectedHole, refuse: Refuse): void {
  const hole = c.plan.holes.find((h) => h.id === own.id)
  if (hole === undefined) {
    if (!own.optional) refuse('hole missing', own.id, 'the rules put a hole there')
    return
  }
  if (hole.wall !== own.wall || hole.purpose !== own.purpose) {
    refuse('hole', own.id, 'its wall or purpose is another')
  }
  const leftOpen = own.alongOpen === true && hole.along.state === 'unknown'
  if (!leftOpen) agree(refuse, 'hole', `${own.id} along`, hole.along, own.along)
  agree(refuse, 'hole', `${own.id} height`, hole.height, own.height)
  if (hole.stud !== own.stud && own.stud !== null) refuse('hole', own.id, 'it is in another stud')
}

/** A fixing in a stud keeps off its edges; common practice. */
const EDGE_OF_STUD = 12

const RULED = new Set(['rail', 'plate', 'second-fixing', 'base-bracket', 'tall-restraint'])

/** Holes whose place no rule fixes stay behind their own unit. */
function checkUnruled(c: Case, hole: Hole): void {
  if (RULED.has(hole.purpose)) {
    c.refuse('hole', hole.id, 'no rule puts a hole there')
    return
  }
  checkBehind(c, hole)
}

/** Wherever a hole for one unit is, that unit is in front of it. */
function checkBehind(c: Case, hole: Hole): void {
  for (const id of hole.for) {
    const at = c.units.get(id)
    if (at === undefined || hole.along.state === 'unknown') continue
    const outside =
      (at.left.value !== null && hole.along.value < at.left.value) ||
      (at.right.value !== null && hole.along.value > at.right.value)
    if (outside && hole.for.length === 1) c.refuse('hole', hole.id, 'it is not behind its unit')
  }
}

/** Refused means in a band; not refused means in none; nothing unknown or too deep goes as `trace first`. */
function checkVerdict(c: Case, hole: Hole): void {
  if (hole.along.state === 'unknown' || hole.height.state === 'unknown') {
    if (hole.verdict === 'trace first')
      c.refuse('verdict', hole.id, 'nobody knows where it is, so it must be asked about')
    checkHalfPlaced(c, hole)
    return
  }
  const { along, height, verdict } = hole
  const wall = c.bands.get(hole.wall)
  const bands = wall?.bands ?? []
  const inside = hits(bands, along.value, height.value, -NEAR)
  const around = hits(bands, along.value, height.value, NEAR)
  const refusing = inside.filter((b) => b.weight === 'refuse')
  if (verdict !== 'refused' && refusing.length > 0) {
    c.refuse('verdict', hole.id, `it lies in the ${refusing[0]?.kind} band of ${refusing[0]?.about}`)
  }
  if (verdict === 'refused' && !around.some((b) => b.weight !== 'ask') && !badTimber(c, hole)) {
    c.refuse('verdict', hole.id, 'it is refused and lies in no band')
  }
  if (verdict === 'trace first' && badTimber(c, hole)) {
    c.refuse('verdict', hole.id, 'nothing that carries is behind it')
  }
  const asking = inside.filter((b) => b.weight === 'ask')
  if (verdict === 'trace first' && asking.length > 0) {
    c.refuse('verdict', hole.id, `${asking[0]?.about} must be asked about first`)
  }
  if (verdict === 'trace first' && (wall?.unknown.length ?? 0) > 0) {
    c.refuse('verdict', hole.id, `where ${wall?.unknown[0]} is on this wall is not known`)
  }
  if (verdict === 'refused' && hole.number !== null)
    c.refuse('verdict', hole.id, 'a refused hole has no number')
  const cited = new Set(c.plan.bands.map((b) => b.id))
  for (const id of hole.hitBands) if (!cited.has(id)) c.refuse('verdict', hole.id, `there is no band ${id}`)
}

/** A place of which one half is known is refused where a band takes up all that the other half may be. */
function checkHalfPlaced(c: Case, hole: Hole): void {
  const { along, height, verdict } = hole
  const bands = (c.bands.get(hole.wall)?.bands ?? []).filter((b) => b.weight === 'refuse')
  const whole = bands.filter((b) => {
    const anyHeight = b.bottom === -OPEN && b.top === OPEN
    const anywhere = b.left === -OPEN && b.right === OPEN
    if (along.state !== 'unknown' && anyHeight)
      return along.value > b.left + NEAR && along.value < b.right - NEAR
    return (
      height.state !== 'unknown' && anywhere && height.value > b.bottom + NEAR && height.value < b.top - NEAR
    )
  })
  if (whole.length > 0 && verdict !== 'refused')
    c.refuse(
      'verdict',
      hole.id,
      `wherever it comes, it lies in the ${whole[0]?.kind} band of ${whole[0]?.about}`,
    )
}

/** Nothing that carries is behind it: plasterboard alone never does. */
function badTimber(c: Case, hole: Hole): boolean {
  const wall = wallOf(c, hole.wall)
  const along = hole.along.state === 'unknown' ? null : hole.along.value
  const height = hole.height.state === 'unknown' ? null : hole.height.value
  if (wall === undefined || along === null || height === null || !isStudWall(wall)) return false
  const inStud = wall.studs.filter(isUsable).some((stud) => {
    const centre = fromLeft(wall, stud.centre).value
    return centre !== null && Math.abs(along - centre) <= (stud.width.value ?? 0) / 2 - EDGE_OF_STUD + NEAR
  })
  const overTimber = wall.noggings.some((nogging) => {
    const left = fromLeft(wall, nogging.from).value
    const right = fromLeft(wall, nogging.to).value
    const middle = c.levels.onWall(nogging.centre, wall.id, fromLeft(wall, nogging.from)).value
    const within = left !== null && right !== null && along >= left - NEAR && along <= right + NEAR
    return within && middle !== null && Math.abs(height - middle) <= (nogging.depth.value ?? 0) / 2 + NEAR
  })
  return !inStud && !overTimber
}

/** A hole said to be in a stud is where a screw meets it, and the stud is one that was really found. */
function checkTimber(c: Case, hole: Hole): void {
  const wall = wallOf(c, hole.wall)
  if (wall === undefined || hole.stud === null) return
  const stud = wall.studs.find((s) => s.id === hole.stud)
  const centre = stud === undefined ? null : fromLeft(wall, stud.centre).value
  if (stud === undefined || !isStudWall(wall)) {
    c.refuse('hole', hole.id, 'there is no such stud in this wall')
    return
  }
  if (!isUsable(stud) && hole.verdict === 'trace first') {
    c.refuse('hole', hole.id, 'its stud was never found by both edges')
  }
  if (centre === null || hole.along.state === 'unknown') return
  const off = Math.abs(hole.along.value - centre)
  // Plates go where the hanger is; every other fixing is put in the middle of the stud it goes into, or where one beside
  // its unit is met.
  const beside = hole.for.flatMap((id) => {
    const unit = c.units.get(id)
    const met = unit === undefined ? null : metBeside(wall, stud, unit)
    return met === null || met.value === null ? [] : [Math.abs(met.value - centre)]
  })
  const window = Math.max(0, (stud.width.value ?? 0) / 2 - EDGE_OF_STUD)
  const room = hole.purpose === 'plate' ? window : Math.max(0, ...beside)
  if (off > room + NEAR) {
    c.refuse('hole', hole.id, `it is ${round(off)} from the middle of its stud`)
  }
}

function checkNumbers(c: Case): void {
  const seen = new Set<string>()
  const ids = new Set<string>()
  for (const hole of c.plan.holes) {
    if (ids.has(hole.id)) c.refuse('hole', hole.id, 'it is in the plan twice')
    ids.add(hole.id)
    if (hole.number === null) {
      if (hole.verdict !== 'refused') c.refuse('hole', hole.id, 'it has no number on its wall')
      continue
    }
    const key = `${hole.wall} ${hole.number}`
    if (seen.has(key)) c.refuse('hole', hole.id, 'another hole of its wall has the same number')
    seen.add(key)
  }
}

/** A refused hole is never drilled; every other one is, once. */
function checkDrilledOnce(c: Case): void {
  const drilled = c.plan.operations.filter(drills).flatMap((op) => op.holes)
  for (const hole of c.plan.holes) {
    const times = drilled.filter((id) => id === hole.id).length
    if (hole.verdict === 'refused' && times > 0)
      c.refuse('hole', hole.id, 'it is refused, and drilled all the same')
    if (hole.verdict !== 'refused' && times !== 1) c.refuse('hole', hole.id, `it is drilled ${times} times`)
  }
}
