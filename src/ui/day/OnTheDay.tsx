import { useState } from 'react'
import type { Operation } from '../../core/plan/types'
import { useApp } from '../app-context'
import { NothingOpen } from '../NothingOpen'
import { DayCard } from './DayCard'
import { Trouble } from './Trouble'

/** The first operation that is not done yet: big, one thing at a time, hands full. */
export function OnTheDay() {
  const plan = useApp((s) => s.plan)
  const [chosen, setChosen] = useState<string | null>(null)
  const [hasTrouble, setTrouble] = useState(false)
  if (plan === null || plan.operations.length === 0) return <NothingOpen />
  if (hasTrouble) return <Trouble onBack={() => setTrouble(false)} />
  const now = plan.operations.findIndex((o) => !o.done)
  const current = now < 0 ? plan.operations.length - 1 : now
  const found = plan.operations.findIndex((o) => o.id === chosen)
  const at = found < 0 ? current : found
  const operation = plan.operations[at] as Operation
  const show = (index: number) => setChosen(index === current ? null : (plan.operations[index]?.id ?? null))
  return (
    <DayCard key={operation.id} plan={plan} at={at} operation={operation} onDone={() => setChosen(null)}>
      <div className="pair">
        <button type="button" className="button" disabled={at === 0} onClick={() => show(at - 1)}>
          Back
        </button>
        <button type="button" className="button" onClick={() => setTrouble(true)}>
          Something is wrong
        </button>
      </div>
      {at !== current && (
        <button type="button" className="button" onClick={() => setChosen(null)}>
          To what comes now
        </button>
      )}
    </DayCard>
  )
}
