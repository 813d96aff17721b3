import type { Finding, Weight } from '../../core/plan/types'
import { basisText } from '../rehearse/WhyNow'
import { words } from '../words'

const ORDER: readonly Weight[] = ['stop', 'ask', 'warn', 'note']
const WEIGHT_WORDS: Readonly<Record<Weight, string>> = { stop: 'Stop', ask: 'Ask', warn: 'Mind', note: 'Note' }

/** Findings, the gravest first. */
export function FindingList({ findings }: { readonly findings: readonly Finding[] }) {
  const sorted = [...findings].sort(
    (a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight) || Number(b.dangerous) - Number(a.dangerous) || (a.id < b.id ? -1 : 1),
  )
  if (sorted.length === 0) return <p>Nothing found wrong with what has been measured so far. That is not a promise.</p>
  return (
    <ul className="findings">
      {sorted.map((f) => (
        <li key={f.id} id={`finding-${f.id}`}>
          <span className={`weight ${f.weight}`}>{WEIGHT_WORDS[f.weight]}</span>
          <div>
            <p>{words(f.say)}</p>
            {f.ask !== null && <p>{words(f.ask)}</p>}
            <p className="basis">{basisText(f.basis)}</p>
          </div>
        </li>
      ))}
    </ul>
  )
}
