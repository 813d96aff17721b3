import { act } from 'react'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Rehearse } from '../../../src/ui/rehearse/Rehearse'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('l-shape')
/** Here two things stand before one step. */
const galley = planOf('galley')
const shownAt = (at: string, of = plan) => show(<Rehearse stage={null} isShown={false} />, { plan: of, at })

/** As when the page has had time: the sentences of findings have been fetched. */
beforeAll(async () => void (await import('../../../src/ui/rehearse/StepFindings')))

const broughtIn = vi.fn()
beforeEach(() => {
  broughtIn.mockClear()
  HTMLElement.prototype.scrollIntoView = function (this: HTMLElement) {
    broughtIn(this)
  }
})
afterEach(() => {
  document.body.innerHTML = ''
})

test('what can hurt is said before anything is to be done, and leads to all there is to mind', async () => {
  for (const id of ['stand-up:tall-1', 'hang:wall-1', 'drill-rail:rail-1']) {
    const shown = await shownAt(id)
    const line = shown.element.querySelector('.hurt-line')
    const does = shown.element.querySelector('.does')
    if (line === null || does === null) throw new Error(id)
    expect(line.querySelector('strong')?.textContent).not.toBe('')
    expect(line.compareDocumentPosition(does) & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy()
    await shown.click(/to mind\.$/)
    const all = shown.element.querySelector('.cautions')
    expect(broughtIn).toHaveBeenLastCalledWith(all)
    expect(document.activeElement).toBe(all)
    await shown.close()
  }
})

test('a warning goes before what is to be worn', async () => {
  const shown = await shownAt('drill-rail:rail-1')
  expect(shown.element.querySelector('.hurt-line')?.textContent).toMatch(/^A cable or pipe may lie/)
  await shown.close()
})

test('a hold point names what is to be settled, and each leads to its words', async () => {
  const shown = await shownAt('stand-up:tall-1', galley)
  const links = [...shown.element.querySelectorAll('.to-settle button')]
  const { stops } = galley.operations.find((o) => o.id === 'stand-up:tall-1') ?? { stops: [] }
  expect(stops.length).toBeGreaterThan(1)
  expect(links).toHaveLength(stops.length)
  await shown.click('Trace before the first hole')
  expect(shown.store.getState().finding).toEqual({ id: 'trace-first:c', isLookedAt: false })
  const item = shown.element.querySelector('[data-finding="trace-first:c"]')
  expect(item?.getAttribute('aria-current')).toBe('true')
  expect(broughtIn).toHaveBeenLastCalledWith(item)
  expect(document.activeElement).toBe(item)
  await shown.close()
})

test('at a hold point Next is held, says why, leads there, and can still be rehearsed', async () => {
  const shown = await shownAt('stand-up:tall-1', galley)
  expect(shown.element.querySelector('.steps .button.main')).toBeNull()
  expect(shown.element.querySelector('.steps .held')?.textContent).toBe('Held here: 2 things to settle first')
  await shown.click('2 things to settle first')
  const [first] = shown.element.querySelectorAll('.to-settle button')
  const open = shown.store.getState().finding
  expect(galley.findings.find((f) => f.id === open?.id)?.dangerous).toBe(true)
  expect(first).toBeDefined()
  await shown.click(/^Rehearse on: walk .* to its place$/)
  expect(shown.store.getState()).toMatchObject({ at: 'place:tall-1', finding: null })
  expect(shown.element.querySelector('.steps .button.main')?.textContent).toMatch(/^Next: /)
  await shown.close()
})

test('where only checks hold it, ticking them lets it go', async () => {
  const shown = await shownAt('prove:room')
  const checks = () => [...shown.element.querySelectorAll<HTMLInputElement>('.checks input')]
  expect(checks().length).toBeGreaterThan(0)
  await shown.click(/checks? to answer first$/)
  expect(document.activeElement).toBe(checks()[0])
  await act(async () => {
    for (const box of checks()) box.click()
  })
  expect(shown.element.querySelector('.steps .held')).toBeNull()
  expect(shown.element.querySelector('.steps .button.main')?.textContent).toMatch(/^Next: /)
  await shown.close()
})

test('an ask begins with what to do', async () => {
  const shown = await shownAt('stand-up:tall-1')
  for (const item of shown.element.querySelectorAll('.step-findings [data-weight="ask"]')) {
    const [first] = [...item.querySelectorAll('p')].filter((p) => !p.classList.contains('hurts'))
    expect(first?.querySelector('strong')?.textContent, item.getAttribute('data-finding') ?? '').not.toBe('')
  }
  await shown.close()
})

test('a finding is shown in the picture when asked, and stepping on puts it away', async () => {
  const shown = await shownAt('place:base-3')
  await shown.click(/Show it in the picture: No stud behind a base bracket/)
  expect(shown.store.getState().finding).toEqual({ id: 'bracket-needs-timber:base-3', isLookedAt: true })
  await act(async () => shown.actions.step(1))
  expect(shown.store.getState().finding).toBeNull()
  await shown.close()
})

test('a finding of elsewhere is told beside the step it is looked at from', async () => {
  const shown = await shownAt('place:base-3')
  const other = 'socket-behind:dishwasher-socket+dishwasher-space'
  expect(shown.element.querySelector(`[data-finding="${other}"]`)).toBeNull()
  await act(async () => shown.actions.openFinding(other))
  expect(shown.element.querySelector(`[data-finding="${other}"] .letter`)?.textContent).toBe('C')
  await shown.close()
})

test('no step says Next in the words of the step itself', () => {
  const titles = plan.operations.map((o) => JSON.stringify(o.title))
  expect(titles.filter((title, i) => title === titles[i + 1])).toEqual([])
})
