import { useEffect, useRef, useState } from 'react'
import { type LevelReading, turnsFor } from '../../core/daylog/turns'
import { known } from '../../core/figure'
import { bubbleAt, ENDS, VIALS } from '../../core/levelling/vial'
import type { UnitPlan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { byText, vialText } from '../levelling/level-words'
import { VialPicture } from '../levelling/VialPicture'
import { Stepper } from './Stepper'
import { Told } from './Told'

/** How finely a packer and the length of a level are known when they are typed in by thumb. */
const PRECISION = { packer: 0.25, level: 5 }

/** A level, a packer under its low end, and the turns that follow. */
export function LevelCard({ unit }: { readonly unit: UnitPlan }) {
  const actions = useActions()
  const [axis, setAxis] = useState<'along' | 'out'>('along')
  const [low, setLow] = useState<LevelReading['low'] | null>(null)
  const [packer, setPacker] = useState(1)
  const [levelLength, setLevelLength] = useState(600)
  const [isLengthOpen, setLengthOpen] = useState(false)
  const told = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (low !== null) told.current?.scrollIntoView?.({ block: 'nearest' })
  }, [low])
  const isHung = !unit.adjusters.some((a) => a.kind === 'leg')
  const ends = axis === 'along' ? (['left', 'right'] as const) : (['back', 'front'] as const)
  const reading: LevelReading | null =
    low === null
      ? null
      : {
          axis,
          low,
          packer: known(packer, PRECISION.packer, 'mm', ['this reading']),
          levelLength: known(levelLength, PRECISION.level, 'mm', ['this reading']),
        }
  return (
    <>
      <p>
        {isHung
          ? 'Lay the level inside, along the front edge of the bottom panel.'
          : 'Lay the level on the top edges: along the front first, then from back to front at each side.'}{' '}
        Slip packers under its low end until the bubble sits between the lines.
      </p>
      {!isHung && (
        <fieldset className="pair">
          <legend className="visually-hidden">Which way the level lies</legend>
          {(['along', 'out'] as const).map((a) => (
            <button
              key={a}
              type="button"
              className="button"
              aria-pressed={axis === a}
              onClick={() => {
                setAxis(a)
                setLow(null)
              }}
            >
              {a === 'along' ? 'Left to right' : 'Back to front'}
            </button>
          ))}
        </fieldset>
      )}
      <fieldset className="pair">
        <legend className="visually-hidden">Which end is low</legend>
        {ends.map((end) => (
          <button
            key={end}
            type="button"
            className="button"
            aria-pressed={low === end}
            onClick={() => setLow(end)}
          >
            {END_NAMES[end]} end low
          </button>
        ))}
      </fieldset>
      <Stepper
        label="Packer, mm"
        note={
          <button
            type="button"
            className="link"
            aria-expanded={isLengthOpen}
            onClick={() => setLengthOpen(!isLengthOpen)}
          >
            level {levelLength} long
          </button>
        }
        value={packer}
        step={0.5}
        min={0}
        max={50}
        onChange={setPacker}
      />
      {isLengthOpen && (
        <Stepper
          label="Level, mm"
          note="its length, or far end to packer"
          value={levelLength}
          step={100}
          min={50}
          max={3000}
          onChange={setLevelLength}
        />
      )}
      {reading !== null && (
        <>
          <Without reading={reading} rise={packer / levelLength} length={levelLength} />
          <div className="turns" ref={told}>
            <Told orders={turnsFor(unit.adjusters, reading)} unit={unit} />
          </div>
          <button
            type="button"
            className="button"
            onClick={() => {
              actions.log({
                kind: 'level',
                unit: unit.unit,
                axis,
                place: 'top',
                low: reading.low,
                packer,
                levelLength,
              })
              setLow(null)
            }}
          >
            Turned. Write this reading down
          </button>
        </>
      )}
    </>
  )
}

/** Where the bubble stands without the packer: what should be seen, so that a reading the wrong way round is noticed. */
function Without({ reading, rise, length }: { reading: LevelReading; rise: number; length: number }) {
  const { axis, low } = reading
  const { less, more } = ENDS[axis]
  const slope = low === less ? rise : -rise
  return (
    <>
      <VialPicture
        bubble={bubbleAt(slope, axis, VIALS.usual)}
        vial={VIALS.usual}
        ends={[less, more]}
        by={byText(slope, { length })}
      />
      <p className="quiet">
        So it stands without the packer, in a usual vial: {vialText(VIALS.usual)}. If yours stands on the
        other side, the other end is low.
      </p>
    </>
  )
}

const END_NAMES = { left: 'Left', right: 'Right', back: 'Back', front: 'Front' } as const
