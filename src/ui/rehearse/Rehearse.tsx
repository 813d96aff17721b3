import { type ReactNode, useState } from 'react'
import { indexOf } from '../../state/store'
import { useApp } from '../app-context'
import { NothingOpen } from '../NothingOpen'
import { words } from '../words'
import { heldBy } from './held'
import { StepButtons } from './StepButtons'
import { StepSlip } from './StepSlip'
import { useStepKeys } from './step-keys'
import { Tape } from './Tape'

interface Props {
  readonly stage: ReactNode
  /** False while another place is shown: then it takes no keys. */
  readonly isShown: boolean
}

/** The 3D walkthrough with its slip and tape; `stage` is the picture, which may be missing. */
export function Rehearse({ stage, isShown }: Props) {
  const plan = useApp((s) => s.plan)
  const index = useApp(indexOf)
  useStepKeys(isShown, index)
  const operation = plan?.operations[index]
  const [ticked, setTicked] = useTicks(operation?.id ?? '')
  if (plan === null || operation === undefined) return <NothingOpen />
  return (
    <div className="rehearse">
      <div className="stage">{stage}</div>
      <StepSlip plan={plan} operation={operation} index={index} ticked={ticked} onTick={setTicked} />
      <StepButtons plan={plan} index={index} held={heldBy(plan, operation, ticked)} />
      <Tape plan={plan} index={index} />
      <p className="visually-hidden" aria-live="polite">
        Step {index + 1} of {plan.operations.length}: {words(operation.title)}
      </p>
    </div>
  )
}

const none: ReadonlySet<string> = new Set()

/** The checks ticked at one operation; another begins with none. */
function useTicks(id: string): readonly [ReadonlySet<string>, (ticked: ReadonlySet<string>) => void] {
  const [kept, keep] = useState({ id, ticked: none })
  return [kept.id === id ? kept.ticked : none, (ticked) => keep({ id, ticked })]
}
