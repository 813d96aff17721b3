import { act } from 'react'
import { beforeAll, expect, test } from 'vitest'
import { StepSlip } from '../../../src/ui/rehearse/StepSlip'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('l-shape')

beforeAll(async () => {
  await import('../../../src/ui/rehearse/Said')
})

const slipOf = async (id: string) => {
  const index = plan.operations.findIndex((o) => o.id === id)
  const operation = plan.operations[index]
  if (operation === undefined) throw new Error(`no operation ${id}`)
  const slip = (
    <StepSlip plan={plan} operation={operation} index={index} ticked={new Set()} onTick={() => {}} />
  )
  const shown = await show(slip, { plan, at: id })
  await shown.settle()
  return shown
}

test('a word of the trade in a sentence opens what it means; Escape closes it and gives the focus back', async () => {
  const shown = await slipOf('lock:wall-1')
  const word = shown.button(/^draw-in screws$/)
  expect(word.closest('.does li')?.textContent).toContain('Turn the draw-in screws until it bears')
  await act(async () => word.click())
  expect(word.getAttribute('aria-expanded')).toBe('true')
  expect(shown.element.querySelector('.meaning')?.textContent).toContain('pulls the unit back to the wall')
  await shown.click('Close')
  expect(shown.element.querySelector('.meaning')).toBeNull()
  expect(document.activeElement).toBe(word)
  await act(async () => word.click())
  word.blur()
  await act(async () => window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' })))
  expect(shown.element.querySelector('.meaning')).toBeNull()
  expect(document.activeElement).toBe(word)
  await shown.close()
})

test('each word is marked once in a step, and all of them are listed at its foot', async () => {
  const shown = await slipOf('second-fix:wall-1')
  const marked = [...shown.element.querySelectorAll('.trade-word')].map((w) => w.textContent)
  expect(marked.join(' ')).toMatch(/\bpack/i)
  expect(new Set(marked).size).toBe(marked.length)
  await shown.click(/^Words used here/)
  const listed = [...shown.element.querySelectorAll('.words-used dt')].map((w) => w.textContent)
  expect(listed).toEqual(
    expect.arrayContaining(['Depth stop', 'Packing', 'Pilot', 'Rail', 'Secured', 'Stud']),
  )
  expect(listed.length).toBeGreaterThanOrEqual(marked.length)
  await shown.close()
})

test('the plug of a sink is none of a screw, and a scribed line is not the level line', async () => {
  const linked = async (id: string) => {
    const shown = await slipOf(id)
    const marked = [...shown.element.querySelectorAll('.trade-word')].map((w) => w.textContent)
    const text = shown.text()
    await shown.close()
    return { marked, text }
  }
  const sink = await linked('connect:sink-1')
  expect(sink.text).toContain('pull the plug')
  expect(sink.marked).not.toContain('plug')
  const filler = await linked('panel:filler-left')
  expect(filler.marked).toContain('Scribe')
  expect(filler.marked).not.toContain('the line')
  expect((await linked('strike:line')).marked).toContain('level line')
})

test('the words of a step stand as they were, whole and in order', async () => {
  for (const operation of plan.operations.slice(0, 20)) {
    const shown = await slipOf(operation.id)
    const lines = [...shown.element.querySelectorAll('.does li')].map((l) => l.textContent)
    expect(lines.join(' '), operation.id).not.toMatch(/ {2}[^ ]|undefined|\[object/)
    expect(lines).toHaveLength(operation.does.length)
    await shown.close()
  }
})
