import type { Caution } from '../../core/plan/types'
import { besides, bringIntoView } from '../bring-into-view'
import { useIsRead } from '../reading'
import { sentences } from '../sentences'
import { count, words } from '../words'
import { Sign } from './Sign'

/** A caution longer than this is cut after its first sentence: all of it stands below. */
const LONG = 110

/** What can hurt somebody at this work, said before anything else; a tap leads to all that is to be minded, where there is more. */
export function HurtLine({ cautions }: { readonly cautions: readonly Caution[] }) {
  const first = gravest(cautions)
  const isRead = useIsRead('hurt')
  if (first === undefined) return null
  const more = cautions.length - 1
  const said = <strong data-read={isRead}>{hurtText(cautions)}</strong>
  if (isAllSaidAbove(cautions)) {
    return (
      <div className="hurt-line">
        <Sign code={first.sign} />
        <span>{said}</span>
      </div>
    )
  }
  return (
    <button
      type="button"
      className="hurt-line"
      onClick={(e) => bringIntoView(besides(e.currentTarget, '.cautions'), 'top')}
    >
      <Sign code={first.sign} />
      <span>
        {said} {more > 0 && <span className="and-more">And {count(more, 'more', 'more')} to mind.</span>}
      </span>
    </button>
  )
}

/** What the line says; null where nothing is to be minded. */
export function hurtText(cautions: readonly Caution[]): string | null {
  const first = gravest(cautions)
  if (first === undefined) return null
  const said = words(first.say)
  return said.length > LONG ? (sentences(said)[0] ?? said) : said
}

/** The one thing to mind is said above already, whole: it is not said once more below. */
export function isAllSaidAbove(cautions: readonly Caution[]): boolean {
  const [only] = cautions
  return only !== undefined && cautions.length === 1 && hurtText(cautions) === words(only.say)
}

/** Signs that warn go before those that forbid, and both before what is to be worn. */
function gravest(cautions: readonly Caution[]): Caution | undefined {
  const of = (letter: string) => cautions.find((c) => c.sign.startsWith(letter))
  return of('W') ?? of('P') ?? cautions[0]
}
