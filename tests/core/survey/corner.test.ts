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

test('a typed angle goes before three lengths that may say the same', () => {
  // cos = (900² + 1200² − 1496²) ÷ 2160000: 89.68.
  const angle = cornerOf({ angle: 89.6, thisLeg: 900, nextLeg: 1200, across: 1496 })
  expect(hasValue(angle) && angle.value).toBe(89.6)
  expect(angle.from).toEqual(['walls.a.cornerRight.angle'])
})

// 900, 1200 and 1495 make 89.603, known to 0.096 where the tape is good to 0.5; 90 to 0.1 is 0.397 from it.
test('three lengths go before a typed angle that is another, and that is what they differ by', () => {
  const pm = (value: number) => ({ value, pm: 0.5 })
  const corner = (angle: number, across = 1495) => ({
    angle: { value: angle, pm: 0.1 },
    thisLeg: pm(900),
    nextLeg: pm(1200),
    across: pm(across),
  })
  const used = (typed: object) => {
    const angle = cornerOf(typed)
    return hasValue(angle) ? angle.value : null
  }
  expect(used(corner(90))).toBeCloseTo(89.603, 3)
  expect(used(corner(89.799))).toBeCloseTo(89.603, 3)
  expect(used(corner(89.797))).toBe(89.797)
  expect(used(corner(270))).toBeCloseTo(270.397, 3)
})

test('with one length missing that length is asked for; with none, the angle', () => {
  expect(cornerOf({ thisLeg: 900, nextLeg: 1200 })).toMatchObject({
    state: 'unknown',
    missing: ['walls.a.cornerRight.across'],
  })
  expect(cornerOf({})).toMatchObject({ state: 'unknown', missing: ['walls.a.cornerRight.angle'] })
})
