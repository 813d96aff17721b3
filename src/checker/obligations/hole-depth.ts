import type { Hole } from '../../core/plan/types'
import { NEAR, round } from '../agree'
import { type Case, wallOf } from '../case'
import type { GivenFixing, GivenUnit, GivenWall } from '../given'
import { exactly, isKnown, type Measure, notKnown, nought, orElse, sum, work } from '../measure'
import { fixingsFor, isStudWall, layersInFront } from '../wall-make-up'

/** Past this from either face, cables may run outside every band: ask, until traced to that depth and proved dead. */
const CABLE_DEPTH = 50
/** Cables through studs are kept back this far from the stud's face, or behind steel; North America. */
const STUD_SETBACK = 31.75
/** Thickness of the metal of a wall plate or bracket; common practice. */
const PLATE = 2
/** A base that stands so has its back at the wall. */
const WITHOUT_LEGS = new Set(['shims', 'plinth-frame', 'floor-cleat', 'nothing'])

/** The depth follows from the screw and the layers of the wall; deep, or not known, it is asked about. */
export function checkDepth(c: Case, hole: Hole): void {
  const wall = wallOf(c, hole.wall)
  if (wall === undefined) return
  const fixing = c.given.fixings.find((f) => f.id === hole.fixing)
  if (
    hole.fixing !== null &&
    (fixing === undefined || !fixingsFor(c.given.fixings, wall, hole.purpose).includes(fixing))
  ) {
    c.refuse('hole', hole.id, `fixing ${hole.fixing} is not one for this hole and wall`)
  }
  if (fixing !== undefined) checkAgainstFixing(c, hole, wall, fixing)
  else if (hole.depth.state === 'known')
    c.refuse('hole', hole.id, 'it has a depth and no fixing to give it one')
  if (fixing !== undefined && !isKnown(fixing.embedment) && hole.verdict === 'trace first') {
    c.refuse('verdict', hole.id, `how much of ${fixing.id} must hold is not known, so it must be asked about`)
  }
  checkDeep(c, hole, wall)
}

function checkAgainstFixing(c: Case, hole: Hole, wall: GivenWall, fixing: GivenFixing): void {
  const { depth } = hole
  const depths = standOffs(c, hole).map((off) => depthOf(wall, fixing, off))
  const known = depths.flatMap((d) => (d.value === null ? [] : [d.value]))
  if (depth.state === 'unknown') {
    if (known.length === depths.length)
      c.refuse('hole', hole.id, `its depth works out as ${round(Math.max(...known))}`)
    return
  }
  if (known.length === 0) {
    if (depth.state === 'known')
      c.refuse(
        'hole',
        hole.id,
        `its depth rests on ${depths[0]?.missing[0] ?? 'nothing'}, which is not known`,
      )
    return
  }
  const low = Math.min(...known) - NEAR
  const high = Math.max(...known) + NEAR
  if (depth.value < low || depth.value > high) {
    c.refuse(
      'hole',
      hole.id,
      `it is ${depth.value} deep in the plan, worked out again ${round(Math.max(...known))}`,
    )
  }
}

/** From the finished face: the tip of the screw, or the bottom of the hole behind the layers, whichever is deeper. */
function depthOf(wall: GivenWall, fixing: GivenFixing, standOff: Measure): Measure {
  return work(
    [layersInFront(wall), fixing.holeDepth, fixing.length, standOff],
    (front = 0, bit = 0, screw = 0, off = 0) => Math.max(front + bit, screw - off),
  )
}

/** How far the head of the screw may stand off the finished face, by what it goes through. */
function standOffs(c: Case, hole: Hole): readonly Measure[] {
  if (hole.purpose === 'rail') {
    const rail = c.given.rails.find((r) => hole.id.startsWith(`rail.${r.id}.`))
    return [rail?.thickness ?? notKnown('rails')]
  }
  const unit = c.units.get(hole.for[0] ?? '')?.unit
  if (hole.purpose === 'second-fixing' && unit !== undefined) return throughRail(unit)
  if ((hole.purpose === 'back-rail' || hole.purpose === 'cleat') && unit !== undefined) {
    const { thickness } = unit.backRail
    // A cleat lies on the wall whatever its unit is set off it.
    const gap = hole.purpose === 'cleat' ? nought : orElse(unit.standOff, nought)
    return [sum(thickness, gap), sum(thickness, unit.void, gap)]
  }
  if (hole.purpose === 'base-bracket' && unit !== undefined && standsAtWall(unit)) {
    return [sum(unit.backRail.thickness, unit.void, orElse(unit.standOff, nought))]
  }
  return [exactly(PLATE)]
}

/** A box with a rail at its back and no legs is screwed through that rail; no bracket comes between. */
function standsAtWall({ stands, backRail }: GivenUnit): boolean {
  const hasRail = isKnown(backRail.edge) || isKnown(backRail.height)
  return hasRail && stands !== null && WITHOUT_LEGS.has(stands)
}

/** Through the unit's own rail, the packing that fills the void behind it, and the gap it is set off the wall. */
function throughRail(unit: GivenUnit): readonly Measure[] {
  const low = isKnown(unit.bottomRail.edge) && isKnown(unit.bottomRail.height)
  const rail = low ? unit.bottomRail.thickness : unit.backRail.thickness
  return [sum(rail, unit.void, orElse(unit.standOff, nought))]
}

function checkDeep(c: Case, hole: Hole, wall: GivenWall): void {
  if (hole.verdict !== 'trace first') return
  if (hole.depth.state === 'unknown') {
    c.refuse('verdict', hole.id, 'its depth is not known, so it must be asked about')
    return
  }
  const deep = hole.depth.value + hole.depth.pm
  const region = c.given.region
  const limit = region === 'north-america' ? STUD_SETBACK : CABLE_DEPTH
  const counts = region === 'north-america' ? isStudWall(wall) : region !== null
  const front = region === 'north-america' ? (layersInFront(wall).value ?? 0) : 0
  if (counts && deep - front > limit && !proved(wall, deep)) {
    c.refuse(
      'verdict',
      hole.id,
      `it goes ${round(deep)} deep: to be asked about until traced and proved dead`,
    )
  }
}

function proved(wall: GivenWall, depth: number): boolean {
  return (
    wall.traced === 'whole' &&
    wall.provedDead === true &&
    wall.tracedDepth.value !== null &&
    wall.tracedDepth.value >= depth
  )
}
