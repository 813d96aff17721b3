import { hasValue } from '../../../core/figure'
import type { HeightValue, Plan } from '../../../core/plan/types'
import { inputName } from '../../../core/words/plan-names'
import { words } from '../../words'
import { fullName } from './names'

/** More than this and a list says how many more. */
const MOST = 6

/** Heights, and demands on heights, that cannot be told yet: they are named and have no place in the picture. */
export function NotKnown({ plan }: { readonly plan: Plan }) {
  const open = plan.heights.values.filter(({ height }) => !hasValue(height))
  const demands = plan.findings.filter(({ rule }) => rule === 'height-demand-unknown')
  if (plan.heights.values.length === 0)
    return <p>No height is asked for yet: list the units first, and how each stands or hangs.</p>
  if (open.length === 0 && demands.length === 0) return null
  return (
    <div className="not-known-heights">
      {open.length > 0 && (
        <>
          <h4>Not known yet, and so not drawn</h4>
          <ul className="sentences">
            {open.map((value) => (
              <li key={value.of}>
                <strong>{fullName(value.of)}</strong>: {missingWords(value, plan)}
              </li>
            ))}
          </ul>
        </>
      )}
      {demands.length > 0 && (
        <details>
          <summary>What is asked of a height and cannot be worked out yet: {demands.length}</summary>
          <ul className="sentences">
            {demands.map((finding) => (
              <li key={finding.id}>{words(finding.say)}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  )
}

function missingWords({ height }: HeightValue, plan: Plan): string {
  if (height.state !== 'unknown') return ''
  const names = [...new Set(height.missing.map((input) => inputName(input, plan)))]
  const more = names.length > MOST ? `; and ${names.length - MOST} more` : ''
  return `find out ${names.slice(0, MOST).join('; ')}${more}.`
}
