import { expect, test } from 'vitest'
import { type Figure, hasValue, known } from '../../../src/core/figure'
import type { Kitchen } from '../../../src/core/kitchen/schema'
import { plinthEndsOf } from '../../../src/core/placing/plinth-line'

const mm = (value: number) => known(value, 0, 'mm', [])
/** A floor that falls 1 in 100 along the wall and rises 1 in 100 out of it. */
const floorAt = (_: string, along: Figure, out: Figure) =>
  mm(-1000 - (hasValue(along) ? along.value : 0) / 100 + (hasValue(out) ? out.value : 0) / 100)

const ends = (finishWhere: string | null, finishToCome: number) =>
  plinthEndsOf(
    { floor: { finishWhere, finishToCome: mm(finishToCome) } } as unknown as Kitchen,
    { floorAt },
    { wall: 'a', left: mm(600), right: mm(1200) },
    { out: mm(0), depth: mm(560) },
    mm(-858),
    mm(60),
  ).map(({ height }) => (hasValue(height) ? height.value : null))

test('the gap over the floor at the face of the plinth, less what still comes on it', () => {
  // Face 560 − 60 = 500 out: floor −1000 − 6 + 5 = −1001 and −1007.
  expect(ends('none', 6)).toEqual([143, 149])
  expect(ends('up-to-plinth', 6)).toEqual([137, 143])
})

test('not known while nobody says whether the finish comes there', () => {
  expect(ends(null, 6)).toEqual([null, null])
})
