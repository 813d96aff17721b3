import { hasValue } from '../../core/figure'
import type { Hole, Plan, WallFrame } from '../../core/plan/types'
import { figureText, numberText } from '../../core/words/format'
import { useActions, useApp } from '../app-context'
import { words } from '../words'
import { unitsOn } from './wall-drawing'
import { WallDrawing } from './WallDrawing'

/** The sheets: one wall at a time, with its lines, holes and legs as tables. */
export function OnPaper() {
  const plan = useApp((s) => s.plan)
  const chosen = useApp((s) => s.wall)
  const actions = useActions()
  if (plan === null) return <p className="page">No kitchen is open.</p>
  const busy = plan.walls.filter((w) => unitsOn(plan, w.wall).length > 0)
  const walls = busy.length > 0 ? busy : plan.walls
  const frame = walls.find((w) => w.wall === chosen) ?? walls[0]
  return (
    <div className="page">
      <div className="no-print steps" style={{ gridTemplateColumns: 'repeat(auto-fit, minmax(120px, max-content))' }}>
        {walls.map((w) => (
          <button
            key={w.wall}
            type="button"
            className="button"
            aria-pressed={w.wall === frame?.wall}
            onClick={() => actions.showWall(w.wall)}
          >
            Wall {w.name}
          </button>
        ))}
        <button type="button" className="button" onClick={() => window.print()}>
          Print
        </button>
      </div>
      {frame !== undefined && <WallSheet plan={plan} frame={frame} />}
    </div>
  )
}

function WallSheet({ plan, frame }: { readonly plan: Plan; readonly frame: WallFrame }) {
  const holes = plan.holes.filter((h) => h.wall === frame.wall)
  return (
    <section className="sheet" aria-label={`Wall ${frame.name}`}>
      <header className="sheet-head">
        <div>
          <h1>Wall {frame.name}, seen from inside the room</h1>
          <p>{plan.name} · mm · heights from the line, lengths from the left corner</p>
        </div>
        <p>Valid until the room, a unit or a wish changes · {plan.stamp.hash.slice(0, 8)}</p>
      </header>
      <div className="scroll">
        <WallDrawing plan={plan} frame={frame} />
      </div>
      <p className="stop">
        Outside the hatching is not proved clear: trace, isolate, have it proved dead by someone competent, then drill.
      </p>
      <p>Round: rail or plate. Diamond: second fixing or restraint. Triangle: base bracket. Red with a bar: not to be drilled.</p>
      <LineTable plan={plan} wall={frame.wall} />
      <HoleTable holes={holes} />
      <LegTable plan={plan} wall={frame.wall} />
      <AssumedList plan={plan} />
    </section>
  )
}

function LineTable({ plan, wall }: { readonly plan: Plan; readonly wall: string }) {
  const lines = plan.lines.filter((l) => l.wall === wall)
  return (
    <table className="rows">
      <caption>Lines</caption>
      <thead>
        <tr>
          <th scope="col">line</th>
          <th scope="col">from the line, mm</th>
          <th scope="col">measured</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((l) => (
          <tr key={l.id}>
            <td>{l.of.replace('-', ' ')}</td>
            <td className="figure">{numberText(l.height, { signed: true }) ?? 'not known yet'}</td>
            <td> </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function HoleTable({ holes }: { readonly holes: readonly Hole[] }) {
  if (holes.length === 0) return null
  const sorted = [...holes].sort((a, b) => (a.number ?? 1e9) - (b.number ?? 1e9) || (a.id < b.id ? -1 : 1))
  return (
    <div className="scroll">
      <table className="rows">
        <caption>Holes</caption>
        <thead>
          <tr>
            <th scope="col">no.</th>
            <th scope="col">for</th>
            <th scope="col">from the left corner</th>
            <th scope="col">from the line</th>
            <th scope="col">bit</th>
            <th scope="col">depth from the face</th>
            <th scope="col">screw</th>
            <th scope="col">before it is drilled</th>
          </tr>
        </thead>
        <tbody>
          {sorted.map((h) => (
            <tr key={h.id} className={h.verdict === 'refused' ? 'stop' : undefined}>
              <td className="figure">{h.number ?? 'no'}</td>
              <td>{h.purpose.replace('-', ' ')}</td>
              <td className="figure">{numberText(h.along) ?? 'not known yet'}</td>
              <td className="figure">{numberText(h.height, { signed: true }) ?? 'not known yet'}</td>
              <td className="figure">{numberText(h.bit) ?? '?'}</td>
              <td className="figure">{hasValue(h.depth) ? figureText(h.depth, { withPm: true }) : 'not known yet'}</td>
              <td className="figure">{numberText(h.screwLength) ?? '?'}</td>
              <td>
                {h.verdict === 'refused' ? 'Do not drill. ' : h.verdict === 'ask' ? 'Ask first. ' : 'Trace first. '}
                {h.against.map((m) => words(m)).join(' ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function LegTable({ plan, wall }: { readonly plan: Plan; readonly wall: string }) {
  const units = unitsOn(plan, wall).filter((u) => u.legs.length > 0)
  if (units.length === 0) return null
  return (
    <table className="rows">
      <caption>Legs, floor to underside of the carcass</caption>
      <thead>
        <tr>
          <th scope="col">unit</th>
          <th scope="col">foot</th>
          <th scope="col">length, mm</th>
          <th scope="col">measured</th>
        </tr>
      </thead>
      <tbody>
        {units.flatMap((u) =>
          u.legs.map((leg) => (
            <tr key={`${u.unit}.${leg.foot}`} className={leg.within === 'too-long' || leg.within === 'too-short' ? 'stop' : undefined}>
              <td>{u.name}</td>
              <td>{footName(leg.foot)}</td>
              <td className="figure">{hasValue(leg.extension) ? figureText(leg.extension, { withPm: true }) : 'not known yet'}</td>
              <td> </td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  )
}

export function footName(foot: string): string {
  return { fl: 'front left', fr: 'front right', bl: 'back left', br: 'back right' }[foot] ?? foot
}

function AssumedList({ plan }: { readonly plan: Plan }) {
  const assumed = plan.findings.filter((f) => f.rule === 'assumed-figures')
  if (assumed.length === 0) return null
  return (
    <>
      <h2>Assumed, until you confirm it</h2>
      {assumed.map((f) => (
        <p key={f.id}>{words(f.say)}</p>
      ))}
    </>
  )
}
