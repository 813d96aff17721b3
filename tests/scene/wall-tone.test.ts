import { expect, test } from 'vitest'
import { type Standing, standingAt } from '../../src/core/plan/standing-at'
import type { WallFrame } from '../../src/core/plan/types'
import { isLineInUse, wallTone } from '../../src/scene/wall-tone'
import { planOf } from '../support/kitchens'

const plan = planOf('l-shape')
const at = (id: string): Standing => {
  const index = plan.operations.findIndex((o) => o.id === id)
  if (index < 0) throw new Error(`no operation ${id}`)
  return standingAt(plan, index, 1)
}
const wall = (id: string): WallFrame => {
  const found = plan.walls.find((w) => w.wall === id)
  if (found === undefined) throw new Error(`no wall ${id}`)
  return found
}

test.each([
  ['trace:a', 'loud'],
  ['mark-holes:a', 'loud'],
  ['drill-rail:rail-1', 'loud'],
  ['second-fix:wall-2', 'loud'],
  ['strike:line', 'plain'],
  ['set-out-heights:a', 'plain'],
  ['hang:wall-2', 'faint'],
  ['place:base-2', 'faint'],
  ['level:base-2', 'faint'],
  ['join:base-2+base-3', 'faint'],
  ['plinth:plinth-a', 'faint'],
])('at %s the wall it is about is %s', (id, tone) => {
  expect(wallTone(at(id), wall('a'))).toBe(tone)
})

test('a wall that another wall’s work is not about keeps quiet', () => {
  expect(wallTone(at('mark-holes:a'), wall('b'))).toBe('faint')
})

test('while a unit is hung or placed, only the lines it goes by, and the line itself, stay in use', () => {
  const used = (id: string) => {
    const standing = at(id)
    return [
      ...new Set(
        standing.lines
          .filter((l) => l.line.wall === 'a' && isLineInUse(standing, l, wallTone(standing, wall('a'))))
          .map((l) => l.line.of),
      ),
    ].sort()
  }
  expect(used('place:base-2')).toEqual(['base-top', 'line'])
  expect(used('hang:wall-2')).toEqual(['line', 'tall-top', 'wall-top', 'wall-underside'])
  expect(used('mark-holes:a').length).toBeGreaterThan(5)
})
