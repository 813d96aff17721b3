import type { TurnOrder } from '../../core/daylog/turns'
import { hasValue } from '../../core/figure'
import { numberText, turnsText } from '../../core/words/format'
import { footName } from '../names'

/** The turns, big; what is not known is asked or tried, never guessed. */
export function Told({ orders }: { readonly orders: readonly TurnOrder[] }) {
  const moving = orders.filter((o) => o.way !== 'none')
  const still = orders.filter((o) => o.way === 'none')
  return (
    <div aria-live="polite" className="tolds">
      {orders.length === 0 && <p className="told">Nothing here sets this way of the level.</p>}
      {orders.length > 0 && moving.length === 0 && <p className="told">Leave it</p>}
      {moving.map((order) => (
        <div key={order.adjuster.id}>
          <p className="told">{turnsWords(order)}</p>
          <p>
            {adjusterName(order)}
            {order.way !== 'not-known' && (
              <>
                , <strong>{order.way}</strong>
              </>
            )}
            {order.hand === null ? '' : ` (${order.hand})`}. {detail(order)}
          </p>
        </div>
      ))}
      {moving.length > 0 && still.length > 0 && (
        <p className="quiet">Leave {still.map((o) => shortName(o)).join(' and ')}.</p>
      )}
    </div>
  )
}

const LEAST_TURN = 0.125

function turnsWords({ turns }: TurnOrder): string {
  if (!hasValue(turns)) return 'Try one turn'
  if (turns.value < LEAST_TURN) return 'A touch'
  return `${turnsText(turns.value)} ${turns.value >= 1.125 ? 'turns' : 'turn'}`
}

function detail({ rise, adjuster, reaches, hand }: TurnOrder): string {
  const tenth = (figure: TurnOrder['rise']) =>
    hasValue(figure) ? numberText({ ...figure, value: Math.abs(figure.value), pm: 0.1 }) : null
  const parts = [
    tenth(rise) === null ? 'How far it stands from the other is not known.' : `${tenth(rise)} mm to go.`,
    hasValue(adjuster.perTurn)
      ? `Yours moves ${numberText(adjuster.perTurn)} mm a turn${adjuster.perTurn.state === 'assumed' ? ', assumed' : ''}.`
      : 'Nobody has said what one turn does: make one, measure it, write it down below.',
    hand === null && hasValue(rise) ? 'Which hand does that is not known: turn a little and look.' : '',
    reaches === false
      ? 'It has not that much travel left. Hold the unit, and look at its plate or its legs again.'
      : '',
  ]
  return parts.filter((p) => p !== '').join(' ')
}

function shortName({ adjuster }: TurnOrder): string {
  return adjuster.kind === 'leg' ? `the ${footName(adjuster.id)} leg` : `the ${adjuster.id} hanger`
}

function adjusterName({ adjuster }: TurnOrder): string {
  if (adjuster.kind === 'leg') return `Leg ${footName(adjuster.id)}`
  const which =
    adjuster.place === null
      ? ', height screw (which of the two it is, the sheet must say)'
      : `, height screw (the ${adjuster.place} one)`
  return `${adjuster.id === 'left' ? 'Left' : 'Right'} hanger${which}`
}
