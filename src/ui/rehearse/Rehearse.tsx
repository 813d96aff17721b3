import { type ReactNode, useEffect } from 'react'
import { indexOf } from '../../state/store'
import { useActions, useApp } from '../app-context'
import { StepButtons } from './StepButtons'
import { StepSlip } from './StepSlip'
import { Tape } from './Tape'

/** The 3D walkthrough with its slip and tape; `stage` is the picture, which may be missing. */
export function Rehearse({ stage }: { readonly stage: ReactNode }) {
  const plan = useApp((s) => s.plan)
  const index = useApp(indexOf)
  useStepKeys()
  if (plan === null) return <Waiting />
  const operation = plan.operations[index]
  return (
    <div className="rehearse">
      <div className="stage" aria-hidden="true">
        {stage}
      </div>
      <div className="side">
        <StepSlip plan={plan} index={index} />
        <StepButtons plan={plan} index={index} />
      </div>
      <Tape plan={plan} index={index} />
      <p className="visually-hidden" aria-live="polite">
        {operation === undefined ? '' : `Step ${index + 1} of ${plan.operations.length}`}
      </p>
    </div>
  )
}

function Waiting() {
  const working = useApp((s) => s.working)
  const noPlan = useApp((s) => s.noPlan)
  return (
    <div className="page">
      <p>{working ? 'Working it out.' : noPlan ? 'No order is possible; see Survey and delivery.' : 'No kitchen is open.'}</p>
    </div>
  )
}

/** Right and left step through, as long as nothing that uses these keys itself has the focus. */
function useStepKeys() {
  const actions = useActions()
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const target = event.target as HTMLElement | null
      if (target?.closest('input, select, textarea, [role=slider]') || event.altKey || event.ctrlKey || event.metaKey) return
      if (event.key === 'ArrowRight') actions.step(1)
      else if (event.key === 'ArrowLeft') actions.step(-1)
      else return
      event.preventDefault()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [actions])
}
