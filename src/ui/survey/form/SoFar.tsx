import { memo, useDeferredValue } from 'react'
import type { Weight } from '../../../core/plan/types'
import { useApp } from '../../app-context'
import { ProblemList } from '../../ProblemList'
import { count as counted } from '../../words'
import { MeasureNext } from '../MeasureNext'
import { RoomPlan } from '../RoomPlan'

/** Drawn anew with another plan, and with nothing else. */
const [RoomBeside, NextBeside] = [memo(RoomPlan), memo(MeasureNext)]

/** What has come of the survey so far, while it is typed: what does not go together, how much was found, what to measure next. */
export function SoFar() {
  const plan = useDeferredValue(useApp((s) => s.plan))
  const problems = useApp((s) => s.problems)
  const isBehind = useApp((s) => s.isBehind)
  const hasOrder = useApp((s) => s.noPlan === null)
  const found = (weight: Weight): number => plan?.findings.filter((f) => f.weight === weight).length ?? 0
  return (
    <div className="beside so-far">
      <ProblemList title="This does not go together yet." problems={problems} />
      <section className="sheet">
        <h2>So far</h2>
        {plan === null && hasOrder && <p>Nothing can be worked out yet.</p>}
        {!hasOrder && <p>What is wished for cannot all be kept: see what was found.</p>}
        {plan !== null && (
          <p>
            {isBehind && 'From before the last change: '}
            {counted(plan.operations.length, 'step', 'steps')} so far,{' '}
            {found('stop') > 0 && `${counted(found('stop'), 'thing', 'things')} to mend, `}
            {counted(found('ask'), 'question', 'questions')} open. <a href="#survey">What was found</a>
          </p>
        )}
      </section>
      {plan !== null && plan.walls.length > 0 && <RoomBeside plan={plan} />}
      {plan !== null && <NextBeside plan={plan} />}
    </div>
  )
}
