import type { Plan } from '../../../core/plan/types'
import { keyOf, words } from '../../words'
import { Sentences } from './HeightPanel'

/** What cannot hold together, and what had to give way. */
export function Clashes({ plan }: { readonly plan: Plan }) {
  const { conflicts, demands, unmet } = plan.heights
  const inClash = new Set(conflicts.flatMap((c) => c.demands))
  const given = demands.filter(({ id }) => unmet.includes(id) && !inClash.has(id))
  return (
    <>
      {conflicts.length > 0 && (
        <div className="height-clashes">
          <h4 className="stop">These cannot all hold</h4>
          {conflicts.map((conflict) => (
            <div key={conflict.demands.join()}>
              <p>
                They miss by {Math.round(conflict.by * 10) / 10} mm. Decide which gives way, or measure again.
              </p>
              <Sentences demands={demands.filter(({ id }) => conflict.demands.includes(id))} />
            </div>
          ))}
        </div>
      )}
      {given.length > 0 && (
        <div className="height-clashes">
          <h4>Not met</h4>
          <ul className="sentences">
            {given.map((d) => (
              <li key={d.id + keyOf(d.because)}>{words(d.because)}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  )
}
