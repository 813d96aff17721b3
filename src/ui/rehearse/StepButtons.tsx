import type { Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { lowerFirst, words } from '../words'

/** Back and Next; Next says what comes. Always in sight. */
export function StepButtons({ plan, index }: { readonly plan: Plan; readonly index: number }) {
  const actions = useActions()
  const next = plan.operations[index + 1]
  return (
    <div className="steps">
      <button type="button" className="button" disabled={index === 0} onClick={() => actions.step(-1)}>
        Back
      </button>
      <button
        type="button"
        className="button main"
        disabled={next === undefined}
        onClick={() => actions.step(1)}
      >
        <span className="next-words">
          {next === undefined ? 'This is the last step' : `Next: ${lowerFirst(words(next.title))}`}
        </span>
      </button>
    </div>
  )
}
