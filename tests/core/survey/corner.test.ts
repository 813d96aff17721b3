import { expect, test } from 'vitest'
import { hasValue, type ValueFigure } from '../../../src/core/figure'
import { angleOpposite, insideAngle } from '../../../src/core/survey/corner'
import { kitchenOf } from '../../support/surveyed'

const cornerOf = (cornerRight: object) => {
  const [wall] = kitchenOf({ walls: [{ id: 'a', length: 3000, cornerRight }] }).walls
  return insideAngle((wall as NonNullable<typeof wall>).cornerRight)
}

test.each([
  [900, 1200, 1500, 90],
  // All sides alike: 60. Flat out: 180.
  [700, 700, 700, 60],
  [500, 700, 1200, 180],
  // cos = (900² + 1200² − 1505²) ÷ (2 · 900 · 1200) = −15025 ÷ 2160000 = −0.006956: 90.3986.
  [900, 1200, 1505, 90.3986],
])('%i and %i along, %i across: %f°', (a, b, c, degrees) => {
  expect(angleOpposite(a, b, c)).toBeCloseTo(degrees, 4)
})

test('900, 1200, 1500 is square, as well as the three lengths are known', () => {
  const pm = (value: number) => ({ value, pm: 1 })
  const angle = cornerOf({ thisLeg: pm(900), nextLeg: pm(1200), across: pm(1500) }) as ValueFigure
  expect(angle.value).toBe(90)
  // At a right angle 1 mm moves it by 1/1200, 1/900 and 1500/(900·1200) rad: 0.0477 + 0.0637 + 0.0796 = 0.191°.
  expect(angle.pm).toBeCloseTo(0.191, 2)
  expect(angle.from).toEqual(['across', 'nextLeg', 'thisLeg'].map((leg) => `walls.a.cornerRight.${leg}`))
})

test('a typed angle goes before the three lengths', () => {
  const angle = cornerOf({ angle: 89.6, thisLeg: 900, nextLeg: 1200, across: 1496 })
  expect(hasValue(angle) && angle.value).toBe(89.6)
  expect(angle.from).toEqual(['walls.a.cornerRight.angle'])
})

test('with one length missing that length is asked for; with none, the angle', () => {
  expect(cornerOf({ thisLeg: 900, nextLeg: 1200 })).toMatchObject({
    state: 'unknown',
    missing: ['walls.a.cornerRight.across'],
  })
  expect(cornerOf({})).toMatchObject({ state: 'unknown', missing: ['walls.a.cornerRight.angle'] })
})
