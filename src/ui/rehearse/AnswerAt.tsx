import { settledBy } from '../../core/plan/settled-by'
import type { Finding, Plan } from '../../core/plan/types'
import { inputName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { useActions } from '../app-context'
import { addressOfFact, goToFact } from '../survey/go-to-fact'

interface Answer {
  readonly fact: string
  readonly address: string
  readonly name: string
}

/** The fields of the survey in which a finding is answered, each once. */
function answersOf(finding: Finding, plan: Plan): readonly Answer[] {
  const byName = new Map<string, Answer>()
  for (const fact of settledBy(finding)) {
    const address = addressOfFact(fact)
    const name = upperFirst(inputName(fact, plan))
    if (address !== undefined && !byName.has(name)) byName.set(name, { fact, address, name })
  }
  return [...byName.values()]
}

/** More than this is a list nobody reads beside a step: the rest shows on the survey, page by page. */
const MOST_SHOWN = 3

interface Props {
  readonly finding: Finding
  readonly plan: Plan
}

/** Where the answer to a finding is put in: ticks of a rehearsal settle nothing. */
export function AnswerAt({ finding, plan }: Props) {
  const actions = useActions()
  if (finding.weight !== 'ask' && finding.weight !== 'stop') return null
  const answers = answersOf(finding, plan)
  const more = answers.length - MOST_SHOWN
  return (
    <p className="answer-at">
      The answer is put in on the survey
      {answers.length === 0 ? (
        <>
          , with what it is about: <a href="#survey">Survey</a>
        </>
      ) : (
        ': '
      )}
      {answers.slice(0, MOST_SHOWN).map(({ fact, address, name }, i) => (
        <span key={fact}>
          {i > 0 && ', '}
          <a href={address} onClick={() => goToFact(actions, fact)}>
            {name}
          </a>
        </span>
      ))}
      {more > 0 && ` and ${more} more`}.
    </p>
  )
}
