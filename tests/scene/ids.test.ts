import { expect, test } from 'vitest'
import { idColour, partAt } from '../../src/scene/ids'

const ids = Array.from({ length: 5000 }, (_, i) => `part-${i}`)
const channels = (colour: string) =>
  [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16)) as [number, number, number]

test('every part has a colour of its own that leads back to it, even three levels off', () => {
  expect(new Set(ids.map((_, i) => idColour(i))).size).toBe(ids.length)
  for (const [i, name] of ids.entries()) {
    const [r, g, b] = channels(idColour(i))
    for (const off of [-3, 0, 3]) {
      const near = (c: number) => (c === 0 ? 0 : c + off)
      expect(partAt(ids, near(r), near(g), near(b))).toBe(name)
    }
  }
})

test('black is no part', () => {
  expect(partAt(ids, 0, 0, 0)).toBeUndefined()
})
