import type { TurnOrder } from '../../../core/daylog/turns'
import { hasValue } from '../../../core/figure'
import { canTurn, withGrip, withTurn } from '../../../core/levelling/trial'
import type { Trial } from '../../../core/levelling/trial-heights'
import type { Adjuster, UnitPlan } from '../../../core/plan/types'
import { turnsText } from '../../../core/words/format'
import { useActions } from '../../app-context'
import { adjusterName, turnsWords } from '../../day/Told'

interface Props {
  readonly unit: UnitPlan
  readonly trial: Trial
  readonly adjuster: Adjuster
  /** What is to be done with it; null: this way of the level is not set with it. */
  readonly order: TurnOrder | null
  readonly isHanging: boolean
}

/** Turns of one press, + up, in the order of the buttons. */
const PRESSES = [-1, -0.25, 0.25, 1] as const

/** One adjuster: what is to be turned, what has been, and buttons that turn it. */
export function TurnRow({ unit, trial, adjuster, order, isHanging }: Props) {
  const { tryOut } = useActions()
  const name = adjusterName(adjuster, unit)
  return (
    <li>
      <p>
        <strong>{name}.</strong> {isHanging ? GRIP_FIRST : orderText(order)}
      </p>
      <div className="presses">
        {PRESSES.map((by) => {
          const canBe = canTurn(trial, adjuster, by)
          return (
            <button
              key={by}
              type="button"
              className="button"
              aria-disabled={!canBe}
              aria-label={`${name}: ${pressText(by)}${canBe ? '' : ', no travel left for it'}`}
              onClick={() => tryOut(withTurn(trial, unit, adjuster.id, by))}
            >
              {pressText(by)}
            </button>
          )
        })}
      </div>
      <p className="quiet">
        {madeText(trial.turns[adjuster.id] ?? 0)}
        {adjuster.clockwise !== null &&
          ` Up is ${adjuster.clockwise === 'raises' ? 'clockwise' : 'anticlockwise'}.`}
        {!canTurn(trial, adjuster, 0.25) && ' No travel up left.'}
        {!canTurn(trial, adjuster, -0.25) && ' No travel down left.'}
      </p>
      {isHanging && (
        <button
          type="button"
          className="button"
          onClick={() => tryOut(withGrip(trial, unit, adjuster.id))}
          aria-label={`${name}: wind it out until it grips`}
        >
          Wind it out until it grips
        </button>
      )}
    </li>
  )
}

/** What the level asks of a leg counts from where it grips: nothing else is said of one that does not. */
const GRIP_FIRST = 'It bears nothing: it turns freely. Wind it out until it grips.'

const pressText = (by: number): string => `${by > 0 ? 'up' : 'down'} ${turnsText(by)}`

/** "Turn it 1¼ turns up, clockwise." */
function orderText(order: TurnOrder | null): string {
  if (order === null || order.way === 'none') return 'Leave it.'
  if (order.way === 'not-known') return 'What it has to do is not known.'
  if (!hasValue(order.turns)) return `It has to go ${order.way}. Try one turn and read.`
  const hand = order.hand === null ? '' : `, ${order.hand}`
  const far = order.reaches === false ? ' It has not that much travel left.' : ''
  const assumed = order.turns.state === 'assumed' ? ' What a turn does is assumed.' : ''
  return `Turn it ${turnsWords(order).toLowerCase()} ${order.way}${hand}.${assumed}${far}`
}

function madeText(turns: number): string {
  if (Math.abs(turns) < 0.125) return turns === 0 ? 'Not turned yet.' : 'Turned a touch.'
  return `Turned ${turnsText(turns)} ${turns > 0 ? 'up' : 'down'}.`
}
