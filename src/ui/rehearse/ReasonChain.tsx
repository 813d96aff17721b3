import { useState } from 'react'
import { why } from '../../core/order/why'
import type { Operation, Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { words } from '../words'
import { SmallPicture } from './SmallPicture'

const FIRST_SHOWN = 6

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** How the work comes to this step: back from it, one reason after another, to the first thing of all. */
export function ReasonChain({ plan, operation }: Props) {
  const actions = useActions()
  const [isWhole, setWhole] = useState(false)
  const chain = [...(why(plan, operation.id)?.chain ?? [])].reverse()
  if (chain.length === 0) return <p>Nothing has to come before it.</p>
  const shown = isWhole ? chain : chain.slice(0, FIRST_SHOWN)
  const more = chain.length - shown.length
  return (
    <>
      <p className="quiet">Back from here, each step with why the next had to wait for it.</p>
      <ol className="chain">
        {shown.map((reason) => {
          const index = plan.operations.findIndex((o) => o.id === reason.before)
          const earlier = plan.operations[index]
          if (earlier === undefined) return null
          return (
            <li key={reason.id}>
              <SmallPicture plan={plan} operation={earlier} />
              <div>
                <button type="button" className="link" onClick={() => actions.goToOperation(earlier.id)}>
                  {index + 1}. {words(earlier.title)}
                </button>
                <span className="because">{words(reason.because)}</span>
              </div>
            </li>
          )
        })}
      </ol>
      {more > 0 && (
        <button type="button" className="link" onClick={() => setWhole(true)}>
          {more} more, to the beginning
        </button>
      )}
    </>
  )
}
