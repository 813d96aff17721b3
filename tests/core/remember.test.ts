import { expect, test } from 'vitest'
import { remembered } from '../../src/core/remember'

test('an object is worked on once, an equal but other object anew', () => {
  const asked: number[] = []
  const doubled = remembered(({ of }: { readonly of: number }) => {
    asked.push(of)
    return 2 * of
  })
  const three = { of: 3 }
  expect([doubled(three), doubled(three), doubled({ of: 3 })]).toEqual([6, 6, 6])
  expect(asked).toEqual([3, 3])
})

test('that there is no answer is kept too', () => {
  let asked = 0
  const none = remembered((_: object): undefined => {
    asked++
  })
  const of = {}
  expect([none(of), none(of)]).toEqual([undefined, undefined])
  expect(asked).toBe(1)
})
