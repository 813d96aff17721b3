import type { PlanWorker } from '../../src/state/planner'
import { answer, type PlanRequest } from '../../src/worker/answer'

/** A worker that works on the same thread and answers a moment later, as a real one would. */
export function directWorker(): PlanWorker {
  const worker: PlanWorker = {
    onmessage: null,
    onerror: null,
    postMessage: (request: PlanRequest) => {
      const data = answer(structuredClone(request))
      queueMicrotask(() => worker.onmessage?.({ data }))
    },
    terminate: () => {
      worker.onmessage = null
    },
  }
  return worker
}
