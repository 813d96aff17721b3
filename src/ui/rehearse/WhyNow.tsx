import { type ComponentProps, lazy, type ReactNode, Suspense, useState } from 'react'
import type { Operation, Plan } from '../../core/plan/types'
import { openInSight } from '../bring-into-view'
import type { Asked, WhyAnswer as WhyAnswerHere } from './WhyAnswer'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

const notFetched = <p>This could not be fetched. Open the page again when there is a line.</p>

/** The answers come after the first step; where the line fails, the step itself stays. */
const WhyAnswer = lazy(() =>
  import('./WhyAnswer').then(
    (m) => ({ default: m.WhyAnswer }),
    () => ({ default: (_: ComponentProps<typeof WhyAnswerHere>): ReactNode => notFetched }),
  ),
)
const BecauseNow = lazy(() =>
  import('./WhyAnswer').then(
    (m) => ({ default: m.BecauseNow }),
    () => ({ default: (_: Props): ReactNode => null }),
  ),
)
const Reorder = lazy(() =>
  import('./order/Reorder').then(
    (m) => ({ default: m.Reorder }),
    () => ({ default: (_: Props): ReactNode => notFetched }),
  ),
)

/** What can be asked of the place of a step, in the words of the one who asks. */
const QUESTIONS: readonly (readonly [Asked | 'order', string])[] = [
  ['now', 'Why now?'],
  ['chain', 'How it comes to this'],
  ['first', 'Could this come first?'],
  ['order', 'Change the order'],
]

/** Why this operation stands where it does, read off the same reasons that put it there; and another place for it. */
export function WhyNow({ plan, operation }: Props) {
  const [asked, setAsked] = useState<Asked | 'order' | null>(null)
  return (
    <section className="why" aria-label="Why now">
      <Suspense fallback={null}>
        <BecauseNow plan={plan} operation={operation} />
      </Suspense>
      {QUESTIONS.map(([question, text]) => (
        <button
          key={question}
          type="button"
          className="link"
          aria-expanded={asked === question}
          onClick={() => setAsked(asked === question ? null : question)}
        >
          {text}
        </button>
      ))}
      {asked !== null && (
        <Suspense fallback={<p>On its way.</p>}>
          <div key={asked} ref={openInSight}>
            {asked === 'order' ? (
              <Reorder plan={plan} operation={operation} />
            ) : (
              <WhyAnswer plan={plan} operation={operation} asked={asked} />
            )}
          </div>
        </Suspense>
      )}
    </section>
  )
}
