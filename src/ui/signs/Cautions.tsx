import type { ReactNode } from 'react'
import type { Caution } from '../../core/plan/types'
import { keyOf } from '../words'
import { CautionLine } from './CautionLine'
import { isAllSaidAbove } from './HurtLine'

interface Props {
  readonly cautions: readonly Caution[]
  /** How the words of one are shown; left out: plainly. */
  readonly say?: (caution: Caution, index: number) => ReactNode
}

/** All that is to be minded at an operation, each with its sign; a single one stands in the line above alone. */
export function Cautions({ cautions, say }: Props) {
  if (cautions.length === 0 || isAllSaidAbove(cautions)) return null
  return (
    <section className="cautions" aria-label="To mind" tabIndex={-1}>
      {cautions.map((caution, i) => (
        <CautionLine key={caution.sign + keyOf(caution.say)} caution={caution}>
          {say?.(caution, i)}
        </CautionLine>
      ))}
    </section>
  )
}
