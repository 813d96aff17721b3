import './trial.css'
import { useEffect, useRef } from 'react'
import { levelOn, VIAL_DRAWN } from '../../../core/levelling/level-on'
import { LEAN_DRAWN, type Lie, lieOf } from '../../../core/levelling/lie'
import { levelChecks } from '../../../core/levelling/next-step'
import { beginTrial, ordersNow, readingOf } from '../../../core/levelling/trial'
import { heightsNow, screwOf, type Trial } from '../../../core/levelling/trial-heights'
import { type Axis, bubbleAt, ENDS, VIALS } from '../../../core/levelling/vial'
import type { Operation, UnitPlan } from '../../../core/plan/types'
import { useActions, useApp } from '../../app-context'
import { openInSight } from '../../bring-into-view'
import { bubbleText, byText, putText, readingText, vialText } from '../../levelling/level-words'
import { VialPicture } from '../../levelling/VialPicture'
import { SetReading } from './SetReading'
import { TurnRow } from './TurnRow'
import { VerdictLine } from './VerdictLine'

interface Props {
  readonly operation: Operation
  readonly unit: UnitPlan
}

/** Levelling tried before the day: a reading, the bubble that answers it, and the adjusters that bring it true. */
export function LevelTrial({ operation, unit }: Props) {
  const actions = useActions()
  const tried = useApp((s) => s.tried)
  const trial = tried?.operation === operation.id ? tried : null
  const isOpen = trial !== null
  const section = useRef<HTMLElement>(null)
  const isPressed = useRef(false)
  useEffect(() => {
    if (isOpen && isPressed.current) openInSight(section.current)
  }, [isOpen])
  if (unit.adjusters.length === 0 || levelOn(unit, 'along') === null) return null
  return (
    <section className="trial" data-open={isOpen ? '' : undefined} ref={section} aria-label="Try the level">
      <button
        type="button"
        className="link"
        aria-expanded={isOpen}
        onClick={() => {
          isPressed.current = true
          actions.tryOut(isOpen ? null : beginTrial(operation.id, unit))
        }}
      >
        Try it: read the level and turn
      </button>
      {isOpen && <Trying operation={operation} unit={unit} trial={trial} />}
    </section>
  )
}

function Trying({ operation, unit, trial }: Props & { readonly trial: Trial }) {
  const lie = lieOf(unit, heightsNow(trial, unit))
  if (lie === null) {
    const what = unit.adjusters.some((a) => a.kind === 'leg') ? 'its feet stand' : 'its hangers sit'
    return <p>Where {what} is not known yet. Measure it, and it can be tried here.</p>
  }
  return <Turning operation={operation} unit={unit} trial={trial} lie={lie} />
}

interface TurningProps extends Props {
  readonly trial: Trial
  readonly lie: Lie
}

function Turning({ operation, unit, trial, lie }: TurningProps) {
  const { tryOut } = useActions()
  const { axis } = trial
  const put = levelOn(unit, axis)
  if (put === null) return null
  const slope = lie[axis]
  const vial = VIALS[trial.vial]
  const bubble = bubbleAt(slope, axis, vial)
  const orders = ordersNow(trial, unit, readingOf(slope, axis, put.length))
  const ways = [...new Set(levelChecks(operation, unit).map((c) => c.axis))]
  const isMadeUp = unit.adjusters.some((a) => screwOf(trial, a).isMadeUp)
  const before = isMadeUp ? lieOf(unit, trial.start) : null
  const hasTurned = Object.values(trial.turns).some((n) => n !== 0)
  return (
    <>
      <p className="quiet">
        A trial: nothing here is written down. {putText(put, axis)}
        {put.way === 'upright' && ' Drawn here is its middle, with the vial that lies across it.'}
      </p>
      {ways.length > 1 && <WhichWay ways={ways} trial={trial} isUpright={put.way === 'upright'} />}
      <div className="watch">
        <VialPicture
          bubble={bubble}
          vial={vial}
          ends={[ENDS[axis].less, ENDS[axis].more]}
          by={byText(slope, put)}
          isUpright={put.way === 'upright'}
        />
      </div>
      <div className="verdict" role="status">
        <p>
          <strong>{readingText(slope, axis, put)}</strong> {bubbleText(bubble)}
        </p>
        <VerdictLine operation={operation} unit={unit} trial={trial} lie={lie} />
      </div>
      <SetReading unit={unit} trial={trial} slope={slope} put={put} />
      {isMadeUp && (
        <p>
          Nobody has said what one turn does here, so these screws are made up. Make one turn and read what it
          did; on the day do the same with yours.
          {before !== null && hasTurned && (
            <>
              {' '}
              Before your turns: {readingText(before[axis], axis, put)} Now: {readingText(slope, axis, put)}
            </>
          )}
        </p>
      )}
      {unit.adjusters.some((a) => a.clockwise === null) && (
        <p className="quiet">Which hand turns them up is not known: on the day turn a little and look.</p>
      )}
      <ul className="turn-rows" aria-label="Turn them">
        {unit.adjusters.map((adjuster) => (
          <TurnRow
            key={adjuster.id}
            unit={unit}
            trial={trial}
            adjuster={adjuster}
            order={orders.find((o) => o.adjuster.id === adjuster.id) ?? null}
            isHanging={lie.hanging.some((h) => h.id === adjuster.id)}
          />
        ))}
      </ul>
      <p className="quiet">
        The vial here: {vialText(vial)}. {trial.vial === 'fine' ? 'Most levels have a coarser one.' : ''}
        <button
          type="button"
          className="link"
          onClick={() => tryOut({ ...trial, vial: trial.vial === 'fine' ? 'usual' : 'fine' })}
        >
          {trial.vial === 'fine' ? 'Show it in a usual one' : 'Show it in a finer one'}
        </button>
      </p>
      <p className="quiet">
        In the 3D picture {unit.name} is drawn {LEAN_DRAWN} times as far out of level as it is, and the vial{' '}
        {put.way === 'upright' ? VIAL_DRAWN.upright : VIAL_DRAWN.lying} times as large.
      </p>
    </>
  )
}

const WAY_NAMES: Readonly<Record<Axis, readonly [string, string]>> = {
  along: ['Left to right', 'Sideways'],
  out: ['Back to front', 'Back to front'],
}

interface WhichWayProps {
  readonly ways: readonly Axis[]
  readonly trial: Trial
  readonly isUpright: boolean
}

function WhichWay({ ways, trial, isUpright }: WhichWayProps) {
  const { tryOut } = useActions()
  return (
    <fieldset className="pair">
      <legend className="visually-hidden">Which way the level is put</legend>
      {ways.map((axis) => (
        <button
          key={axis}
          type="button"
          className="button"
          aria-pressed={trial.axis === axis}
          onClick={() => tryOut({ ...trial, axis })}
        >
          {WAY_NAMES[axis][isUpright ? 1 : 0]}
        </button>
      ))}
    </fieldset>
  )
}
