import { useState } from 'react'
import { hasValue } from '../../core/figure'
import type { UnitPlan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { Stepper } from './Stepper'

/** What one turn does, tried and measured on one unit; it then holds for all that stand or hang the same way. */
export function TryTurn({ unit }: { readonly unit: UnitPlan }) {
  const actions = useActions()
  const [perTurn, setPerTurn] = useState(1.25)
  const [clockwise, setClockwise] = useState<'raises' | 'lowers' | null>(null)
  const [first] = unit.adjusters
  if (first === undefined) return null
  const isLeg = first.kind === 'leg'
  const isSaid = hasValue(first.perTurn)
  return (
    <details open={!isSaid}>
      <summary>What one turn does{isSaid ? '' : ': not known yet'}</summary>
      <p>
        Make one full turn of {isLeg ? 'one leg' : 'the height screw'}. Measure how far the unit moved there.{' '}
        {unit.name} stays held.
      </p>
      <Stepper
        label="One turn moves, mm"
        value={perTurn}
        step={0.05}
        min={0.1}
        max={20}
        onChange={setPerTurn}
      />
      {!isLeg && (
        <fieldset className="pair">
          <legend className="visually-hidden">What clockwise does</legend>
          {(['raises', 'lowers'] as const).map((way) => (
            <button
              key={way}
              type="button"
              className="button"
              aria-pressed={clockwise === way}
              onClick={() => setClockwise(way)}
            >
              Clockwise {way}
            </button>
          ))}
        </fieldset>
      )}
      <button
        type="button"
        className="button wide"
        onClick={() =>
          actions.log({
            kind: 'tried',
            unit: unit.unit,
            part: isLeg ? 'leg' : 'height-screw',
            perTurn,
            ...(isLeg ? {} : { clockwise, place: first.place }),
          })
        }
      >
        Write it down
      </button>
    </details>
  )
}
