import { derive, type Figure, hasValue } from '../figure'
import type { Appliance } from '../kitchen/schema'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

/** What one sheet asks above the worktop: from the pan supports, when it is counted from there. */
function aboveWorktop(sheet: Appliance, hob: Appliance): Figure {
  if (sheet.clearFrom !== 'pan-supports') return sheet.clearAbove
  return derive(
    'mm',
    { kind: 'geometry', why: 'the sheet counts from the pan supports' },
    [sheet.clearAbove, hob.panSupports],
    (c, p) => (c as number) + (p as number),
  )
}

/** The greater of what the two sheets ask; unknown only when neither says. */
function asked(hood: Appliance, hob: Appliance): Figure {
  const both = [aboveWorktop(hood, hob), aboveWorktop(hob, hob)]
  const known = both.filter(hasValue)
  return derive(
    'mm',
    { kind: 'geometry', why: 'the greater of what hood and hob ask' },
    known.length > 0 ? known : both,
    (...v) => Math.max(...v),
  )
}

function undersideOf(site: Site, hood: Appliance): Figure | null {
  const unit = site.unit(hood.over ?? '')
  if (unit !== undefined) return unit.underside
  const { up, down, aboveFloor } = hood.underside
  return [up, down, aboveFloor].some(hasValue) ? site.survey.height(hood.underside) : null
}

function judged(site: Site, hood: Appliance, hob: Appliance): readonly Found[] {
  const top = site.heights.values.find(({ of }) => of === 'worktop-top')?.height
  if (top === undefined) return []
  const need = asked(hood, hob)
  const common = {
    subjects: [hob.id, hood.id],
    about: [hob.id, hood.id, ...(hob.over === null ? [] : [hob.over])],
  }
  const names = { hood: site.name(hood.id), hob: site.name(hob.id) }
  if (!hasValue(need))
    return [{ ...common, weight: 'ask', said: ['no-sheet', names], figures: [need], ask: ['ask'] }]
  const least = derive(
    'mm',
    { kind: 'geometry', why: 'top of the worktop and what is asked above it' },
    [top, need],
    (t, n) => (t as number) + (n as number),
  )
  const underside = undersideOf(site, hood)
  if (underside === null) {
    return [
      {
        ...common,
        weight: 'note',
        said: ['at-least', { ...names, need, least }],
        figures: [least],
        ask: ['ask'],
      },
    ]
  }
  const left = lessThan(underside, least, 'underside of the hood less the lowest it may be')
  const key = margin(left)
  if (key === null || key === 'not-known') return []
  return [
    {
      ...common,
      weight: key === 'short' ? 'stop' : 'ask',
      said: [key, { ...names, underside, need, least, ...(key === 'short' ? { short: missing(left) } : {}) }],
      figures: [left],
      ask: ['ask'],
    },
  ]
}

/** F63: a hood too low over its hob, counted from the right level by both sheets. */
export const rule: Rule = {
  id: 'hood-height',
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
    'at-least':
      'The underside of {hood} goes no lower than {least:signed} from the line: {need} above the worktop, the greater of what its sheet and that of {hob} ask.',
    ask: 'Both sheets, the stricter counts. For gas, the registered engineer confirms it.',
  },
  check: (site) => {
    const hobs = site.kitchen.appliances.filter(({ kind }) => kind === 'hob')
    const hoods = site.kitchen.appliances.filter(({ kind }) => kind === 'hood')
    return hoods.flatMap((hood) => hobs.slice(0, 1).flatMap((hob) => judged(site, hood, hob)))
  },
}
