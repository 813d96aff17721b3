import { hasValue } from '../../core/figure'
import type { Hole, Plan, WallFrame } from '../../core/plan/types'
import { numberText } from '../../core/words/format'
import { inputName } from '../../core/words/plan-names'
import { keyOf, words } from '../words'
import { Drawing, showFlag } from './Drawing'
import { FoundHere } from './FoundHere'
import { HoleTable } from './HoleTable'
import { LegTable } from './LegTable'
import { LineTable } from './LineTable'
import { SheetHead } from './SheetHead'
import { ShimTable } from './ShimTable'
import { type Chosen, wallSheet } from './sheets'
import { foundOn } from './wall/found'
import { HoleMark } from './wall/Holes'
import { penFor } from './wall/pen'

interface Props {
  readonly plan: Plan
  readonly frame: WallFrame
  readonly name: string
  /** The finding asked for by the address, on this wall. */
  readonly asked: Pick<Chosen, 'finding' | 'isWords'> | null
}

/** One wall on paper: its drawing with what must be said beside it, then its figures as tables. */
export function WallSheet({ plan, frame, name, asked }: Props) {
  const holes = plan.holes.filter((h) => h.wall === frame.wall)
  const undrawn = plan.bands.filter((b) => b.wall === frame.wall && b.unknownBecause.length > 0)
  const found = foundOn(plan, frame.wall)
  return (
    <section className="sheet wall-sheet" aria-label={name}>
      <SheetHead
        plan={plan}
        id={wallSheet(frame.wall)}
        scale={penFor(plan, frame)?.print?.scale ?? null}
        title={`${name}, seen from inside the room`}
        about="mm, heights from the line, lengths from the left corner"
      />
      <Drawing plan={plan} frame={frame} name={name} found={found} asked={asked} />
      <div className="under-drawing">
        {holes
          .filter((h) => h.verdict === 'refused')
          .map((h) => (
            <p className="stop" key={h.id}>
              No hole at {placeText(h)}:{' '}
              {h.against.map((m) => (
                <span key={keyOf(m)}>{words(m)} </span>
              ))}
            </p>
          ))}
        {undrawn.length > 0 && (
          <p className="stop">
            Not hatched, for its place is not known:{' '}
            {[...new Set(undrawn.flatMap((b) => b.unknownBecause.map((id) => inputName(id, plan))))].join(
              '; ',
            )}
            .
          </p>
        )}
        <p className="caution-line">
          Outside the hatching is not proved clear: trace, isolate, have it proved dead by someone competent,
          then drill.
        </p>
        <Legend throughRail={holes.some((h) => h.throughRail === true)} />
      </div>
      <FoundHere found={found} wall={frame.wall} onPlace={(id) => showFlag(id)} />
      <div className="tables">
        <div className="narrow-tables">
          <LineTable plan={plan} wall={frame.wall} />
          <LegTable plan={plan} wall={frame.wall} />
          <ShimTable plan={plan} wall={frame.wall} />
        </div>
        <HoleTable holes={holes} plan={plan} />
      </div>
    </section>
  )
}

const MARKS = [
  { purpose: 'rail', isRefused: false, say: 'rail, plate or cleat' },
  { purpose: 'second-fixing', isRefused: false, say: 'second fixing or restraint' },
  { purpose: 'base-bracket', isRefused: false, say: 'base bracket' },
  { purpose: 'rail', isRefused: true, say: 'not to be drilled' },
] as const

function Legend({ throughRail }: { readonly throughRail: boolean }) {
  return (
    <ul className="legend">
      {MARKS.map(({ purpose, isRefused, say }) => (
        <li key={say}>
          <svg viewBox="-11 -11 22 22" aria-hidden="true" focusable="false">
            <HoleMark purpose={purpose} isRefused={isRefused} />
          </svg>
          {purpose === 'base-bracket' && throughRail ? 'screw through the back rail of a base' : say}
        </li>
      ))}
      <li>
        <svg viewBox="0 0 22 22" aria-hidden="true" focusable="false">
          <path d="M-2 8 8 -2M-2 17 17 -2M2 24 24 2M11 24 24 11" stroke="#b5562c" strokeWidth="2" />
        </svg>
        cables or pipes are to be expected
      </li>
      <li>
        <svg viewBox="0 0 22 22" aria-hidden="true" focusable="false">
          <path d="M6 0h10v22H6z" fill="#d9b98a" stroke="#8a6433" strokeDasharray="4 3" />
        </svg>
        stud, its middle lettered above
      </li>
      <li>
        <svg viewBox="0 0 22 22" aria-hidden="true" focusable="false">
          <path d="M1 1h20v20H1z" fill="#262522" />
          <text x="11" y="16" textAnchor="middle" fontSize="15" fontWeight="700" fill="#fffefa">
            a
          </text>
        </svg>
        something found here, told under its letter
      </li>
    </ul>
  )
}

/** Where a hole would be, as far as that is known. */
function placeText({ along, height }: Hole): string {
  const known = [
    hasValue(along) ? numberText(along) : null,
    hasValue(height) ? numberText(height, { signed: true }) : null,
  ]
  return known.filter((part) => part !== null).join(', ') || 'a place that is not known yet'
}
