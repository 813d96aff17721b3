import { expect, test, vi } from 'vitest'
import { makePlanner, type PlanWorker } from '../../src/state/planner'
import type { PlanAnswer, PlanRequest, TrialRequest } from '../../src/worker/answer'

/** A worker that answers when told to. */
function slowWorker() {
  const asked: PlanRequest[] = []
  const worker: PlanWorker & { stopped: boolean } = {
    onmessage: null,
    onerror: null,
    stopped: false,
    postMessage: (request) => void asked.push(request),
    terminate() {
      this.stopped = true
    },
  }
  const answer = (request: PlanRequest) => {
    const data: PlanAnswer = {
      id: request.id,
      kitchen: request.kitchen,
      outcome: { kind: 'refused', problems: [] },
    }
    worker.onmessage?.({ data })
  }
  return { worker, asked, answer }
}

test('latest wins: of what is asked meanwhile only the newest is worked out, and only its answer comes', () => {
  const { worker, asked, answer } = slowWorker()
  const answers: unknown[] = []
  const planner = makePlanner(
    () => worker,
    (a) => answers.push(a.kitchen),
    () => undefined,
  )
  planner.request('one', null)
  planner.request('two', null)
  planner.request('three', null)
  expect(asked.map((r) => r.kitchen)).toEqual(['one'])
  answer(asked[0] as PlanRequest)
  expect(answers).toEqual([])
  expect(asked.map((r) => r.kitchen)).toEqual(['one', 'three'])
  answer(asked[1] as PlanRequest)
  expect(answers).toEqual(['three'])
})

test('an answer to what is no longer asked is not taken', () => {
  const { worker, asked, answer } = slowWorker()
  const answers: unknown[] = []
  const planner = makePlanner(
    () => worker,
    (a) => answers.push(a.kitchen),
    () => undefined,
  )
  planner.request('one', null)
  planner.cancel()
  answer(asked[0] as PlanRequest)
  expect(answers).toEqual([])
  expect(worker.stopped).toBe(true)
})

test('a worker that breaks is told, and the next request gets a new one', () => {
  const workers = [slowWorker(), slowWorker()]
  const start = vi.fn(() => (workers[start.mock.calls.length - 1] as ReturnType<typeof slowWorker>).worker)
  const broken: string[] = []
  const planner = makePlanner(
    start,
    () => undefined,
    (why) => broken.push(why),
  )
  planner.request('one', null)
  workers[0]?.worker.onerror?.({ message: 'out of memory' })
  planner.request('two', null)
  expect(broken).toEqual(['out of memory'])
  expect(workers[1]?.asked.map((r) => r.kitchen)).toEqual(['two'])
})

test('ways out come after the answer they belong to, and not once something newer is asked', () => {
  const { worker, asked, answer } = slowWorker()
  const ways: string[] = []
  const planner = makePlanner(
    () => worker,
    () => undefined,
    () => undefined,
    ({ finding }) => ways.push(finding),
  )
  const found = (id: number, finding: string) => worker.onmessage?.({ data: { id, finding, waysOut: [] } })
  planner.request('one', null)
  found(1, 'too early')
  answer(asked[0] as PlanRequest)
  found(1, 'in time')
  planner.request('two', null)
  found(1, 'too late')
  expect(ways).toEqual(['in time'])
})

test('of orders tried one after another only the newest is answered, and none while a plan is being worked out', () => {
  const { worker, asked, answer } = slowWorker()
  const told: string[] = []
  const planner = makePlanner(
    () => worker,
    () => undefined,
    () => undefined,
    () => undefined,
    ({ forced }) => told.push(forced.before),
  )
  const trial = (at: number) => asked[at] as TrialRequest
  const tried = ({ id, forced }: TrialRequest) =>
    worker.onmessage?.({ data: { id, forced, tried: { kind: 'refused' } } })
  planner.request('one', null)
  answer(asked[0] as PlanRequest)
  planner.attempt('one', null, { before: 'a', after: 'z' })
  planner.attempt('one', null, { before: 'b', after: 'z' })
  planner.attempt('one', null, { before: 'c', after: 'z' })
  expect(asked).toHaveLength(2)
  expect(trial(1).of).toBe(asked[0]?.id)
  tried(trial(1))
  tried(trial(2))
  expect(told).toEqual(['c'])
  planner.attempt('one', null, { before: 'd', after: 'z' })
  planner.request('two', null)
  tried(trial(3))
  expect(told).toEqual(['c'])
})
