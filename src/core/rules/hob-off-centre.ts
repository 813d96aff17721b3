import { type Basis, derive, type Figure, hasValue } from '../figure'
import { type HoodOverHob, hoodPlaces, middleOf } from '../placing/hood-places'
import type { UnitPlan } from '../plan/types'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a college marking sheet takes 1 mm between the middles of hob and hood and rejects more than 3 mm',
}
/** Further apart than this they are not meant for one another, mm. */
const MEANT = 300
const REJECTED = 3
const HIGH: readonly UnitPlan['kind'][] = ['wall', 'corner-wall', 'bridging', 'tall', 'open-end']

interface Over {
  readonly what: 'hood' | 'gap'
  readonly middle: Figure
  readonly about: readonly string[]
}

/** The middle of the gap between the wall units over a hob, where a hood is to hang. */
function gapOver(site: Site, wall: string, at: number): Over | null {
  const high = site.along(wall).filter(({ kind }) => HIGH.includes(kind))
  const left = high.filter(({ right }) => hasValue(right) && right.value <= at).at(-1)
  const right = high.find((unit) => hasValue(unit.left) && unit.left.value >= at)
  if (left === undefined || right === undefined) return null
  const middle = derive(
    'mm',
    rule.basis,
    [left.right, right.left],
    (l, r) => ((l as number) + (r as number)) / 2,
  )
  return { what: 'gap', middle, about: [left.unit, right.unit] }
}

/** Two places off one corner are marked to the mm, however well the wall was measured: their plain values count. */
function judged(site: Site, place: HoodOverHob): Found | null {
  const { hob, hood, wall, within } = place
  if (hob === null) return null
  const own = middleOf(site.kitchen, site.survey, site.units, hob)
  if (own === null || own.wall !== wall || !hasValue(own.middle)) return null
  const over: Over | null =
    within === null
      ? gapOver(site, wall, own.middle.value)
      : { what: 'hood', middle: place.middle, about: [hood.id] }
  if (over === null || !hasValue(over.middle)) return null
  const off = derive('mm', practice, [own.middle, over.middle], (a, b) =>
    Math.abs((a as number) - (b as number)),
  )
  if (!hasValue(off) || off.value <= REJECTED || off.value > MEANT) return null
  return {
    subjects: [hob.id, hood.id],
    about: [hob.id, ...over.about],
    weight: 'warn',
    said: [
      over.what,
      { hob: site.name(hob.id), hood: site.name(hood.id), at: own.middle, middle: over.middle, off },
    ],
    where: { wall, along: own.middle },
    ask: ['ask'],
  }
}

/** F49: a hob whose middle is not under the middle of its hood, or of the gap left for it. */
export const rule: Rule = {
  id: 'hob-off-centre',
  heading: 'Hob and hood out of line',
  catches: ['F49'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'both middles from the same corner' },
  why: 'A filler moved late shifts the base units and not the wall units, and everybody sees it for ever.',
  words: {
    hood: 'The middle of {hob} is {at} from the left corner, that of {hood} {middle}. They are {off} apart.',
    gap: 'The middle of {hob} is {at} from the left corner, that of the gap over it where {hood} hangs {middle}. They are {off} apart.',
    ask: 'Move the hole for the hob, or the filler that shifted the run, before the worktop is cut.',
  },
  check: (site) =>
    hoodPlaces(site.kitchen, site.survey, site.units).flatMap((place) => judged(site, place) ?? []),
}
