import { expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { holePlace } from '../../../src/core/views/hole-place'
import { sampleIndex, samplePlan } from '../../support/sample-plan'

function placeAt(operation: string, id: string) {
  const hole = samplePlan.holes.find((h) => h.id === id)
  if (hole === undefined) throw new Error(`no hole ${id}`)
  return holePlace(samplePlan, standingAt(samplePlan, sampleIndex(operation), 0), hole)
}
/** Out from the long wall, which is at x = 3000 and faces −x. */
const outOf = (place: ReturnType<typeof placeAt>) => 3000 - (place?.at.x ?? Number.NaN)

test('a marked hole is on the wall at its own place', () => {
  const place = placeAt('mark-holes:long', 'second.wall-2.stud-4')
  expect(place).toMatchObject({ inside: null, behind: null, at: { y: -1400, z: 440 } })
  expect(outOf(place)).toBeLessThan(5)
})

test('once its unit hangs there it shows on the back of the unit', () => {
  const place = placeAt('second-fix:wall-2', 'second.wall-2.stud-4')
  expect(place?.inside?.unit.unit).toBe('wall-2')
  expect(outOf(place)).toBeGreaterThan(20)
  expect(outOf(place)).toBeLessThan(40)
})

test('while that unit is still on its way, it shows on the wall', () => {
  expect(placeAt('hang:wall-2', 'second.wall-2.stud-4')).toMatchObject({ inside: null, behind: null })
})

test('a hole of the rail is behind the unit that hangs on it', () => {
  expect(placeAt('level:wall-1', 'rail.rail-1.stud-3')?.behind?.unit.unit).toBe('wall-1')
  expect(placeAt('level:wall-1', 'rail.rail-1.stud-5')).toMatchObject({ inside: null, behind: null })
})
