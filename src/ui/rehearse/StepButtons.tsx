import type { Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { toFirstOpenCheck } from '../Checks'
import { lowerFirst, namesWhole, words } from '../words'
import type { Held } from './held'

interface Props {
  readonly plan: Plan
  readonly index: number
  /** What holds the work here; a rehearsal may go on all the same. */
  readonly held: Held | null
}

/** Back and Next; Next says what comes, and at a hold point what is to be settled first. Always in sight. */
export function StepButtons({ plan, index, held }: Props) {
  const actions = useActions()
  const next = plan.operations[index + 1]
  const [first] = held?.findings ?? []
  return (
    <div className="steps" data-held={held === null ? undefined : ''}>
      {held !== null && (
        <p className="held">
          Held here:{' '}
          <button
            type="button"
            className="link"
            onClick={(e) => (first === undefined ? toFirstOpenCheck(e) : actions.openFinding(first))}
          >
            {held.say}
          </button>
        </p>
      )}
      <button type="button" className="button" disabled={index === 0} onClick={() => actions.step(-1)}>
        Back
      </button>
      <button
        type="button"
        className={held === null ? 'button main' : 'button waits'}
        disabled={next === undefined}
        onClick={() => actions.step(1)}
      >
        <span className="next-words">
          {next === undefined
            ? 'This is the last step'
            : `${held === null ? 'Next' : 'Rehearse on'}: ${namesWhole(lowerFirst(words(next.title)))}`}
        </span>
      </button>
    </div>
  )
}
