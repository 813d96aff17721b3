import type { Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { words } from '../words'

export function StepButtons({ plan, index }: { readonly plan: Plan; readonly index: number }) {
  const actions = useActions()
  const next = plan.operations[index + 1]
  return (
    <div className="steps">
      <button type="button" className="button" disabled={index === 0} onClick={() => actions.step(-1)}>
        Back
      </button>
      <button type="button" className="button main" disabled={next === undefined} onClick={() => actions.step(1)}>
        {next === undefined ? 'Last step' : `Next: ${lowerFirst(words(next.title))}`}
      </button>
    </div>
  )
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1)
}
