import { act } from 'react'
import { beforeAll, expect, test } from 'vitest'
import { indexOf } from '../../../src/state/store'
import { useApp } from '../../../src/ui/app-context'
import { forcedBy, placeAt, stageSteps, withMoved } from '../../../src/ui/rehearse/order/order-move'
import { StepSlip } from '../../../src/ui/rehearse/StepSlip'
import { planOf, sceneFile } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('one-wall')

beforeAll(async () => {
  await Promise.all([
    import('../../../src/ui/rehearse/WhyAnswer'),
    import('../../../src/ui/rehearse/order/Reorder'),
  ])
})

/** The slip at the hook, of whatever plan there is now. */
function Here() {
  const made = useApp((s) => s.plan)
  const index = useApp(indexOf)
  const operation = made?.operations[index]
  if (made === null || operation === undefined) return null
  return <StepSlip plan={made} operation={operation} index={index} ticked={new Set()} onTick={() => {}} />
}

const slipAt = async (at: string) => {
  const shown = await show(<Here />, { plan, kitchen: sceneFile('one-wall'), at })
  await shown.settle()
  return shown
}
const rest = () => act(async () => new Promise((resolve) => setTimeout(resolve, 300)))
const listed = (element: HTMLElement) =>
  [...element.querySelectorAll('.order-list li')].map((li) => li.getAttribute('data-step'))

test('every step says in one sentence why it comes now, and leads to what it waited for', async () => {
  const shown = await slipAt('level:wall-1')
  expect(shown.element.querySelector('.because-now')?.textContent).toMatch(/^Why now: .+\. After step \d+$/)
  await shown.click(/^After step/)
  expect(shown.store.getState().at).toBe('hang:wall-1')
  await shown.close()
})

test('the chain goes back to the beginning, each link with its picture and leading to its step', async () => {
  const shown = await slipAt('lock:wall-1')
  await shown.click('How it comes to this')
  const links = () => [...shown.element.querySelectorAll('.chain li')]
  expect(links().length).toBeGreaterThan(3)
  expect(links().every((li) => li.querySelector('svg.small-picture') !== null)).toBe(true)
  for (const more = /more, to the beginning$/; more.test(shown.text()); ) await shown.click(more)
  expect(links()[0]?.textContent).toContain('Level wall unit 1')
  const last = links().at(-1)?.querySelector('button')
  await act(async () => last?.click())
  const at = shown.store.getState().at
  expect(plan.reasons.some((r) => r.hard && r.after === at)).toBe(false)
  await shown.close()
})

test('what nothing holds is really planned first, and its cost told', async () => {
  const free = plan.operations.find(
    (o, i) =>
      i > 3 && !plan.reasons.some((r) => r.hard && r.after === o.id) && o.id !== plan.operations[0]?.id,
  )
  if (free === undefined) throw new Error('every step has to wait for another')
  const shown = await slipAt(free.id)
  await shown.click('Could this come first?')
  await shown.settle()
  expect(shown.text()).toMatch(
    /Yes: nothing that has to be done holds it back\..*it (costs|saves) (about \d+ minutes?|nothing)/,
  )
  await shown.close()
})

test('what cannot be is refused at once, by the reason that forbids it', async () => {
  const shown = await slipAt('level:wall-1')
  await shown.click('Change the order')
  await shown.click(/^Earlier$/)
  expect(shown.text()).toContain('It cannot be done so.')
  expect(shown.text()).toContain('A must.')
  expect(() => shown.button('Keep it so')).toThrow()
  await shown.click('Leave it as it was')
  expect(listed(shown.element)).toEqual(
    stageSteps(plan, plan.operations.find((o) => o.id === 'level:wall-1') as never).map((o) => o.id),
  )
  await shown.close()
})

test('another order by buttons: tried, told, kept as one edit, planned, and taken back as one', async () => {
  const shown = await slipAt('fix-plates:wall-2')
  const before = listed
  await shown.click('Change the order')
  expect(before(shown.element).indexOf('fix-plates:wall-2')).toBe(
    before(shown.element).indexOf('fix-plates:wall-3') + 1,
  )
  await shown.click(/^Earlier$/)
  await rest()
  await shown.settle()
  expect(shown.text()).not.toMatch(/\bfine\b/)
  expect(shown.text()).toMatch(/(Nothing speaks against it|It can be done); it (costs|saves)/)
  expect(shown.store.getState().past).toHaveLength(0)
  await shown.click('Keep it so')
  await shown.settle()
  const made = shown.store.getState()
  expect(made.past).toHaveLength(1)
  const ids = made.plan?.operations.map((o) => o.id) ?? []
  expect(ids.indexOf('fix-plates:wall-2')).toBeLessThan(ids.indexOf('fix-plates:wall-3'))
  expect(shown.text()).toContain('What you asked for here')
  await shown.click('Take it back')
  await shown.settle()
  expect(shown.store.getState().kitchen).toEqual(sceneFile('one-wall'))
  expect(shown.store.getState().plan?.operations.map((o) => o.id)).toEqual(plan.operations.map((o) => o.id))
  await shown.close()
})

test('by hand: the grip is dragged over other steps, and the same is asked', async () => {
  const shown = await slipAt('fix-plates:wall-3')
  await shown.click('Change the order')
  const items = [...shown.element.querySelectorAll<HTMLElement>('.order-list li')]
  items.forEach((li, i) => {
    li.getBoundingClientRect = () => ({ top: i * 50, bottom: i * 50 + 50 }) as DOMRect
  })
  const grip = items[3]?.querySelector('.grip')
  const fire = (type: string, clientY: number) =>
    act(async () => {
      const event = new MouseEvent(type, { bubbles: true, clientY })
      Object.assign(event, { pointerId: 1 })
      grip?.dispatchEvent(event)
    })
  const ids = listed(shown.element)
  await fire('pointerdown', 175)
  await fire('pointermove', 60)
  await fire('pointerup', 60)
  expect(listed(shown.element).indexOf(ids[3] ?? '')).toBe(1)
  expect(shown.element.querySelector('.order-verdict')?.textContent).toContain(' before ')
  await shown.close()
})

test('where something is put, and what that asks', () => {
  expect(withMoved(['a', 'b', 'c', 'd'], 3, 1)).toEqual(['a', 'd', 'b', 'c'])
  expect(withMoved(['a', 'b', 'c', 'd'], 0, 2)).toEqual(['b', 'c', 'a', 'd'])
  expect(placeAt(60, [25, 75, 125])).toBe(1)
  const steps = plan.operations.slice(0, 4)
  const ids = steps.map((o) => o.id)
  expect(forcedBy(steps, 3, 1)).toEqual({ before: ids[3], after: ids[1] })
  expect(forcedBy(steps, 0, 2)).toEqual({ before: ids[2], after: ids[0] })
  expect(forcedBy(steps, 2, 2)).toBeNull()
})
