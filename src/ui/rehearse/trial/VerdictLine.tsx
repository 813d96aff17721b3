import type { Lie } from '../../../core/levelling/lie'
import { levelChecks, type NextStep, nextStep, verdictOf } from '../../../core/levelling/next-step'
import type { Trial } from '../../../core/levelling/trial-heights'
import type { Axis } from '../../../core/levelling/vial'
import type { Operation, UnitPlan } from '../../../core/plan/types'
import { groupedNumber } from '../../../core/words/format'
import { tenths } from '../../levelling/level-words'
import { words } from '../../words'

interface Props {
  readonly operation: Operation
  readonly unit: UnitPlan
  readonly trial: Trial
  readonly lie: Lie
}

/** Whether the check of this way is met, and what is to be done then. */
export function VerdictLine({ operation, unit, trial, lie }: Props) {
  const next = nextStep(operation, unit, lie, trial.axis)
  return (
    <>
      <p>
        {verdictText(operation, unit, trial.axis, lie)} {nextText(next)}
      </p>
      {next.kind === 'read-on' && next.checks.length > 0 && (
        <ul>
          {next.checks.map((check) => (
            <li key={check.id}>{words(check.ask)}</li>
          ))}
        </ul>
      )}
    </>
  )
}

function verdictText(operation: Operation, unit: UnitPlan, axis: Axis, lie: Lie): string {
  const asked = levelChecks(operation, unit).find((c) => c.axis === axis)
  const verdict = asked === undefined ? null : verdictOf(asked, lie)
  if (asked === undefined || verdict === null) return 'How true it has to be this way is not known.'
  const { off, over, limit, isWithin } = verdict
  const is = `${tenths(off)} mm out in ${groupedNumber(over)} mm`
  if (isWithin) return `True enough this way: ${is}, and at most ${tenths(limit)} mm is asked.`
  return `Out of true: ${is}, and at most ${tenths(limit)} mm is asked.`
}

function nextText(next: NextStep): string {
  switch (next.kind) {
    case 'turn':
      return 'Turn as it says below, and read again.'
    case 'other-way':
      return next.axis === 'out' ? 'Now read it back to front.' : 'Now read it from side to side.'
    case 'grip':
      return 'One leg bears nothing: wind it out until it grips, and read again.'
    case 'read-on':
      return next.checks.length === 0 ? 'Nothing else is to be read.' : 'The level is done. Now answer:'
  }
}
