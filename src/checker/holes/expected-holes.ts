import type { Case } from '../case'
import { notKnown } from '../measure'
import { isHung } from '../positions'
import { bracketGroups, sideGroups } from './at-the-sides'
import { backRailMiddle, hasBrackets } from './fixing-heights'
import type { ExpectedHole, HoleGroup, Refusing } from './hole'
import { cleatHoles, plateHoles, railHoles } from './in-a-row'
import { secondHoles } from './in-timber'

/** Edges of bands and places of holes together are good to a few mm; places are 10 mm apart. */
const EDGES_GOOD_TO = [0, 2, 4, 6, 8, 10, 12, 14]

const REFUSING: readonly Refusing[] = (['none', 'ends', 'all'] as const).flatMap((perhaps) =>
  EDGES_GOOD_TO.map((margin) => ({ perhaps, margin })),
)

export function expectedHoles(c: Case): readonly HoleGroup[] {
  const units = [...c.units.values()]
  const moving = (prefix: string, places: (how: Refusing) => readonly ExpectedHole[]): HoleGroup => ({
    prefix,
    ways: REFUSING.map((how) => () => withOpen(c, places(how))),
  })
  return [
    ...units
      .filter((u) => u.unit.stands === 'plates')
      .map((u) => ({ prefix: `plate.${u.unit.id}.`, ways: [() => [plateHoles(c, u)]] })),
    ...c.given.rails.map((rail) => moving(`rail.${rail.id}.`, (how) => railHoles(c, rail, how))),
    ...units
      .filter((u) => isHung(u.unit))
      .map((u) => moving(`second.${u.unit.id}.`, (how) => secondHoles(c, u, how))),
    ...units.filter((u) => hasBrackets(u.unit)).flatMap((u) => bracketGroups(c, u, moving)),
    ...units
      .filter((u) => u.unit.stands === 'back-rail-screws')
      .flatMap((u) => sideGroups(c, u, 'back-rail', backRailMiddle(c, u.unit), moving)),
    ...units
      .filter((u) => u.unit.stands === 'cleat')
      .map((u) => moving(`cleat.${u.unit.id}.`, (how) => cleatHoles(c, u, how))),
  ]
}

/** On a wall where the place of something is not known, where a hole can go need not be known either. */
function withOpen(c: Case, holes: readonly ExpectedHole[]): readonly (readonly ExpectedHole[])[] {
  const wall = holes[0]?.wall ?? ''
  if (c.bands.get(wall)?.unsure !== true) return [holes]
  const open = holes.map((h) => ({
    ...h,
    along: notKnown(`walls.${wall}`),
    optional: h.id.endsWith('.refused'),
  }))
  return [holes, open]
}
