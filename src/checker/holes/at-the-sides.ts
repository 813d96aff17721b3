import { type Case, wallOf } from '../case'
import { isKnown, type Measure, plus } from '../measure'
import { groupOf, type UnitStretch } from '../positions'
import { isStudWall } from '../wall-make-up'
import { fixingHeight } from './fixing-heights'
import { type ExpectedHole, type HoleGroup, isRefused, type Refusing, STEP, STEPS } from './hole'
import { besideHoles, noggingHoles, restraintBetweenStuds, studHoles, window } from './in-timber'

const BRACKET_IN = 30

/** Base brackets and the restraint of a tall. */
export function bracketGroups(
  c: Case,
  at: UnitStretch,
  moving: (prefix: string, places: (how: Refusing) => readonly ExpectedHole[]) => HoleGroup,
): readonly HoleGroup[] {
  const purpose = groupOf(at.unit) === 'tall' ? 'tall-restraint' : 'base-bracket'
  return sideGroups(c, at, purpose, fixingHeight(c, at.unit), moving)
}

/**
 * Two fixings near the sides of a unit: on masonry a bracket's width in from each, where each side gives way by itself; on
 * studs in the outermost ones, chosen together.
 */
export function sideGroups(
  c: Case,
  at: UnitStretch,
  purpose: string,
  height: Measure,
  moving: (prefix: string, places: (how: Refusing) => readonly ExpectedHole[]) => HoleGroup,
): readonly HoleGroup[] {
  const wall = wallOf(c, at.wall)
  if (wall === undefined) return []
  const prefix = `${purpose}.${at.unit.id}.`
  if (isStudWall(wall)) {
    const open = at.unit.stands === null
    return [
      moving(prefix, (how) => {
        const inStuds = studHoles(c, wall, at, purpose, purpose, height, how)
        const sure = inStuds.filter((hole) => !hole.optional)
        const between =
          purpose === 'back-rail'
            ? noggingHoles(c, wall, at, purpose, purpose, height, sure)
            : purpose === 'tall-restraint'
              ? restraintBetweenStuds(c, wall, at, purpose, height, sure)
              : []
        const held = [...inStuds, ...between]
        const beside =
          purpose === 'back-rail' ? besideHoles(c, wall, at, purpose, purpose, height, how, held) : []
        return [...held, ...beside].map((hole) => ({ ...hole, optional: hole.optional || open }))
      }),
    ]
  }
  const { from, to } = window(at, BRACKET_IN)
  // A wall nobody knows the make-up of is not drilled to find out, nor for a unit nobody knows how it stands.
  const optional = wall.construction === null || at.unit.stands === null
  const side = (name: string, first: Measure, inwards: 1 | -1): HoleGroup =>
    moving(`${prefix}${name}`, (how) =>
      steppedHole(c, wall.id, purpose, `${prefix}${name}`, first, inwards, height, how).map((hole) => ({
        ...hole,
        optional: hole.optional || optional,
      })),
    )
  return [side('left', from, 1), side('right', to, -1)]
}

/** A bracket may move towards the middle, 10 mm at a time, out of a band it would fall in. */
function steppedHole(
  c: Case,
  wall: string,
  purpose: string,
  id: string,
  first: Measure,
  inwards: 1 | -1,
  height: Measure,
  how: Refusing,
): readonly ExpectedHole[] {
  // Whether it has to move out of a level band is not known before its height is.
  const alongOpen = !isKnown(height)
  const hole = { id, wall, purpose, along: first, height, stud: null, optional: false, alongOpen }
  // Nor, without the thickness of the panel, where it would be in the first place: the plan may assume one, and move it.
  if (!isKnown(first)) return [hole, { ...hole, id: `${id}.refused`, optional: true }]
  if (!isRefused(c, wall, first, height, how)) return [hole]
  const places = Array.from({ length: STEPS }, (_, i) => plus(first, inwards * STEP * (i + 1)))
  const moved = places.find((along) => !isRefused(c, wall, along, height, how))
  // A first choice that is only too near an edge need not be told of.
  const refused = {
    ...hole,
    id: `${id}.refused`,
    optional: alongOpen || !isRefused(c, wall, first, height),
    alongOpen: false,
  }
  if (moved !== undefined) return [refused, { ...hole, along: moved }]
  // Nowhere to go: the first choice stands in the list as refused, under either name.
  return [
    { ...refused, optional: true },
    { ...hole, optional: true },
  ]
}
