import type { Finding } from '../../core/plan/types'
import { words } from '../words'

/** What somebody is to do about a finding, and what is said beside it. */
export interface Action {
  readonly action: string | null
  readonly rest: string
}

/** An ask begins with what to do: what settles it, or its first sentence where that is all there is to do. */
export function actionOf(finding: Finding): Action {
  const said = words(finding.say)
  if (finding.weight !== 'ask') return { action: null, rest: withAsk(said, finding) }
  if (finding.ask !== null) return { action: words(finding.ask), rest: said }
  const [first = said, ...others] = said.split(/(?<=[.?])\s+(?=\p{Lu})/u)
  return { action: first, rest: others.join(' ') }
}

const withAsk = (said: string, { ask }: Finding) => (ask === null ? said : `${said} ${words(ask)}`)
