import type { Finding } from '../../core/plan/types'
import { sentences } from '../sentences'
import { words } from '../words'

/** What somebody is to do about a finding, and what is said beside it. */
export interface Action {
  readonly action: string | null
  readonly rest: string
}

/** An ask begins with what to do; of anything else that is said last. */
export function actionOf(finding: Finding): Action {
  const [said, ask] = [words(finding.say), finding.ask === null ? null : words(finding.ask)]
  if (finding.weight === 'ask') return actionFirst(said, ask)
  return { action: null, rest: ask === null ? said : `${said} ${ask}` }
}

/** What settles it, or its first sentence where that is all there is to do. */
export function actionFirst(said: string, ask: string | null): Action {
  if (ask !== null) return { action: ask, rest: said }
  const [first, ...others] = sentences(said)
  return { action: first === undefined || first === '' ? null : first, rest: others.join(' ') }
}
