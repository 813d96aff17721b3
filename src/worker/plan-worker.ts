/** Runs the planner away from the thread that draws: one request in, one answer out. */
import { answer, type PlanRequest } from './answer'

self.onmessage = (event: MessageEvent<PlanRequest>) => {
  self.postMessage(answer(event.data))
}
