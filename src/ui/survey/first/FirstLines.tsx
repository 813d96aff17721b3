import type { FirstKind, FirstLine } from '../../../core/first/line'
import { inputName, type Named } from '../../../core/words/plan-names'
import { upperFirst } from '../../../core/words/upper-first'
import { useApp } from '../../app-context'
import { basisText } from '../../basis'
import { keyOf, words } from '../../words'

const KINDS: readonly (readonly [kind: FirstKind, title: string, none: string])[] = [
  ['fits', 'Does it look like fitting?', 'Not known yet. The last list below says what is missing.'],
  ['do-not-drill', 'Do not drill yet', ''],
  ['book', 'Whom to book', 'Nobody follows yet from what is known.'],
  ['borrow', 'What to borrow', 'Nothing follows yet from what is known.'],
  ['strike', 'Which line to strike first', ''],
  ['measure', 'What to find out next', 'Nothing more from these questions. The survey goes on from here.'],
]

const NO_NAMES: Named = { units: [], walls: [], marks: [], parts: [] }

/** The first answer, kind by kind; each line opens to what it rests on. */
export function FirstLines() {
  const first = useApp((s) => s.first)
  const plan = useApp((s) => s.plan)
  if (first.length === 0) return <p className="quiet">Not worked out yet.</p>
  return (
    <>
      {KINDS.map(([kind, title, none]) => {
        const lines = first.filter((line) => line.kind === kind)
        return (
          <section key={kind} className="first-kind" data-kind={kind}>
            <h3>{title}</h3>
            {lines.length === 0 && <p className="quiet">{none}</p>}
            <ul className="plain">
              {lines.map((line) => (
                <li key={keyOf(line.say)}>
                  <Line line={line} names={plan ?? NO_NAMES} />
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

function Line({ line, names }: { readonly line: FirstLine; readonly names: Named }) {
  const facts = [...new Set(line.facts.map((id) => inputName(id, names)))]
  return (
    <details data-line={line.say.key}>
      <summary>{words(line.say)}</summary>
      <p className="quiet">
        {line.kind === 'measure' ? 'Asks for' : 'Rests on'}: {facts.join('; ')}.
      </p>
      <p className="quiet">{upperFirst(basisText(line.basis))}</p>
    </details>
  )
}
