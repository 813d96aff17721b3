import { act } from 'react'
import { expect, test } from 'vitest'
import { unknown } from '../../../src/core/figure'
import { lieOf } from '../../../src/core/levelling/lie'
import { heightsNow } from '../../../src/core/levelling/trial-heights'
import type { Plan } from '../../../src/core/plan/types'
import { indexOf } from '../../../src/state/store'
import { useApp } from '../../../src/ui/app-context'
import { StepSlip } from '../../../src/ui/rehearse/StepSlip'
import { useStepKeys } from '../../../src/ui/rehearse/step-keys'
import { LevelTrial } from '../../../src/ui/rehearse/trial/LevelTrial'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

const lShape = planOf('l-shape')

async function trying(id: string, plan: Plan = lShape) {
  const operation = plan.operations.find((o) => o.id === id)
  const unit = plan.units.find((u) => operation?.on.includes(u.unit))
  if (operation === undefined || unit === undefined) throw new Error(id)
  const shown = await show(<LevelTrial operation={operation} unit={unit} />, { plan, at: id })
  await shown.click('Try it: read the level and turn')
  /** The slider, in tenths of a millimetre over the level, as a thumb or a key sets it. */
  const set = (mm: number) =>
    act(async () => {
      const slider = shown.element.querySelector<HTMLInputElement>('input[type=range]')
      if (slider === null) throw new Error('no slider')
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(slider, String(mm))
      slider.dispatchEvent(new Event('input', { bubbles: true }))
    })
  const bubble = () => {
    const g = shown.element.querySelector<SVGGElement>('.bubble')
    return Number(/translateX\((.+)px\)/.exec(g?.getAttribute('style') ?? '')?.[1])
  }
  const lie = () => {
    const { tried } = shown.store.getState()
    return tried === null ? null : lieOf(unit, heightsNow(tried, unit))
  }
  return {
    ...shown,
    set,
    bubble,
    lie,
    status: () => shown.element.querySelector('[role=status]')?.textContent,
  }
}

test('two hangers: a reading is set, the bubble goes to the high end, the turns that are said bring it true', async () => {
  const shown = await trying('level:wall-3')
  // A level of 400 mm; hangers at 40 and 560. 1 mm in 400 over 520 is 1.3 mm: 1.04 turns of 1.25 mm.
  await shown.set(1)
  expect(shown.status()).toContain(
    'Right end high by 1 mm in 400 mm. Bubble 2.5 mm from the middle, to the right.',
  )
  expect(shown.bubble()).toBeCloseTo(25, 6)
  expect(shown.status()).toContain('Out of true: 1.5 mm out in 600 mm, and at most 1 mm is asked.')
  expect(shown.text()).toContain('Left hanger, height screw (the lower one). Turn it 1 turn up, clockwise.')
  expect(shown.text()).toContain('Right hanger, height screw (the lower one). Leave it.')
  await shown.click('Left hanger, height screw (the lower one): up 1')
  expect(shown.bubble()).toBeCloseTo(0.96, 2)
  expect(shown.status()).toContain('True enough this way: 0.1 mm out in 600 mm')
  expect(shown.status()).toContain('The level is done. Now answer:How high is the underside of wall unit 3')
  await shown.click('Left hanger, height screw (the lower one): up 1')
  expect(shown.bubble()).toBeLessThan(-20)
  expect(shown.store.getState().log.entries).toEqual([])
  await shown.close()
})

test('a screw turned as far as it goes turns no further, and says so', async () => {
  const shown = await trying('level:wall-3')
  for (let i = 0; i < 6; i++) await shown.click(/^Left hanger.*: up 1(,|$)/)
  expect(shown.store.getState().tried?.turns).toEqual({ left: 4 })
  expect(shown.button(/^Left hanger.*: up 1, no travel left for it$/).getAttribute('aria-disabled')).toBe(
    'true',
  )
  await shown.close()
})

test('four legs: one way, then the other, then the leg that bears nothing, then what else is asked', async () => {
  const shown = await trying('level:base-2')
  await shown.set(0)
  await shown.click('Back to front')
  await shown.set(1.2)
  expect(shown.status()).toContain('Front end high by 1.2 mm in 400 mm.')
  await shown.click('Left to right')
  expect(shown.status()).toContain('Now read it back to front.')
  await shown.click('Back to front')
  // Over 440 mm from foot to foot 1.32 mm: 0.88 turns of 1.5 mm, said as ¾ or 1.
  expect(shown.text()).toContain('Leg back left. Turn it 1 turn up.')
  await shown.click('Leg back left: up 1')
  expect(shown.text()).toContain('It bears nothing: it turns freely.')
  await shown.click('Leg back right: up 1')
  expect(shown.status()).toContain('True enough this way: 0.2 mm out in 560 mm')
  expect(shown.status()).toContain('The level is done.')
  expect(shown.status()).not.toContain('left to right')
  await shown.click('Leg front right: down ¼')
  expect(shown.lie()?.hanging).toHaveLength(1)
  expect(shown.status()).toContain('One leg bears nothing')
  await shown.click(/wind it out until it grips$/)
  expect(shown.lie()?.hanging).toEqual([])
  await shown.close()
})

test('a level step offers it once, and another step does not', async () => {
  await import('../../../src/ui/rehearse/trial/LevelTrial')
  for (const [id, times] of [
    ['level:wall-3', 1],
    ['hang:wall-3', 0],
  ] as const) {
    const index = lShape.operations.findIndex((o) => o.id === id)
    const operation = lShape.operations[index]
    if (operation === undefined) throw new Error(id)
    const shown = await show(
      <StepSlip plan={lShape} operation={operation} index={index} ticked={new Set()} onTick={() => {}} />,
      { plan: lShape, at: id },
    )
    await shown.settle()
    expect(shown.element.querySelectorAll('.trial'), id).toHaveLength(times)
    await shown.close()
  }
})

test('a tall is read upright: its top leans away from the high side', async () => {
  const shown = await trying('level:tall-1')
  await shown.set(2)
  expect(shown.status()).toContain('Its top leans to the left by 2 mm in 1\u202f000 mm: the right is high.')
  expect(shown.bubble()).toBeCloseTo(20, 6)
  expect(shown.text()).toContain(
    'Hold a level of 1 000 mm upright against a side. Drawn here is its middle, with the vial that lies across it.',
  )
  const wood = () => shown.element.querySelector('.vial .wood')
  expect(Number(wood()?.getAttribute('width'))).toBeLessThan(320)
  await shown.close()
  const lying = await trying('level:base-2')
  expect(lying.text()).not.toContain('lies across it')
  expect(lying.element.querySelector('.vial .wood')?.getAttribute('width')).toBe('320')
  await lying.close()
})

test('of a leg that bears nothing only one thing is said: to wind it out until it grips', async () => {
  const shown = await trying('level:tall-1')
  await shown.set(2)
  const rows = () =>
    [...shown.element.querySelectorAll('.turn-rows > li')].map((li) => ({
      say: li.querySelector('p')?.textContent ?? '',
      canGrip: [...li.querySelectorAll('button')].some((b) => b.textContent?.startsWith('Wind it out')),
    }))
  const told = rows().findIndex(({ say }) => / up/.test(say))
  expect(rows().filter(({ say }) => / up/.test(say))).toHaveLength(2)
  expect(rows().some(({ canGrip }) => canGrip)).toBe(false)
  const name = /^(.+?)\./.exec(rows()[told]?.say ?? '')?.[1]
  await shown.click(`${name}: up 1`)
  const free = rows().filter(({ canGrip }) => canGrip)
  expect(free).toHaveLength(1)
  expect(free[0]?.say).toMatch(/^Leg .+\. It bears nothing: it turns freely\. Wind it out until it grips\.$/)
  for (const { say, canGrip } of rows()) expect(/bears nothing/.test(say)).toBe(canGrip)
  await shown.click(/wind it out until it grips$/)
  expect(shown.lie()?.hanging).toEqual([])
  expect(shown.text()).not.toContain('bears nothing')
  await shown.close()
})

test('arrow keys in the level that is tried turn no page; elsewhere they do', async () => {
  const shown = await trying('level:base-2')
  const keys = await show(<Keys />, { plan: lShape, at: 'level:base-2' })
  const press = (on: Element | null) =>
    act(
      async () => void on?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true })),
    )
  await press(shown.button(/^Leg back left: up 1/))
  expect(keys.store.getState().at).toBe('level:base-2')
  await press(document.body)
  const index = lShape.operations.findIndex((o) => o.id === 'level:base-2')
  expect(keys.store.getState().at).toBe(lShape.operations[index + 1]?.id)
  await keys.close()
  await shown.close()
})

function Keys() {
  useStepKeys(true, useApp(indexOf))
  return null
}

test('another reading is another, and the same after the same', async () => {
  const shown = await trying('level:base-2')
  const first = shown.status()
  await shown.click('Give me one')
  expect(shown.status()).not.toBe(first)
  await shown.click('Try it: read the level and turn')
  expect(shown.store.getState().tried).toBeNull()
  await shown.click('Try it: read the level and turn')
  expect(shown.status()).toBe(first)
  await shown.close()
})

test('where nobody has said what a turn does, no turns are said: one is tried and read', async () => {
  const units = lShape.units.map((u) => ({
    ...u,
    adjusters: u.adjusters.map((a) => ({ ...a, perTurn: unknown('mm/turn', [`units.${u.unit}.hanging`]) })),
  }))
  const shown = await trying('level:wall-3', { ...lShape, units })
  await shown.set(1)
  expect(shown.text()).toContain('It has to go up. Try one turn and read.')
  expect(shown.text()).not.toMatch(/Turn it [\d¼½¾]/)
  expect(shown.text()).toContain('these screws are made up')
  await shown.click(/^Left hanger.*: up ¼$/)
  expect(shown.text()).toMatch(
    /Before your turns: Right end high by 1 mm in 400 mm\. Now: Right end high by 0\.\d mm/,
  )
  await shown.close()
})

test('where the places of the adjusters are not known it says so', async () => {
  const units = lShape.units.map((u) => ({
    ...u,
    adjusters: u.adjusters.map((a) => ({ ...a, x: unknown('mm', [`units.${u.unit}.hanging.hangerIn`]) })),
  }))
  const shown = await trying('level:wall-3', { ...lShape, units })
  expect(shown.text()).toContain('Where its hangers sit is not known yet.')
  await shown.close()
})
