import type { Forced } from '../core/order/what-if'
import type { PlanAnswer, PlanRequest, TrialAnswer, TrialRequest, WaysAnswer } from '../worker/answer'

/** The part of a worker that the planner needs; a test gives its own. */
export interface PlanWorker {
  postMessage(request: PlanRequest | TrialRequest): void
  onmessage: ((event: { readonly data: PlanAnswer | WaysAnswer | TrialAnswer }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  terminate(): void
}

export interface Planner {
  /** Asks for a plan; the answer to an older request never arrives after a newer one was asked for. */
  request(kitchen: unknown, log: unknown): void
  /** Tries one operation before another in the kitchen that was planned last; of several only the newest is answered. */
  attempt(kitchen: unknown, log: unknown, forced: Forced): void
  /** Forgets whatever is under way, at once. */
  cancel(): void
}

/** Latest wins: while one plan is being worked out only the newest further request is kept. */
export function makePlanner(
  start: () => PlanWorker,
  onAnswer: (answer: PlanAnswer) => void,
  onBroken: (why: string) => void,
  onWays: (answer: WaysAnswer) => void = () => undefined,
  onTried: (answer: TrialAnswer) => void = () => undefined,
): Planner {
  let worker: PlanWorker | null = null
  let running: number | null = null
  let waiting: PlanRequest | null = null
  let next = 1
  let trying: number | null = null
  let tryNext: TrialRequest | null = null
  let shown: number | null = null

  const send = (request: PlanRequest) => {
    worker ??= wired()
    running = request.id
    worker.postMessage(request)
  }
  const wired = () => {
    const fresh = start()
    fresh.onmessage = ({ data }) => {
      if ('waysOut' in data) {
        if (data.id === shown && running === null) onWays(data)
        return
      }
      if ('tried' in data) {
        if (data.id !== trying) return
        trying = null
        if (tryNext !== null) sendTrial(tryNext)
        else if (running === null) onTried(data)
        return
      }
      if (data.id !== running) return
      running = null
      const more = waiting
      waiting = null
      if (more !== null) return send(more)
      shown = data.id
      onAnswer(data)
    }
    fresh.onerror = ({ message }) => {
      stop()
      onBroken(message ?? 'the planner stopped')
    }
    return fresh
  }
  const sendTrial = (request: TrialRequest) => {
    worker ??= wired()
    tryNext = null
    trying = request.id
    worker.postMessage(request)
  }
  const stop = () => {
    worker?.terminate()
    worker = null
    running = null
    waiting = null
    trying = null
    tryNext = null
  }
  return {
    request(kitchen, log) {
      const request = { id: next++, kitchen, log }
      if (running === null) send(request)
      else waiting = request
    },
    attempt(kitchen, log, forced) {
      const request = { id: next++, kitchen, log, forced, of: shown }
      if (trying === null) sendTrial(request)
      else tryNext = request
    },
    cancel: stop,
  }
}
