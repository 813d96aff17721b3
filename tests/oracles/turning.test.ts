/** Standing up, going round a corner, corners from three lengths: each a second way, by trying angle after angle. */
import { expect, test } from 'vitest'
import { longestRoundCorner } from '../../src/core/placing/round-a-corner'
import { diagonalOf, heightOnFeet, steepestAngle, tallestUnder } from '../../src/core/placing/stand-up'
import { angleOpposite } from '../../src/core/survey/corner'
import { randomFrom } from '../support/prng'

const CASES = 300
const rad = (degrees: number): number => (degrees * Math.PI) / 180

/** The highest corner of an upright box tipped by `angle` from lying, about the bottom edge it turns on. */
const highestOf = (height: number, side: number, angle: number): number =>
  height * Math.sin(rad(angle)) + side * Math.cos(rad(angle))

test(`${CASES} talls: the height they swing through, the angle of it, and the tallest that goes under a ceiling`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed)
    const [height, side] = [random.step(1500, 2600, 0.5), random.step(250, 700, 0.5)]
    const angles = Array.from({ length: 9001 }, (_, i) => i / 100)
    const heights = angles.map((a) => highestOf(height, side, a))
    const most = Math.max(...heights)
    expect(Math.abs(diagonalOf(height, side) - most), `seed ${seed}`).toBeLessThan(0.001)
    expect(
      Math.abs(steepestAngle(height, side) - (angles[heights.indexOf(most)] as number)),
    ).toBeLessThanOrEqual(0.01)
    const tallest = tallestUnder(most, side)
    expect(tallest === undefined ? Number.NaN : Math.abs(tallest - height), `seed ${seed}`).toBeLessThan(0.01)
  }
})

test(`${CASES} talls on their feet: the highest any point of them comes while they are tipped`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 1000)
    const [height, side] = [random.step(1500, 2600, 0.5), random.step(300, 700, 0.5)]
    const [leg, inset] = [random.step(60, 180, 0.5), random.step(0, 90, 0.5)]
    // Profile of carcass and its rear feet, the unit upright.
    const points: readonly (readonly [number, number])[] = [
      [0, leg],
      [0, leg + height],
      [side, leg],
      [side, leg + height],
      [inset, 0],
    ]
    // Tipped back over x = 0: what is further forward rises. It stands on whatever of it is lowest, edge or foot.
    let most = 0
    for (let angle = 0; angle <= 90; angle += 0.05) {
      const t = rad(90 - angle)
      const heights = points.map(([x, z]) => z * Math.cos(t) + x * Math.sin(t))
      most = Math.max(most, Math.max(...heights) - Math.min(...heights))
    }
    expect(Math.abs(heightOnFeet(height, side, leg, inset) - most), `seed ${seed}`).toBeLessThan(0.001)
  }
})

test(`${CASES} corners of corridors: the longest piece that never touches both outer walls and the inner corner`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 2000)
    const [a, b] = [random.step(700, 1600, 1), random.step(700, 1600, 1)]
    const w = random.step(20, Math.min(a, b) - 50, 1)
    const ours = longestRoundCorner(a, b, w)
    if (ours === null) throw new Error(`seed ${seed}`)
    // The far long side of the piece, its ends sliding on both outer walls, stays clear of the inner corner by w.
    const isClear = (length: number): boolean => {
      for (let t = 0.0005; t < Math.PI / 2; t += 0.0005) {
        const [x, y] = [length * Math.cos(t), length * Math.sin(t)]
        // Line through (x, 0) and (0, y): distance of the inner corner (b, a) on the far side of it.
        const beyond = (b * y + a * x - x * y) / Math.hypot(x, y)
        if (beyond < w) return false
      }
      return true
    }
    let [low, high] = [0, 20_000]
    while (high - low > 0.05) {
      const middle = (low + high) / 2
      if (isClear(middle)) low = middle
      else high = middle
    }
    expect(Math.abs(ours - Math.max(low, a, b)), `seed ${seed}: ${a}, ${b}, ${w}`).toBeLessThan(0.5)
  }
})

test(`${CASES} corners from three lengths, against the two walls set out by coordinates`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 3000)
    const angle = random.step(60, 140, 0.01)
    const [along, onward] = [random.step(300, 1500, 1), random.step(300, 1500, 1)]
    const far = { x: onward * Math.cos(rad(angle)), y: onward * Math.sin(rad(angle)) }
    const across = Math.hypot(along - far.x, far.y)
    expect(Math.abs(angleOpposite(along, onward, across) - angle), `seed ${seed}`).toBeLessThan(1e-9)
  }
})
