import type { Figure } from '../../core/figure'
import type { NamedFigure, Plan } from '../../core/plan/types'
import { basisText } from '../basis'
import { inputName } from '../names'
import { words } from '../words'

interface Props {
  readonly told: NamedFigure
  readonly plan: Plan
}

/** What a figure is, and what it stands on. Fetched after the first step shows: facts in words are many words. */
export function StandsOn({ told, plan }: Props) {
  return (
    <>
      <p className="about">{words(told.label)}</p>
      {standsOn(told.figure, plan).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  )
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
function standsOn(figure: Figure, plan: Plan): readonly string[] {
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
