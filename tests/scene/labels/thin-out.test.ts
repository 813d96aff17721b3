import { expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { makeViews } from '../../../src/core/views/views'
import { labelsOf } from '../../../src/scene/labels/labels-of'
import { NARROW, thinnedOut } from '../../../src/scene/labels/thin-out'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const views = makeViews(plan, 1.2)

function labels(id: string) {
  const index = plan.operations.findIndex((o) => o.id === id)
  if (index < 0) throw new Error(`no operation ${id}`)
  return labelsOf(plan, standingAt(plan, index, 0), views.at(index), views.room, 'mm')
}

test('on a wide picture all is written', () => {
  const all = labels('hang:wall-1')
  expect(thinnedOut(all, NARROW)).toEqual(all)
  expect(all.some((l) => l.isAside)).toBe(true)
})

test('on a narrow one what the step is about stays, and what keeps people clear; names of the rest go', () => {
  const kept = thinnedOut(labels('hang:wall-1'), NARROW - 1).map((l) => l.id)
  expect(kept).toContain('name:wall-1')
  expect(kept).toContain('dimension:wall-1')
  expect(kept.filter((id) => id.startsWith('name:'))).toEqual(['name:wall-1'])
  expect(kept.filter((id) => id.startsWith('line:'))).toEqual([])
  const clear = (id: string) => id.startsWith('keep-clear:')
  expect(kept.filter(clear)).toEqual(
    labels('hang:wall-1')
      .map((l) => l.id)
      .filter(clear),
  )
})

test('lines that are struck now keep their names, figures of marks stay at their marks', () => {
  const struck = labels('set-out-heights:a').filter((l) => l.id.startsWith('line:') && !l.isAside)
  expect(struck.length).toBeGreaterThan(3)
  const kept = thinnedOut(labels('set-out-heights:a'), 390).map((l) => l.id)
  for (const { id } of struck) expect(kept).toContain(id)
  const marks = thinnedOut(labels('find-studs:a'), 390).filter((l) => l.isMark)
  expect(marks.length).toBeGreaterThan(3)
  expect(new Set(marks.map((l) => l.moves))).toEqual(new Set(['no']))
})

test('while nobody works on one wall each wall has its name, however narrow it is', () => {
  const names = (id: string) =>
    thinnedOut(labels(id), 390).flatMap((l) => (l.id.startsWith('wall:') ? [l.text] : []))
  const walls = plan.walls.map((w) => w.name)
  expect(names('check-delivery:room').length).toBeGreaterThan(1)
  for (const name of names('check-delivery:room')) expect(walls).toContain(name)
  expect(names('hang:wall-1')).toEqual([])
})

test('numbers of holes are written however narrow it is', () => {
  const numbers = (width: number) =>
    thinnedOut(labels('mark-holes:a'), width).filter((l) => l.id.startsWith('number:')).length
  expect(numbers(390)).toBe(numbers(1000))
  expect(numbers(390)).toBeGreaterThan(10)
})
