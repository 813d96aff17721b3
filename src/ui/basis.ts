import type { Basis } from '../core/figure'

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
