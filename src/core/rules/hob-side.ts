import { derive, type Figure, hasValue, known } from '../figure'
import type { Appliance } from '../kitchen/schema'
import { cornerSides } from '../placing/corners'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

/** Nearer than this to a tall unit or a wall the sheet is asked for. Common practice. */
const NEAR = 300
/** A sheet prints whole millimetres: a plan drawn short by more than this is short on paper, whatever it is built to, mm. */
const ROUNDED = 0.5

/** Left and right edge of a hob's hole in the worktop, along its wall; of its unit, while no hole is planned. */
function edges(site: Site, hob: Appliance): { wall: string; left: Figure; right: Figure } | null {
  for (const { cutouts } of site.kitchen.worktops) {
    const hole = cutouts.find((c) => c.for === hob.id)
    if (hole === undefined) continue
    const left = site.survey.along(hole.wall, hole.left)
    const right = derive(
      'mm',
      { kind: 'geometry', why: 'left edge and width of the hole' },
      [left, hole.width],
      (l, w) => (l as number) + (w as number),
    )
    return { wall: hole.wall, left, right }
  }
  const unit = site.unit(hob.over ?? '')
  return unit === undefined ? null : { wall: unit.wall, left: unit.left, right: unit.right }
}

const START = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the left corner' })

/** What stands up past the worktop on that wall: tall units, and the walls at its corners. */
function beside(
  site: Site,
  wall: string,
): readonly { id: string; name: string; left: Figure; right: Figure }[] {
  const talls = site.along(wall).filter(({ kind }) => kind === 'tall')
  const ends = cornerSides(site.kitchen, site.survey)
    .filter(({ own }) => own === wall)
    .map(({ end, ownLength }) => {
      const corner = end === 'left' ? START : ownLength
      return { id: wall, name: `the wall at its ${end}`, left: corner, right: corner }
    })
  return [
    ...talls.map(({ unit, left, right }) => ({ id: unit, name: site.name(unit), left, right })),
    ...ends,
  ]
}

function judged(site: Site, hob: Appliance): readonly Found[] {
  const at = edges(site, hob)
  if (at === null) return []
  return beside(site, at.wall).flatMap((thing): readonly Found[] => {
    if (!hasValue(at.left) || !hasValue(at.right) || !hasValue(thing.left) || !hasValue(thing.right))
      return []
    const onLeft = thing.right.value <= at.left.value
    const gap = onLeft
      ? lessThan(at.left, thing.right, 'from the tall side to the edge of the hob’s hole')
      : lessThan(thing.left, at.right, 'from the edge of the hob’s hole to the tall side')
    const asked = hasValue(hob.clearTall) ? hob.clearTall : hob.clearSide
    const left = lessThan(gap, asked, 'gap less what the sheet asks')
    const onPaper = hasValue(left) && left.value < -ROUNDED
    const key = onPaper ? 'short' : margin(left)
    if (key === null || (key === 'not-known' && (!hasValue(gap) || gap.value >= NEAR))) return []
    return [
      {
        subjects: [hob.id, thing.id, onLeft ? 'left' : 'right'],
        about: [hob.id, hob.over ?? hob.id, thing.id],
        weight: key === 'short' ? 'stop' : 'ask',
        said: [
          key,
          {
            hob: site.name(hob.id),
            thing: thing.name,
            gap,
            ...(key === 'not-known' ? {} : { asked }),
            ...(key === 'short' ? { short: missing(left) } : {}),
          },
        ],
        figures: [left],
        where: { wall: at.wall, along: onLeft ? at.left : at.right },
        ask: [hob.fuel === 'electric' ? 'ask' : 'ask.gas'],
      },
    ]
  })
}

/**
 * F62: a hob too near a tall unit or a side wall. A plan that keeps less than its maker asks is stopped as it is drawn, and
 * not only when it is short by more than it can be built to.
 */
export const rule: Rule = {
  id: 'hob-side',
  heading: 'Room beside the hob',
  catches: ['F62'],
  dangerous: true,
  basis: { kind: 'maker' },
  why: 'A pan handle and a gas flame reach over the side of a hob.',
  words: {
    short: 'There are {gap} between {hob} and {thing}; its sheet asks {asked}. {short} is missing.',
    near: 'There are {gap} between {hob} and {thing}; its sheet asks {asked}. That is met with nothing to spare: measure again when the worktop lies.',
    'not-known':
      'There are {gap} between {hob} and {thing}, and nobody has entered what its sheet asks there.',
    ask: 'Read the sheet of the hob: distance to tall sides and to what burns.',
    'ask.gas':
      'Read the sheet of the hob: distance to tall sides and to what burns. For gas, the registered engineer confirms it.',
  },
  check: (site) =>
    site.kitchen.appliances.filter(({ kind }) => kind === 'hob').flatMap((hob) => judged(site, hob)),
}
