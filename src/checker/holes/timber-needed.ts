import { type Case, wallOf } from '../case'
import { isKnown, less, type Measure } from '../measure'
import { groupOf, type UnitStretch } from '../positions'
import { isStudWall } from '../wall-make-up'
import { backRailMiddle, fixingHeight, hookEdge, secondHeight } from './fixing-heights'
import { type ExpectedHole, SURELY } from './hole'
import { cleatHoles } from './in-a-row'
import { besideHoles, noggingHoles, restraintBetweenStuds, secondHoles, studHoles } from './in-timber'

/** A unit that too little to screw into stands behind, and the fixing it is needed for. */
export interface TimberNeed {
  readonly unit: string
  readonly purpose: 'second-fixing' | 'tall-restraint' | 'back-rail' | 'cleat'
}

export function timberNeeded(c: Case): readonly TimberNeed[] {
  return [...c.units.values()].flatMap((at): readonly TimberNeed[] => {
    const wall = wallOf(c, at.wall)
    const need = fixedBack(c, at)
    if (wall === undefined || need === null || !isStudWall(wall)) return []
    if (!isKnown(at.left) || !isKnown(at.right) || !isKnown(at.unit.board)) return []
    const enough = need.holes.filter((hole) => !hole.optional).length >= need.atLeast
    // Timber of the file may be at the right height, when that is not known.
    const open = !isKnown(need.height) && wall.noggings.length > 0
    return enough || open ? [] : [{ unit: at.unit.id, purpose: need.purpose }]
  })
}

interface FixedBack extends TimberNeed {
  readonly height: Measure
  readonly holes: readonly ExpectedHole[]
  readonly atLeast: number
}

/** The holes by which a unit is held into timber, and how many it takes: one holds a tall back, two hold a hung unit up. */
function fixedBack(c: Case, at: UnitStretch): FixedBack | null {
  const unit = at.unit.id
  const wall = wallOf(c, at.wall)
  if (wall === undefined) return null
  if (groupOf(at.unit) === 'tall') {
    const height = fixingHeight(c, at.unit)
    const inStuds = studHoles(c, wall, at, '', 'tall-restraint', height, SURELY)
    const holes = [...inStuds, ...restraintBetweenStuds(c, wall, at, '', height, inStuds)]
    return { unit, purpose: 'tall-restraint', height, holes, atLeast: 1 }
  }
  switch (at.unit.stands) {
    case 'plates':
    case 'rail':
      return {
        unit,
        purpose: 'second-fixing',
        height: secondHeight(c, at.unit),
        holes: secondHoles(c, at, SURELY),
        atLeast: 2,
      }
    case 'back-rail-screws': {
      const height = backRailMiddle(c, at.unit)
      const inStuds = studHoles(c, wall, at, '', 'back-rail', height, SURELY)
      const sure = inStuds.filter((hole) => !hole.optional)
      const between = noggingHoles(c, wall, at, '', 'back-rail', height, sure)
      const centred = [...sure, ...between]
      const beside = besideHoles(c, wall, at, '', 'back-rail', height, SURELY, centred)
      return { unit, purpose: 'back-rail', height, holes: [...centred, ...beside], atLeast: 2 }
    }
    case 'cleat': {
      const height = less(hookEdge(c, at.unit), at.unit.hanging.plateHoleBelow)
      return { unit, purpose: 'cleat', height, holes: cleatHoles(c, at, SURELY), atLeast: 2 }
    }
    default:
      return null
  }
}
