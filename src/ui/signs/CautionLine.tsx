import type { Caution } from '../../core/plan/types'
import { words } from '../words'
import { Sign } from './Sign'

/** A sign never stands without its words. */
export function CautionLine({ caution }: { readonly caution: Caution }) {
  return (
    <div className="caution">
      <Sign code={caution.sign} />
      <p>{words(caution.say)}</p>
    </div>
  )
}
