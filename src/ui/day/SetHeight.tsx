import { useId, useState } from 'react'
import { hasValue } from '../../core/figure'
import type { UnitPlan } from '../../core/plan/types'
import { numberText } from '../../core/words/format'
import { useActions, useApp } from '../app-context'
import { readNumber } from './Stepper'

/** Where the unit came to stand: what was reached replaces what was planned. */
export function SetHeight({ unit }: { readonly unit: UnitPlan }) {
  const actions = useActions()
  const id = useId()
  const isHung = unit.kind === 'wall' || unit.kind === 'corner-wall' || unit.kind === 'bridging'
  const edge = isHung ? 'underside' : 'top'
  const planned = isHung ? unit.underside : unit.top
  // A height may rest on the log without having been read of this unit: on a line that was struck, on a neighbour.
  const isRead = useApp((s) => hasOwnReading(s.log.entries, unit.unit))
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

type Entry = {
  readonly id?: unknown
  readonly kind?: unknown
  readonly unit?: unknown
  readonly entry?: unknown
}

/** Whether a reading of this unit stands in the log and was not called wrong. */
function hasOwnReading(entries: readonly unknown[], unit: string): boolean {
  const all = entries as readonly Entry[]
  const wrong = new Set(all.flatMap((e) => (e.kind === 'correct' ? [e.entry] : [])))
  return all.some((e) => e.kind === 'set' && e.unit === unit && !wrong.has(e.id))
}
