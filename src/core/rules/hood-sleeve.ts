import { type Basis, hasValue, known } from '../figure'
import { heightNamed } from '../heights/height-named'
import { type HoodOverHob, hoodPlaces, leastOverWorktop } from '../placing/hood-places'
import { overLimit } from '../placing/over-limit'
import { sum } from '../survey/sum'
import { applianceSaid } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a chimney is about 300 deep at the wall; a hood more than 100 mm over its least height draws badly',
}
/** Out from the wall, where the middle of the chimney meets the ceiling. */
const MIDDLE = known(150, 0, 'mm', [], practice)
const HIGHER = known(100, 0, 'mm', [], practice)

function judged(site: Site, place: HoodOverHob): Found | null {
  const { hood, wall, middle } = place
  if (!hasValue(hood.sleeveMin) && !hasValue(hood.sleeveMax)) return null
  const top = heightNamed(site.heights, 'worktop-top')
  const stated = site.survey.height(hood.underside, { wall, along: middle, out: MIDDLE })
  const hangs = hasValue(stated) ? sum('mm', rule.basis, [stated], [top]) : leastOverWorktop(place).least
  // How high it hangs is another rule's to ask.
  if (hangs === null) return null
  const common = { subjects: [hood.id], about: [hood.id], where: { wall, along: middle } }
  const ceiling = site.survey.ceilingAt(wall, middle, MIDDLE)
  const there = sum(
    'mm',
    rule.basis,
    [ceiling],
    [hasValue(stated) ? stated : sum('mm', rule.basis, [top, hangs])],
  )
  const long = sum('mm', rule.basis, [hood.sleeveMin], [there])
  const short = sum('mm', rule.basis, [there], [hood.sleeveMax])
  const name = applianceSaid(hood)
  const values = { hood: name, hangs, there, min: hood.sleeveMin, max: hood.sleeveMax, long, short }
  const tooLong = overLimit(long)
  if (tooLong === 'over' || tooLong === 'near') {
    const weight = tooLong === 'over' ? 'stop' : 'ask'
    return {
      ...common,
      weight,
      said: [tooLong === 'over' ? 'long' : 'may-be-long', values],
      ask: ['ask.long'],
    }
  }
  const tooShort = overLimit(short)
  if (tooShort !== 'over' && tooShort !== 'near') return null
  const past = overLimit(sum('mm', practice, [short], [HIGHER]))
  const said = past === 'over' ? 'short' : 'hang-higher'
  return { ...common, weight: past === 'over' ? 'stop' : 'warn', said: [said, values], ask: ['ask.short'] }
}

/** F101: a chimney hood whose sleeve is too long for the room over it, or does not reach the ceiling. */
export const rule: Rule = {
  id: 'hood-sleeve',
  heading: 'The chimney of the hood',
  catches: ['F101'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'from the lowest the hood may hang up to the ceiling over it, against its sleeve pushed in and drawn out',
  },
  why: 'The sleeve is sold for one range of ceilings; too long it holds the hood down over the hob, too short it ends in the air.',
  words: {
    long: '{hood} does not fit under the ceiling: hung {hangs} over the worktop there are {there} over its underside, and its sleeve pushed in takes {min}. It is {long} too long.',
    'may-be-long':
      '{hood} may not fit under the ceiling: hung {hangs} over the worktop there are {there} over its underside, and its sleeve pushed in takes {min}. Readings this near cannot tell: read the ceiling over the hob again.',
    short:
      'The sleeve of {hood} does not reach the ceiling: hung {hangs} over the worktop there are {there} over its underside, and drawn out it reaches {max}. It is {short} too short.',
    'hang-higher':
      'The sleeve of {hood} reaches the ceiling only if the hood hangs {short} higher than {hangs} over the worktop: there are {there} over its underside, and drawn out the sleeve reaches {max}.',
    'ask.long':
      'Ask its maker for a shorter sleeve, or have it cut by whoever its maker allows. The hood never hangs lower.',
    'ask.short': 'Ask its maker for a longer sleeve.',
  },
  check: (site) =>
    hoodPlaces(site.kitchen, site.survey, site.units).flatMap((place) => judged(site, place) ?? []),
}
