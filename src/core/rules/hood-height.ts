import { type Figure, hasValue } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Appliance } from '../kitchen/schema'
import { type HoodOverHob, hoodPlaces, leastOverWorktop } from '../placing/hood-places'
import { lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

/** How high the hood is planned: as stated, and no higher than the unit or space it is in; null while neither is. */
function undersideOf(site: Site, { hood, wall, middle, within }: HoodOverHob): Figure | null {
  const stated = site.onFace(wall, middle, hood.underside)
  const unit = within === null ? undefined : site.unit(within)
  const either = [stated, ...(unit === undefined ? [] : [unit.underside])].filter(hasValue)
  return either.length === 0 ? null : lowestOf('mm', rule.basis, either)
}

function judged(site: Site, place: HoodOverHob, hob: Appliance): Found | null {
  const { hood, wall, middle, within } = place
  const { least: need, unread } = leastOverWorktop(place)
  const common = {
    subjects: [hob.id, hood.id],
    about: [hob.id, hood.id, ...(within === null ? [] : [within])],
    where: { wall, along: middle },
    from: unread,
    ask: [hob.fuel === 'electric' ? 'ask' : 'ask.gas'],
  } as const
  const names = { hood: site.name(hood.id), hob: site.name(hob.id) }
  if (need === null) return { ...common, weight: 'ask', said: ['no-sheet', names] }
  const least = sum('mm', rule.basis, [heightNamed(site.heights, 'worktop-top'), need])
  const values = { ...names, need, least }
  const underside = undersideOf(site, place)
  const left = underside === null ? null : lessThan(underside, least, 'underside less the lowest it may be')
  const key = left === null ? null : margin(left)
  if (left !== null && underside !== null && (key === 'short' || key === 'near')) {
    return {
      ...common,
      weight: key === 'short' ? 'stop' : 'ask',
      said: [key, { ...values, underside, short: missing(left) }],
    }
  }
  if (unread.length > 0) return { ...common, weight: 'ask', said: ['half-read', values] }
  return underside === null ? { ...common, weight: 'note', said: ['at-least', values] } : null
}

/** A hood of which nobody can tell over which hob it hangs. */
function unplaced(site: Site, hood: Appliance): Found {
  return {
    subjects: [hood.id],
    weight: 'ask',
    said: ['which', { hood: site.name(hood.id) }],
    from: [factId('appliances', hood.id, 'over')],
    ask: ['ask'],
  }
}

/** F63: a hood too low over its hob, counted from the right level by both sheets. */
export const rule: Rule = {
  id: 'hood-height',
  heading: 'How high the hood hangs',
  catches: ['F63'],
  dangerous: true,
  basis: { kind: 'maker' },
  why: 'A hood hung from the worktop where the sheet counts from the pan supports is too low by their height, and grease burns.',
  words: {
    short:
      '{hood} is planned at {underside:signed} from the line; over {hob} it may be no lower than {least:signed}, {need} above the worktop. It is {short} too low.',
    near: '{hood} is planned at {underside:signed} from the line, just where it may begin over {hob}: {least:signed}. Measure again when the worktop lies.',
    'no-sheet':
      'How far {hood} must be above {hob} nobody has entered: read both sheets, and from where each counts.',
    'half-read':
      'How far {hood} must be above {hob} is only half read. What has been entered asks {need} above the worktop, no lower than {least:signed} from the line; the rest may ask for more. Read both sheets, and from where each counts: the worktop or the pan supports.',
    'at-least':
      'The underside of {hood} goes no lower than {least:signed} from the line: {need} above the worktop, the greater of what its sheet and that of {hob} ask.',
    which: 'Over which hob {hood} hangs is not said, so how high it has to hang cannot be told.',
    ask: 'Read both sheets: the stricter counts.',
    'ask.gas': 'Read both sheets: the stricter counts. For gas, the registered engineer confirms it.',
  },
  check: (site) => {
    const isOf = (kind: Appliance['kind']) => site.kitchen.appliances.filter((one) => one.kind === kind)
    if (isOf('hob').length === 0) return []
    const places = hoodPlaces(site.kitchen, site.survey, site.units)
    return isOf('hood').flatMap((hood) => {
      const place = places.find((one) => one.hood.id === hood.id)
      if (place === undefined) return unplaced(site, hood)
      return place.hob === null ? [] : (judged(site, place, place.hob) ?? [])
    })
  },
}
