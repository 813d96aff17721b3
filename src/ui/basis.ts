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

/** The parts of a kitchen file, as facts of them are counted. */
const PARTS: Readonly<Record<string, string>> = {
  walls: 'the walls',
  units: 'the units',
  floor: 'the floor',
  ceiling: 'the ceiling',
  lines: 'the line',
  appliances: 'the appliances',
  worktops: 'the worktops',
  finishing: 'the finishing parts',
  rails: 'the rails',
  fixings: 'the fixings',
  wishes: 'your wishes',
  log: 'the day log',
  survey: 'the survey',
  boxes: 'the boxings',
  crew: 'the crew',
}

/** What a figure stands on, how true it is, and the facts it came from: one line each. */
export function standsOn(figure: Figure, plan: Plan): readonly string[] {
  const from = figure.state === 'unknown' ? figure.missing : figure.from
  const begin = figure.state === 'unknown' ? 'Find out first' : 'Comes from'
  return [
    basisText(figure.basis),
    precisionText(figure),
    figure.state === 'assumed' ? 'Assumed: nobody has confirmed it yet.' : '',
    from.length === 0 ? '' : `${begin}: ${named(from, plan)}.`,
  ].filter((line) => line !== '')
}

function precisionText(figure: Figure): string {
  if (figure.state === 'unknown') return ''
  const unit = figure.unit === 'deg' ? '°' : ` ${figure.unit}`
  if (figure.pm > 0) return `Right to ± ${figure.pm}${unit}.`
  return figure.basis.kind === 'geometry' ? '' : 'Exact as given.'
}

/** A few facts by name; many by how many there are of each part of the file. */
function named(ids: readonly string[], plan: Plan): string {
  if (ids.length <= MOST_NAMED) return ids.map((id) => inputName(id, plan)).join('; ')
  const counts = new Map<string, number>()
  for (const id of ids) {
    const part = id.split('.')[0] ?? id
    const name = PARTS[part] ?? part
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  return `${ids.length} facts, ${[...counts].map(([name, n]) => `${n} of ${name}`).join(', ')}`
}
