import type { PlanWorker } from '../state/planner'

/** A hand that has not typed for so long, in ms, rests. */
const REST = 300

/** Where letters are typed. */
const FIELDS = 'input, textarea'

/**
 * A worker whose answers are taken in once the hand rests: the plan of a large kitchen takes longer to take in than a
 * letter may wait, and between two letters nobody reads it. It stays unopened until then.
 */
export function afterTyping(
  worker: PlanWorker,
  page: Pick<Document, 'addEventListener'> = document,
): PlanWorker {
  let typed = Number.NEGATIVE_INFINITY
  const letters = (event: Event) => {
    if (event.target instanceof Element && event.target.matches(FIELDS)) typed = performance.now()
  }
  page.addEventListener('input', letters, true)
  type Arrived = Parameters<NonNullable<PlanWorker['onmessage']>>[0]
  const arrived: Arrived[] = []
  let isWaiting = false
  const hand = () => {
    isWaiting = false
    const rest = typed + REST - performance.now()
    if (rest > 0) return wait(rest)
    for (const event of arrived.splice(0)) outer.onmessage?.(event)
  }
  const wait = (ms: number) => {
    isWaiting = true
    setTimeout(hand, ms)
  }
  const outer: PlanWorker = {
    postMessage: (request) => worker.postMessage(request),
    onmessage: null,
    onerror: null,
    terminate: () => {
      arrived.length = 0
      worker.terminate()
    },
  }
  worker.onmessage = (event) => {
    arrived.push(event)
    if (!isWaiting) hand()
  }
  worker.onerror = (event) => outer.onerror?.(event)
  return outer
}
