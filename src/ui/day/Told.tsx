import type { TurnOrder } from '../../core/daylog/turns'
import { hasValue } from '../../core/figure'
import type { Adjuster, UnitPlan } from '../../core/plan/types'
import { numberText, turnsText, unitText } from '../../core/words/format'
import { footOf } from '../../core/words/plan-names'

/** The turns, big; what is not known is asked or tried, never guessed. */
export function Told({ orders, unit }: { readonly orders: readonly TurnOrder[]; readonly unit: UnitPlan }) {
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
            {adjusterName(order.adjuster, unit)}
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
        <p className="quiet">Leave {still.map((o) => shortName(o, unit)).join(' and ')}.</p>
      )}
    </div>
  )
}

const LEAST_TURN = 0.125

/** How many turns: "¾ turn", "A touch". */
export function turnsWords({ turns }: TurnOrder): string {
  if (!hasValue(turns)) return 'Try one turn'
  if (turns.value < LEAST_TURN) return 'A touch'
  return `${turnsText(turns.value)} ${unitText(turns)}`
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

function shortName({ adjuster }: TurnOrder, unit: UnitPlan): string {
  return adjuster.kind === 'leg' ? `the ${footOf(unit, adjuster.id)} leg` : `the ${adjuster.id} hanger`
}

/** "Leg front left", "Left hanger, height screw (the lower one)". */
export function adjusterName(adjuster: Adjuster, unit: UnitPlan): string {
  if (adjuster.kind === 'leg') return `Leg ${footOf(unit, adjuster.id)}`
  const which =
    adjuster.place === null
      ? ', height screw (which of the two it is, the sheet must say)'
      : `, height screw (the ${adjuster.place} one)`
  return `${adjuster.id === 'left' ? 'Left' : 'Right'} hanger${which}`
}
