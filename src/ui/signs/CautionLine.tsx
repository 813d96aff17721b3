import type { ReactNode } from 'react'
import type { Caution } from '../../core/plan/types'
import { words } from '../words'
import { Sign } from './Sign'

interface Props {
  readonly caution: Caution
  /** Its words, where they are more than plain text. */
  readonly children?: ReactNode
}

/** A sign never stands without its words. */
export function CautionLine({ caution, children }: Props) {
  return (
    <div className="caution">
      <Sign code={caution.sign} />
      <p>{children ?? words(caution.say)}</p>
    </div>
  )
}
