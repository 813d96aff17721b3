/** The delivery, ticked off box by box. */
import { act } from 'react'
import { expect, test } from 'vitest'
import { thingAt } from '../../../src/core/form/things'
import { DeliveryPage } from '../../../src/ui/survey/delivery/DeliveryPage'
import { directWorker, silentWorker } from '../../support/direct-worker'
import { planOf, sceneFile } from '../../support/kitchens'
import { type Shown, show } from '../../support/render'

interface Listed {
  readonly id: string
  readonly kind?: string
}
const file = sceneFile('l-shape') as Readonly<
  Record<'units' | 'appliances' | 'finishing' | 'worktops' | 'rails' | 'fixings', readonly Listed[]>
>
const opened = (start = silentWorker) =>
  show(<DeliveryPage />, { kitchen: file, plan: planOf('l-shape'), place: 'survey' }, start)

const row = ({ element }: Shown, path: string): HTMLElement => {
  const found = element.querySelector<HTMLElement>(`[data-row="${path}"]`)
  if (found === null) throw new Error(`no row for ${path}`)
  return found
}
const press = (shown: Shown, path: string, words: string) =>
  act(async () =>
    [...row(shown, path).querySelectorAll('button')].find((b) => b.textContent === words)?.click(),
  )
const kept = ({ store }: Shown, path: string) => thingAt(store.getState().kitchen, path)
const seen = ({ element }: Shown) => element.querySelector('.seen')?.textContent ?? ''

test('each thing that was bought is one row, with what to hold it against; a space is none', async () => {
  const shown = await opened()
  const bought = [
    ...file.units.filter(({ kind }) => kind !== 'appliance-space').map(({ id }) => `units.${id}`),
    ...(['appliances', 'finishing', 'worktops', 'rails', 'fixings'] as const).flatMap((list) =>
      file[list].map(({ id }) => `${list}.${id}`),
    ),
  ]
  const rows = [...shown.element.querySelectorAll<HTMLElement>('[data-row]')].map((e) => e.dataset['row'])
  expect([...rows].sort()).toEqual([...bought].sort())
  const tall = row(shown, 'units.tall-1').textContent ?? ''
  expect(tall).toContain('600 × 1970 × 560 mm (wide, high, deep)')
  await shown.close()
})

test('an answer is in the kitchen file and in the count, and can be taken back', async () => {
  const shown = await opened()
  const units = file.units.filter(({ kind }) => kind !== 'appliance-space').length
  expect(seen(shown)).toMatch(new RegExp(`^${units} of \\d+ seen, \\d+ still to look for`))
  await press(shown, 'units.corner-1', 'Not here')
  expect(kept(shown, 'units.corner-1.delivered')).toBe(false)
  expect(seen(shown)).toContain(`${units - 1} of `)
  expect(seen(shown)).toContain('1 not here')
  await press(shown, 'worktops.worktop-a', 'Here')
  expect(kept(shown, 'worktops.worktop-a.delivered')).toBe(true)
  await press(shown, 'worktops.worktop-a', 'Don’t know yet')
  expect(kept(shown, 'worktops.worktop-a.delivered')).toBeUndefined()
  await act(async () => shown.actions.undo())
  expect(kept(shown, 'worktops.worktop-a.delivered')).toBe(true)
  await shown.close()
})

test('another figure is typed in the row, and is the figure of the survey', async () => {
  const shown = await opened()
  await press(shown, 'units.base-1', 'It measures otherwise: Base unit 1')
  const input = row(shown, 'units.base-1').querySelector<HTMLInputElement>('[data-fact="units.base-1.width"]')
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
  await act(async () => {
    set?.call(input, '598')
    input?.dispatchEvent(new Event('input', { bubbles: true }))
  })
  expect(kept(shown, 'units.base-1.width')).toBe(598)
  expect(row(shown, 'units.base-1').querySelector('.size')?.textContent).toContain('598 × ')
  await shown.close()
})

test('what is not here is found by the plan, with what can be done before it is needed', async () => {
  const shown = await opened(directWorker)
  await press(shown, 'units.corner-1', 'Not here')
  await act(async () => new Promise((resolve) => setTimeout(resolve, 20)))
  expect(shown.text()).toMatch(
    /was looked for and has not come.*\d+ steps come before the first that needs it/,
  )
  await shown.close()
})

test('what the plan has no name for is called by what it is and its mark, no word of them twice', async () => {
  const kitchen = {
    format: 'dryrun-kitchen',
    version: 1,
    name: 'Boxes',
    appliances: [{ id: 'dishwasher-1', kind: 'dishwasher' }],
    worktops: [{ id: 'worktop-1' }, { id: 'long' }],
    units: [{ id: 'base-1', kind: 'base' }],
  }
  const shown = await show(<DeliveryPage />, { kitchen, place: 'survey' }, silentWorker)
  const names = [...shown.element.querySelectorAll('[data-row] h4')].map((e) => e.textContent)
  expect(names.sort()).toEqual(['Base unit 1', 'Dishwasher 1', 'Worktop 1', 'Worktop long'])
  await shown.close()
})
