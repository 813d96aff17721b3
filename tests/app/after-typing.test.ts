/** Answers of the planner wait while letters are typed, come in their order, and come at once to a hand that rests. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { afterTyping } from '../../src/app/after-typing'
import type { PlanWorker } from '../../src/state/planner'

beforeEach(() => vi.useFakeTimers())
afterEach(() => vi.useRealTimers())

function wired() {
  const inner: PlanWorker = { postMessage: vi.fn(), onmessage: null, onerror: null, terminate: vi.fn() }
  const outer = afterTyping(inner)
  const got: number[] = []
  outer.onmessage = ({ data }) => got.push(data.id)
  const arrive = (id: number) => inner.onmessage?.({ data: { id } as never })
  return { inner, outer, got, arrive }
}

const letter = () => {
  const field = document.body.appendChild(document.createElement('input'))
  field.dispatchEvent(new Event('input', { bubbles: true }))
  field.remove()
}

test('nobody types: an answer is there at once', () => {
  const { got, arrive } = wired()
  arrive(1)
  expect(got).toEqual([1])
})

test('between letters nothing is taken in; after them all of it is, in its order', () => {
  const { got, arrive } = wired()
  for (let id = 1; id <= 4; id++) {
    letter()
    arrive(id)
    vi.advanceTimersByTime(200)
  }
  expect(got).toEqual([])
  vi.advanceTimersByTime(150)
  expect(got).toEqual([1, 2, 3, 4])
  arrive(5)
  expect(got).toEqual([1, 2, 3, 4, 5])
})

test('a worker that is ended says nothing more', () => {
  const { inner, outer, got, arrive } = wired()
  letter()
  arrive(1)
  outer.terminate()
  vi.advanceTimersByTime(1000)
  expect(got).toEqual([])
  expect(inner.terminate).toHaveBeenCalled()
})
