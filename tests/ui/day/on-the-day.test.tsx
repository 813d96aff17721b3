import { act } from 'react'
import { expect, test } from 'vitest'
import { workThrough } from '../../../src/core/plan/entry'
import { withWords } from '../../../src/core/words/with-words'
import type { KeptLog } from '../../../src/state/store'
import { OnTheDay } from '../../../src/ui/day/OnTheDay'
import { planOf, sceneFile } from '../../support/kitchens'
import { show } from '../../support/render'

const kitchen = sceneFile('l-shape')

/** Mill Lane on the day, everything before one operation done. */
async function at(operation: string) {
  const ids = planOf('l-shape').operations.map((o) => o.id)
  const done = ids.slice(0, ids.indexOf(operation))
  const log: KeptLog = {
    format: 'dryrun-daylog',
    version: 1,
    entries: done.map((id, i) => ({ id: `e${i + 1}`, kind: 'done', operation: id })),
  }
  const outcome = withWords(workThrough(kitchen, log.entries.length === 0 ? null : log))
  if (outcome.kind !== 'plan') throw new Error(outcome.kind)
  return show(<OnTheDay />, { kitchen, log, plan: outcome.plan })
}

test('the first operation not done is in hand; Done waits for its checks', async () => {
  const shown = await at('check-delivery:room')
  expect(shown.element.querySelector('h1')?.textContent).toBe('Check the delivery')
  await shown.click('2 checks to answer first')
  expect(shown.store.getState().log.entries).toEqual([])
  await act(async () => {
    for (const box of shown.element.querySelectorAll<HTMLInputElement>('.checks input')) box.click()
  })
  await shown.click('Done')
  expect(shown.store.getState().log.entries).toMatchObject([
    { kind: 'done', operation: 'check-delivery:room', at: '2026-11-25T10:20:00.000Z' },
  ])
  expect(shown.element.querySelector('h1')?.textContent).not.toBe('Check the delivery')
  await shown.close()
})

test('the button that counts the checks leads to the first of them that is open', async () => {
  const shown = await at('check-delivery:room')
  const boxes = [...shown.element.querySelectorAll<HTMLInputElement>('.checks input')]
  const broughtIn: unknown[] = []
  HTMLElement.prototype.scrollIntoView = function (this: HTMLElement) {
    broughtIn.push(this)
  }
  await shown.click('2 checks to answer first')
  expect(broughtIn).toEqual([boxes[0]])
  expect(document.activeElement).toBe(boxes[0])
  await act(async () => boxes[0]?.click())
  await shown.click('1 check to answer first')
  expect(broughtIn.at(-1)).toBe(boxes[1])
  expect(document.activeElement).toBe(boxes[1])
  await shown.close()
})

test('a level and a packer become turns of a named screw', async () => {
  const shown = await at('level:wall-3')
  expect(shown.element.querySelector('.told')).toBeNull()
  await shown.click('Right end low')
  // The right end is low, so the bubble is seen on the left.
  expect(shown.element.querySelector('.vial svg')?.getAttribute('aria-label')).toContain('to the left')
  // 1 mm in 600, over the way between the hangers, at 1.25 mm a turn.
  expect(shown.element.querySelector('.told')?.textContent).toBe('¾ turn')
  expect(shown.text()).toContain('Right hanger, height screw (the lower one), up')
  await shown.type('Packer, mm', '2')
  expect(shown.element.querySelector('.told')?.textContent).toBe('1½ turns')
  await shown.click('Write this reading down')
  expect(shown.store.getState().log.entries.at(-1)).toMatchObject({
    kind: 'level',
    unit: 'wall-3',
    axis: 'along',
    low: 'right',
    packer: 2,
    levelLength: 600,
  })
  await shown.close()
})

test('a height set renews the plan and tells what changed by name; calling it wrong takes it back', async () => {
  const shown = await at('level:base-2')
  await shown.type('Top now, from the line', '−134')
  await shown.click('Write down')
  expect(shown.text()).toMatch(/\d+ figures ahead have changed/)
  expect(shown.text()).toMatch(/leg \w+ \w+ of base unit 1: was \d+ mm, is \d+ mm/)
  expect(shown.text()).toContain('last read −134')
  await shown.click(/That entry was wrong: Top of base unit 2/)
  expect(shown.store.getState().log.entries.at(-1)).toMatchObject({ kind: 'correct' })
  expect(shown.text()).toContain('planned −138')
  await shown.close()
})

test('a step done can be looked at again and called wrong; nothing is undone', async () => {
  const shown = await at('level:wall-3')
  const before = shown.store.getState().log.entries.length
  await shown.click(/^Back$/)
  expect(shown.text()).toContain('Done')
  await shown.click('That entry was wrong: not done')
  const { log, plan } = shown.store.getState()
  expect(log.entries).toHaveLength(before + 1)
  expect(plan?.operations.find((o) => o.id === 'hang:wall-3')?.done).toBe(false)
  await shown.close()
})

test('trouble begins with putting it down, and leads back', async () => {
  const shown = await at('level:wall-3')
  await shown.click('Something is wrong')
  expect(shown.element.querySelector('h1')?.textContent).toBe('Put it down or hold it.')
  expect(shown.text()).toContain('A smell of gas')
  await shown.click('Back to the work')
  expect(shown.element.querySelector('h1')?.textContent?.replace('\u00a0', ' ')).toBe('Level wall unit 3')
  await shown.close()
})

test('what one turn does is tried and written down, and then told', async () => {
  const shown = await at('level:wall-3')
  await shown.click('What one turn does')
  await shown.type('One turn moves, mm', '2')
  await shown.click('Clockwise lowers')
  await shown.click(/^Write it down$/)
  expect(shown.store.getState().log.entries.at(-1)).toMatchObject({
    kind: 'tried',
    part: 'height-screw',
    perTurn: 2,
    clockwise: 'lowers',
  })
  await shown.close()
})
