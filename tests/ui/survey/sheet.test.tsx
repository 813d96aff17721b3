/** The numbers on the sheet to print are those beside the fields on the screen, and those of what to measure next. */
import { describe, expect, test } from 'vitest'
import { fieldAt } from '../../../src/core/form/numbers'
import { PAGES } from '../../../src/core/form/pages'
import { message } from '../../../src/core/message'
import { PageForm } from '../../../src/ui/survey/form/PageForm'
import { MeasureNext } from '../../../src/ui/survey/MeasureNext'
import { pagesOf } from '../../../src/ui/survey/sheet/pages'
import { SheetPage } from '../../../src/ui/survey/sheet/SheetPage'
import { outcomeOf, sceneFile } from '../../support/kitchens'
import { type Shown, show } from '../../support/render'

const plain = (text: string | null | undefined): string => (text ?? '').replaceAll(/\s+/g, ' ').trim()

/** Each number with what it stands before: the first time, where it is asked. */
function numbersIn({ element }: Shown, selector: string): ReadonlyMap<string, string> {
  const found = [...element.querySelectorAll(selector)].map(
    (at) => [plain(at.textContent), plain(at.parentElement?.textContent)] as const,
  )
  return new Map(found.reverse())
}

const pageOf = (id: string) => PAGES.find((page) => page.id === id) as (typeof PAGES)[number]
const kitchen = sceneFile('l-shape')

test('a field has the same number and name on the screen and on the sheet', async () => {
  const sheet = await show(<SheetPage />)
  await sheet.settle()
  const onSheet = numbersIn(sheet, '.survey-pages .no')
  await sheet.close()
  for (const id of ['house', 'walls', 'units']) {
    const screen = await show(<PageForm page={pageOf(id)} />, { kitchen })
    const onScreen = numbersIn(screen, '.field-number')
    const inputs = [...screen.element.querySelectorAll('.typed [data-fact]')]
    for (const input of inputs.slice(0, 8)) {
      const beside = plain(input.closest('.field')?.querySelector('.field-number')?.textContent)
      expect(beside).toBe(fieldAt(PAGES, input.getAttribute('data-fact') ?? '')?.number)
    }
    await screen.close()
    const both = [...onScreen].filter(([number]) => onSheet.has(number))
    expect(both.length).toBeGreaterThan(8)
    for (const [number, words] of both) {
      expect(onSheet.get(number)).toContain(words.slice(number.length).trim())
    }
  }
})

test('what to measure next goes by those numbers too', async () => {
  const outcome = outcomeOf('l-shape')
  if (outcome.kind !== 'plan') throw new Error(outcome.kind)
  const say = message('measure-this', { what: 'it', settles: 2 })
  const measureNext = [
    { input: 'walls.a.length', settles: 2, say },
    { input: 'units.tall-1.legs.min', settles: 1, say },
  ]
  const next = await show(<MeasureNext plan={{ ...outcome.plan, measureNext }} />)
  const numbers = [...next.element.querySelectorAll('li .field-number')].map((at) => plain(at.textContent))
  await next.close()
  expect(numbers).toEqual(measureNext.map(({ input }) => fieldAt(PAGES, input)?.number))
})

describe('laying out', () => {
  const table = (rows: number, foot = 0) => ({ head: 10, rows: Array.from({ length: rows }, () => 8), foot })
  const whole = (head: number) => ({ head, rows: [], foot: 0 })

  test('a table goes on over the page with its head again, and every row is somewhere once', () => {
    const pages = pagesOf([whole(60), table(10, 5)], 100)
    expect(pages).toEqual([
      [
        { block: 0, from: 0, to: 0 },
        { block: 1, from: 0, to: 3 },
      ],
      [{ block: 1, from: 3, to: 10 }],
    ])
  })

  test('a table is not begun for one row, and what stays whole is not cut', () => {
    expect(pagesOf([whole(75), table(4)], 100)[1]).toEqual([{ block: 1, from: 0, to: 4 }])
    expect(pagesOf([whole(60), whole(60)], 100).length).toBe(2)
  })

  test('what is larger than any page still comes to an end', () => {
    expect(pagesOf([whole(300), table(1), { head: 10, rows: [200, 200], foot: 0 }], 100).length).toBe(4)
  })
})
