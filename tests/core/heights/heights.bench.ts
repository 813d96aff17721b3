import { bench } from 'vitest'
import { nothingAchieved } from '../../../src/core/daylog/achieved'
import { workOutHeights } from '../../../src/core/heights/heights'
import { regionPack } from '../../../src/core/region/region'
import { baseUnit, rowKitchen, wallUnit } from '../../support/row-kitchen'
import { atLeft, placeOn, readingOf, sure, wallsOf, workThrough } from '../../support/surveyed'

/** Thirty units along one long wall: three tall, fifteen base, twelve hung, over twenty-six floor readings. */
function thirtyUnits() {
  const row = Array.from({ length: 18 }, (_, i) => {
    const order = i === 0 ? { left: atLeft(0) } : { rightOf: `u${i - 1}` }
    return baseUnit(`u${i}`, order, i < 3 ? { kind: 'tall', height: sure(1970) } : {})
  })
  const hung = Array.from({ length: 12 }, (_, i) =>
    wallUnit(`w${i}`, i === 0 ? { left: atLeft(1800) } : { rightOf: `w${i - 1}` }),
  )
  const steps = Array.from({ length: 13 }, (_, i) => i)
  return rowKitchen({
    walls: wallsOf([12_000]),
    units: [...row, ...hung],
    worktops: [{ id: 'top', over: ['u3'], thickness: sure(38) }],
    floor: {
      readings: steps.flatMap((i) => [
        readingOf(`back-${i}`, 'a', 950 * i, 0, 1000 + ((3 * i) % 7), 1),
        readingOf(`front-${i}`, 'a', 950 * i + 200, 650, 1001 + ((5 * i) % 7), 1),
      ]),
    },
    ceiling: steps.map((i) => ({
      id: `c${i}`,
      at: placeOn('a', 950 * i, (i % 3) * 300),
      height: { up: sure(1400) },
    })),
  })
}

const { kitchen, survey, positions } = workThrough(thirtyUnits())

bench('heights of thirty units', () => {
  workOutHeights(kitchen, survey, positions, regionPack('uk'), nothingAchieved)
})
