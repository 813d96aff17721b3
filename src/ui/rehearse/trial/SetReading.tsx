import { useId } from 'react'
import type { LevelOn } from '../../../core/levelling/level-on'
import { givenReading, withReading } from '../../../core/levelling/trial'
import type { Trial } from '../../../core/levelling/trial-heights'
import { ENDS } from '../../../core/levelling/vial'
import type { UnitPlan } from '../../../core/plan/types'
import { useActions } from '../../app-context'
import { readingText } from '../../levelling/level-words'

interface Props {
  readonly unit: UnitPlan
  readonly trial: Trial
  readonly slope: number
  readonly put: LevelOn
}

/** The most that can be set, as a rise: one in so many. */
const MOST = 150
/** Of the slider and of its two buttons, mm over the level. */
const STEP = 0.1
const BY = 0.5

/** The reading to start from: set by a slider or by half millimetres, or given. */
export function SetReading({ unit, trial, slope, put }: Props) {
  const { tryOut } = useActions()
  const id = useId()
  const most = Math.round((put.length / MOST) * 10) / 10
  const now = Math.round(slope * put.length * 10) / 10
  const set = (mm: number) => {
    const kept = Math.max(-most, Math.min(most, Math.round(mm * 10) / 10))
    tryOut(withReading(trial, unit, kept / put.length))
  }
  const { less, more } = ENDS[trial.axis]
  return (
    <div className="set-reading">
      <label htmlFor={id}>Set a reading</label>
      <input
        id={id}
        type="range"
        min={-most}
        max={most}
        step={STEP}
        value={Math.max(-most, Math.min(most, now))}
        aria-valuetext={readingText(slope, trial.axis, put)}
        onChange={(e) => set(Number(e.target.value))}
      />
      <div className="buttons">
        <button type="button" className="button" onClick={() => set(now - BY)}>
          {less} up {BY}
        </button>
        <button type="button" className="button" onClick={() => tryOut(givenReading(trial, unit))}>
          Give me one
        </button>
        <button type="button" className="button" onClick={() => set(now + BY)}>
          {more} up {BY}
        </button>
      </div>
    </div>
  )
}
