import { describe, expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import type { HeightValue } from '../../../src/core/plan/types'
import { heightWords } from '../../../src/ui/paper/heights/height-words'
import { planOf } from '../../support/kitchens'

const value = (height: number, lowest: number | null, highest: number | null): HeightValue => ({
  of: 'base-underside',
  height: known(height, 0, 'mm', []),
  lowest,
  highest,
  lowestBy: [],
  highestBy: [],
  marginal: false,
  achieved: false,
})

describe('what is said of a height', () => {
  test('how much room is left, from where to where, and that the middle was chosen', () => {
    expect(heightWords(value(-858, -863, -853), 4, 0)).toBe(
      'All 4 lines below are met. With what the other heights ask, they leave a range of 10 mm, the blue strip: from −863 to −853. −858 is chosen, in the middle: as far as can be from both ends.',
    )
  })

  test('off the middle: how far from the nearer end; never that it is in the middle', () => {
    const said = heightWords(value(-861, -863, -853), 4, 0)
    expect(said).toContain('−861 is chosen, 2 mm from its lower end')
    expect(said).not.toContain('middle')
    expect(heightWords(value(-853, -863, -853), 4, 0)).toContain('at its upper end')
  })

  test('outside the range, one height only, open ends, what is not met, what was read on the day', () => {
    expect(heightWords(value(-850, -863, -853), 4, 1)).toContain('Only 3 of the 4 lines below are met.')
    expect(heightWords(value(-850, -863, -853), 4, 1)).toContain('−850 lies outside it.')
    expect(heightWords(value(-850, -850, -850), 2, 0)).toContain('leave one height only, −850.')
    expect(heightWords(value(-850, null, -840), 1, 0)).toBe('The one line below is met.')
    expect(heightWords({ ...value(-858, -863, -853), achieved: true }, 4, 0)).not.toContain('chosen')
    expect(heightWords({ ...value(-858, -863, -853), marginal: true }, 4, 0)).toContain('measure again')
  })

  test('of the demo kitchens: the range said is the range planned', () => {
    for (const name of ['l-shape', 'one-wall'] as const)
      for (const v of planOf(name).heights.values) {
        const said = heightWords(v, 2, 0)
        const [, low, high] = /from ([+−]?[\d\u202f.]+) to ([+−]?[\d\u202f]+(?:\.\d)?)/.exec(said) ?? []
        const number = (text = '') => Number(text.replace('−', '-').replaceAll('\u202f', ''))
        expect(number(low)).toBeCloseTo(v.lowest as number, 0)
        expect(number(high)).toBeCloseTo(v.highest as number, 0)
      }
  })
})
