import type { Finding, Plan, Weight } from '../../core/plan/types'
import { wallName } from '../../core/words/plan-names'
import { useApp } from '../app-context'
import { basisText } from '../basis'
import { wallSheet } from '../paper/sheets'
import { keyOf, words } from '../words'

const WEIGHTS: readonly Weight[] = ['stop', 'ask', 'warn', 'note']
const WEIGHT_WORDS: Readonly<Record<Weight, string>> = {
  stop: 'Stop',
  ask: 'Ask',
  warn: 'Mind',
  note: 'Note',
}
const MEANING: Readonly<Record<Weight, string>> = {
  stop: 'work does not go on until this is put right',
  ask: 'somebody has to settle this first',
  warn: 'it can be done; know it beforehand',
  note: 'worth knowing',
}

interface Props {
  readonly findings: readonly Finding[]
  readonly plan: Pick<Plan, 'walls' | 'units'>
}

/** Findings by weight, the gravest first; within a weight what can hurt someone first. */
export function FindingList({ findings, plan }: Props) {
  return WEIGHTS.map((weight) => {
    const group = findings
      .filter((f) => f.weight === weight)
      .sort((a, b) => Number(b.dangerous) - Number(a.dangerous) || (a.id < b.id ? -1 : 1))
    if (group.length === 0) return null
    return (
      <section key={weight} className="finding-group">
        <h3>
          <span className={weight === 'stop' ? 'stop' : undefined}>{WEIGHT_WORDS[weight]}</span>{' '}
          <span className="count">{group.length}</span>
          <span className="quiet"> {MEANING[weight]}</span>
        </h3>
        <ul className="findings">
          {group.map((f) => (
            <OneFinding key={f.id} finding={f} plan={plan} />
          ))}
        </ul>
      </section>
    )
  })
}

function OneFinding({ finding, plan }: { readonly finding: Finding; readonly plan: Props['plan'] }) {
  return (
    <li>
      <div className="said">
        {finding.dangerous && <p className="hurts">Can hurt someone.</p>}
        <p>{words(finding.say)}</p>
        {finding.ask !== null && <p className="who">{words(finding.ask)}</p>}
        <WaysOut finding={finding.id} />
      </div>
      <div className="basis">
        <Where finding={finding} plan={plan} />
        <p>{basisText(finding.basis)}</p>
      </div>
    </li>
  )
}

/** Ways out, cheapest first, each of which a plan was made with. They come in after the plan. */
function WaysOut({ finding }: { readonly finding: string }) {
  const ways = useApp((s) => s.ways[finding])
  if (ways === undefined || ways.length === 0) return null
  return (
    <ul className="ways-out">
      {ways.map((way) => (
        <li key={keyOf(way.say)}>
          <span className="quiet">Way out:</span> {words(way.say)}{' '}
          <span className="quiet">Costs {way.cost}; a plan made with it holds.</span>
        </li>
      ))}
    </ul>
  )
}

/** Where it is, as a way to the drawing of that wall. */
function Where({ finding: { where }, plan }: { readonly finding: Finding; readonly plan: Props['plan'] }) {
  if (where === null) return null
  const along = where.along === null ? '' : `, ${Math.round(where.along)} mm from its left corner`
  const height = where.height === null ? '' : `, ${signed(where.height)} mm from the line`
  return (
    <p>
      <a href={`#paper/${wallSheet(where.wall)}`}>
        {wallName(where.wall, plan)}
        {along}
        {height}
      </a>
    </p>
  )
}

function signed(mm: number): string {
  const rounded = Math.round(mm)
  return rounded > 0 ? `+${rounded}` : `${rounded}`.replace('-', '−')
}
