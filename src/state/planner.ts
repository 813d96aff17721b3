import type { PlanAnswer, PlanRequest, WaysAnswer } from '../worker/answer'

/** The part of a worker that the planner needs; a test gives its own. */
export interface PlanWorker {
  postMessage(request: PlanRequest): void
  onmessage: ((event: { readonly data: PlanAnswer | WaysAnswer }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  terminate(): void
}

export interface Planner {
  /** Asks for a plan; the answer to an older request never arrives after a newer one was asked for. */
  request(kitchen: unknown, log: unknown): void
  /** Forgets whatever is under way, at once. */
  cancel(): void
}

/** Latest wins: while one plan is being worked out only the newest further request is kept. */
export function makePlanner(
  start: () => PlanWorker,
  onAnswer: (answer: PlanAnswer) => void,
  onBroken: (why: string) => void,
  onWays: (answer: WaysAnswer) => void = () => undefined,
): Planner {
  let worker: PlanWorker | null = null
  let running: number | null = null
  let waiting: PlanRequest | null = null
  let next = 1
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
  const stop = () => {
    worker?.terminate()
    worker = null
    running = null
    waiting = null
  }
  return {
    request(kitchen, log) {
      const request = { id: next++, kitchen, log }
      if (running === null) send(request)
      else waiting = request
    },
    cancel: stop,
  }
}
