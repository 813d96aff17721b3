import type { PlanWorker } from '../../src/state/planner'
import { answer, type PlanRequest, type TrialRequest, tried } from '../../src/worker/answer'

/** A worker that works on the same thread and answers a moment later, as a real one would. */
export function directWorker(): PlanWorker {
  const worker: PlanWorker = {
    onmessage: null,
    onerror: null,
    postMessage: (request: PlanRequest | TrialRequest) => {
      const data = 'forced' in request ? tried(structuredClone(request)) : answer(structuredClone(request))
      queueMicrotask(() => worker.onmessage?.({ data }))
    },
    terminate: () => {
      worker.onmessage = null
    },
  }
  return worker
}

/** A worker that never answers: what a screen says before anything is worked out. */
export function silentWorker(): PlanWorker {
  return { onmessage: null, onerror: null, postMessage: () => undefined, terminate: () => undefined }
}
