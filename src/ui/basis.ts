import type { Basis, Figure } from '../core/figure'
import type { Plan } from '../core/plan/types'
import { inputName } from './names'

const ended = (text: string): string => (/[.?]$/.test(text) ? text : `${text}.`)

/** What something stands on, said openly: a source, the maker, geometry, or common practice with none. */
export function basisText(basis: Basis): string {
  switch (basis.kind) {
    case 'survey':
      return 'From your survey.'
    case 'maker':
      return "From the maker's sheet."
    case 'wish':
      return 'Your wish.'
    case 'achieved':
      return 'As read on the day.'
    case 'geometry':
      return ended(`Geometry: ${basis.why}`)
    case 'standard':
      return ended([basis.source, basis.where].filter((part) => part !== '').join(', '))
    case 'common-practice':
      return ended(
        `Common practice, no published source: ${basis.why.replace(/^common practice[:,]?\s*/i, '')}`,
      )
  }
}

const MOST_NAMED = 6

/** What a figure stands on, how true it is, and the facts it came from: one line each. */
export function standsOn(figure: Figure, plan: Plan): readonly string[] {
  const unit = figure.unit === 'deg' ? '°' : ` ${figure.unit}`
  const pm =
    figure.state === 'unknown' ? '' : figure.pm > 0 ? `Right to ± ${figure.pm}${unit}.` : 'Exact as given.'
  const assumed = figure.state === 'assumed' ? 'Assumed: nobody has confirmed it yet.' : ''
  const missing = figure.state === 'unknown' ? `Find out first: ${named(figure.missing, plan)}.` : ''
  const from =
    figure.state === 'unknown' || figure.from.length === 0 ? '' : `Comes from: ${named(figure.from, plan)}.`
  return [basisText(figure.basis), pm, assumed, missing, from].filter((line) => line !== '')
}

function named(ids: readonly string[], plan: Plan): string {
  const first = ids.slice(0, MOST_NAMED).map((id) => inputName(id, plan))
  return [...first, ...(ids.length > MOST_NAMED ? [`${ids.length - MOST_NAMED} more`] : [])].join('; ')
}
