/** Runs the planner away from the thread that draws: one request in, its answer out, then its ways out one by one. */
import { waysOutOf } from '../core/plan/ways-out'
import { withWords } from '../core/words/with-words'
import {
  answer,
  type PlanAnswer,
  type PlanRequest,
  type TrialRequest,
  tried,
  type WaysAnswer,
} from './answer'

let newest = 0
let last: PlanAnswer | null = null

self.onmessage = ({ data }: MessageEvent<PlanRequest | TrialRequest>) => {
  if ('forced' in data) {
    const outcome = last !== null && last.id === data.of ? last.outcome : null
    self.postMessage(tried(data, outcome?.kind === 'plan' ? outcome.plan : undefined))
    return
  }
  newest = data.id
  const answered = answer(data)
  last = answered
  self.postMessage(answered)
  if (answered.outcome.kind === 'plan') setTimeout(() => planWaysOut(answered, data.log))
}

/** One finding after the other, letting a newer request in between. */
function planWaysOut({ id, outcome, kitchen }: PlanAnswer, log: unknown, from = 0): void {
  if (outcome.kind !== 'plan' || id !== newest) return
  const { plan } = outcome
  const at = plan.findings.findIndex((finding, i) => i >= from && finding.waysOut.length > 0)
  const finding = plan.findings[at]
  if (finding === undefined) return
  const waysOut = withWords(waysOutOf(finding, plan, kitchen, log))
  const ways: WaysAnswer = { id, finding: finding.id, waysOut }
  self.postMessage(ways)
  setTimeout(() => planWaysOut({ id, outcome, kitchen }, log, at + 1))
}
