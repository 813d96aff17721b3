/** Ten first questions on one screen: tapped or typed, kept as one edit each, answered at once. */
import { act } from 'react'
import { expect, test } from 'vitest'
import { thingAt } from '../../src/core/form/things'
import { emptySurvey } from '../../src/ui/survey/empty-survey'
import { SurveyPlace } from '../../src/ui/survey/SurveyPlace'
import { type Shown, show } from '../support/render'

const opened = () => show(<SurveyPlace demos={[]} />, { kitchen: emptySurvey, page: 'first' })
const part = ({ element }: Shown, question: string): HTMLElement => {
  const found = element.querySelector<HTMLElement>(`[data-question="${question}"]`)
  if (found === null) throw new Error(`no question ${question}`)
  return found
}
const lines = ({ element }: Shown, kind: string): readonly string[] =>
  [...element.querySelectorAll<HTMLElement>(`[data-kind="${kind}"] [data-line]`)].map(
    (line) => line.dataset['line'] ?? '',
  )

async function type(shown: Shown, question: string, text: string): Promise<void> {
  const field = part(shown, question).querySelector('input') as HTMLInputElement
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
  await act(async () => field.focus())
  await act(async () => {
    set?.call(field, text)
    field.dispatchEvent(new Event('input', { bubbles: true }))
  })
  await act(async () => field.blur())
  await shown.settle()
}

async function tap(shown: Shown, question: string, words: string): Promise<void> {
  const button = [...part(shown, question).querySelectorAll('button')].find((b) => b.textContent === words)
  await act(async () => button?.click())
  await shown.settle()
}

test('every question can be left open, and the page is the first of the row', async () => {
  const shown = await opened()
  expect(shown.element.querySelectorAll('.first-question').length).toBe(10)
  for (const question of shown.element.querySelectorAll('[data-question]')) {
    expect(question.textContent).toContain('I don’t know yet')
  }
  const row = shown.element.querySelectorAll('.pages a')
  expect([...row].at(0)?.textContent).toBe('First answers')
  expect([...row].at(0)?.getAttribute('aria-current')).toBe('page')
  await shown.close()
})

test('a width and a line of widths are two edits, and are compared at once', async () => {
  const shown = await opened()
  await type(shown, 'width', '2150')
  await type(shown, 'units', '600 600 1000')
  expect(shown.store.getState().past.length).toBe(2)
  expect(shown.text()).toContain('They are too long by 50 ± 3.5 mm.')
  await type(shown, 'width', '2250')
  expect(lines(shown, 'fits')).toEqual(['first.run.yes'])
  await act(async () => shown.actions.undo())
  await shown.settle()
  expect(lines(shown, 'fits')).toEqual(['first.run.no'])
  expect((part(shown, 'width').querySelector('input') as HTMLInputElement).value).toBe('2150')
  await shown.close()
})

test('tapping gas books an engineer; not known takes it back and asks', async () => {
  const shown = await opened()
  await tap(shown, 'gas', 'Yes')
  expect(thingAt(shown.store.getState().kitchen, 'survey.gas')).toBe(true)
  expect(lines(shown, 'book')).toEqual(['first.book.gas'])
  await tap(shown, 'gas', 'I don’t know yet')
  expect(thingAt(shown.store.getState().kitchen, 'survey.gas')).toBeUndefined()
  expect(lines(shown, 'book')).toEqual([])
  expect(lines(shown, 'measure')).toContain('first.measure.gas')
  await shown.close()
})

test('what is no width is told beside its line, and nothing is kept', async () => {
  const shown = await opened()
  await type(shown, 'units', '600 about')
  expect(part(shown, 'units').querySelector('.wrong')?.textContent).toContain('is no width yet')
  expect(shown.store.getState().past.length).toBe(0)
  await shown.close()
})

test('a line opens to the facts it rests on and what it stands on', async () => {
  const shown = await opened()
  await type(shown, 'year', '1965')
  await tap(shown, 'region', 'United Kingdom')
  const line = shown.element.querySelector('[data-line="first.book.asbestos"]')
  expect(line?.textContent).toContain('Rests on: the year the house was built')
  expect(line?.textContent).toContain('HSE asbestos guidance')
  await shown.close()
})
