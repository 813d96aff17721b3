import { useId, useState } from 'react'
import { hasValue } from '../../core/figure'
import type { UnitPlan } from '../../core/plan/types'
import { numberText } from '../../core/words/format'
import { useActions } from '../app-context'
import { readNumber } from './Stepper'

/** Where the unit came to stand: what was reached replaces what was planned. */
export function SetHeight({ unit }: { readonly unit: UnitPlan }) {
  const actions = useActions()
  const id = useId()
  const isHung = unit.kind === 'wall' || unit.kind === 'corner-wall' || unit.kind === 'bridging'
  const edge = isHung ? 'underside' : 'top'
  const planned = isHung ? unit.underside : unit.top
  const isRead = planned.from.some((id) => id.startsWith('log.'))
  const [typed, setTyped] = useState(
    hasValue(planned) ? `${Math.round(planned.value)}`.replace('-', '−') : '',
  )
  const value = readNumber(typed)
  return (
    <form
      className="stepper set-height"
      onSubmit={(event) => {
        event.preventDefault()
        if (value === null) return
        const read = value < 0 ? { down: { value: -value, pm: 1 } } : { up: { value, pm: 1 } }
        actions.log({ kind: 'set', unit: unit.unit, edge, ...read })
      }}
    >
      <label htmlFor={id}>
        {isHung ? 'Underside' : 'Top'} now, from the line
        <small>
          up +, down −; {isRead ? 'last read' : 'planned'}{' '}
          {numberText(planned, { signed: true }) ?? 'not known yet'}
        </small>
      </label>
      <input
        id={id}
        inputMode="text"
        autoComplete="off"
        value={typed}
        onChange={(e) => setTyped(e.target.value)}
      />
      <button type="submit" className="button" disabled={value === null}>
        Write down
      </button>
    </form>
  )
}
