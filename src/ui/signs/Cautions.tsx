import type { Caution } from '../../core/plan/types'
import { keyOf } from '../words'
import { CautionLine } from './CautionLine'

/** All that is to be minded at an operation, each with its sign. */
export function Cautions({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null
  return (
    <section className="cautions" aria-label="To mind" tabIndex={-1}>
      {cautions.map((caution) => (
        <CautionLine key={caution.sign + keyOf(caution.say)} caution={caution} />
      ))}
    </section>
  )
}
