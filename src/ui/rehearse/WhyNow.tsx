import { lazy, Suspense, useState } from 'react'
import type { Operation, Plan } from '../../core/plan/types'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** The answers come after the first step; where the line fails, the step itself stays. */
const WhyAnswer = lazy(() =>
  import('./WhyAnswer').then(
    (m) => ({ default: m.WhyAnswer }),
    () => ({
      default: (_: Props & { readonly asked: 'now' | 'first' }) => (
        <p>This could not be fetched. Open the page again when there is a line.</p>
      ),
    }),
  ),
)

type Asked = 'now' | 'first' | null

/** Why this operation stands where it does, read off the same reasons that put it there. */
export function WhyNow({ plan, operation }: Props) {
  const [asked, setAsked] = useState<Asked>(null)
  const ask = (what: Asked) => setAsked(asked === what ? null : what)
  return (
    <section className="why" aria-label="Why now">
      <button type="button" className="link" aria-expanded={asked === 'now'} onClick={() => ask('now')}>
        Why now?
      </button>
      <button type="button" className="link" aria-expanded={asked === 'first'} onClick={() => ask('first')}>
        Could this come first?
      </button>
      {asked !== null && (
        <Suspense fallback={<p>On its way.</p>}>
          <WhyAnswer plan={plan} operation={operation} asked={asked} />
        </Suspense>
      )}
    </section>
  )
}
