import type { PlanAnswer, PlanRequest } from '../worker/answer'

/** The part of a worker that the planner needs; a test gives its own. */
export interface PlanWorker {
  postMessage(request: PlanRequest): void
  onmessage: ((event: { readonly data: PlanAnswer }) => void) | null
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
): Planner {
  let worker: PlanWorker | null = null
  let running: number | null = null
  let waiting: PlanRequest | null = null
  let next = 1

  const send = (request: PlanRequest) => {
    worker ??= wired()
    running = request.id
    worker.postMessage(request)
  }
  const wired = () => {
    const fresh = start()
    fresh.onmessage = ({ data }) => {
      if (data.id !== running) return
      running = null
      const more = waiting
      waiting = null
      if (more === null) onAnswer(data)
      else send(more)
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
