import type { Figure } from '../../core/figure'
import type { NamedFigure, Plan } from '../../core/plan/types'
import { factsSaid } from '../../core/words/facts-said'
import { basisText } from '../basis'
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

/** What a figure stands on, how true it is, and the facts it came from: one line each. */
function standsOn(figure: Figure, plan: Plan): readonly string[] {
  const from = figure.state === 'unknown' ? figure.missing : figure.from
  const begin = figure.state === 'unknown' ? 'Find out first' : 'Comes from'
  return [
    basisText(figure.basis),
    precisionText(figure),
    figure.state === 'assumed' ? 'Assumed: nobody has confirmed it yet.' : '',
    from.length === 0 ? '' : `${begin}: ${factsSaid(from, plan)}.`,
  ].filter((line) => line !== '')
}

function precisionText(figure: Figure): string {
  if (figure.state === 'unknown') return ''
  const unit = figure.unit === 'deg' ? '°' : ` ${figure.unit}`
  if (figure.pm > 0) return `Right to ± ${figure.pm}${unit}.`
  return figure.basis.kind === 'geometry' ? '' : 'Exact as given.'
}
