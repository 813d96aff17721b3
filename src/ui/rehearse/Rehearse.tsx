import { type ReactNode, useEffect } from 'react'
import { indexOf } from '../../state/store'
import { useActions, useApp } from '../app-context'
import { NothingOpen } from '../NothingOpen'
import { words } from '../words'
import { StepButtons } from './StepButtons'
import { StepSlip } from './StepSlip'
import { Tape } from './Tape'

/** The 3D walkthrough with its slip and tape; `stage` is the picture, which may be missing. */
export function Rehearse({ stage }: { readonly stage: ReactNode }) {
  const plan = useApp((s) => s.plan)
  const index = useApp(indexOf)
  useStepKeys()
  const operation = plan?.operations[index]
  if (plan === null || operation === undefined) return <NothingOpen />
  return (
    <div className="rehearse">
      <div className="stage">{stage}</div>
      <StepSlip plan={plan} operation={operation} index={index} />
      <StepButtons plan={plan} index={index} />
      <Tape plan={plan} index={index} />
      <p className="visually-hidden" aria-live="polite">
        Step {index + 1} of {plan.operations.length}: {words(operation.title)}
      </p>
    </div>
  )
}

/** Keys that step through, wherever the focus is but in something that uses them itself. */
function useStepKeys() {
  const actions = useActions()
  useEffect(() => {
    const moves: Readonly<Record<string, () => void>> = {
      ArrowRight: () => actions.step(1),
      ArrowLeft: () => actions.step(-1),
      Home: () => actions.goToIndex(0),
      End: () => actions.goToIndex(Number.MAX_SAFE_INTEGER),
    }
    const onKey = (event: KeyboardEvent) => {
      const target = event.target instanceof Element ? event.target : null
      const isTaken = target?.closest('input:not([type=checkbox]), select, textarea, [role=slider]') != null
      if (isTaken || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return
      const move = moves[event.key]
      if (move === undefined) return
      event.preventDefault()
      move()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [actions])
}
