/** All heights on one scale: every demand at its millimetre, and a height moved is a wish. */
import { act } from 'react'
import { describe, expect, test } from 'vitest'
import { listAt } from '../../../src/core/form/things'
import { blocksOf, drawnFrom, wantedOn } from '../../../src/ui/survey/heights/blocks'
import { HeightsPicture } from '../../../src/ui/survey/heights/HeightsPicture'
import { scaleOf } from '../../../src/ui/survey/heights/scale'
import { wishEdits } from '../../../src/ui/survey/heights/wished'
import { directWorker, silentWorker } from '../../support/direct-worker'
import { planOf, sceneFile } from '../../support/kitchens'
import { type Shown, show } from '../../support/render'

const plan = planOf('l-shape')
/** Nothing is worked out again: what the picture does at once. */
const opened = (start = silentWorker) =>
  show(<HeightsPicture />, { kitchen: sceneFile('l-shape'), plan, place: 'survey' }, start)

const handle = ({ element }: Shown, of: string): HTMLElement => {
  const found = element.querySelector<HTMLElement>(`[data-height="${of}"] [role=slider]`)
  if (found === null) throw new Error(`${of} cannot be taken hold of`)
  return found
}
const wishes = ({ store }: Shown) => listAt(store.getState().kitchen, 'wishes.heights')
const edits = ({ store }: Shown): number => store.getState().past.length
const planned = () => act(async () => new Promise((resolve) => setTimeout(resolve, 20)))

function pointer(on: HTMLElement, kind: string, clientY: number): void {
  const event = new MouseEvent(kind, { bubbles: true, clientY, button: 0, buttons: 1 })
  Object.assign(event, { pointerId: 1 })
  on.dispatchEvent(event)
}
const key = (on: HTMLElement, name: string) =>
  act(async () => on.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true })))

describe('on the scale', () => {
  const blocks = blocksOf(plan)
  const scale = scaleOf(wantedOn(blocks, [0], []))

  test('it goes both ways, upwards, the same everywhere but where a piece is left out', () => {
    for (const mm of [-900, -858, -500, -138, 0, 392, 700, 1112, 1393, 1500]) {
      expect(scale.mm(scale.y(mm))).toBeCloseTo(mm, 6)
    }
    expect(scale.y(-858)).toBeGreaterThan(scale.y(-138))
    for (const { bottom, top } of scale.stretches) {
      expect(scale.y(bottom) - scale.y(top)).toBeCloseTo((top - bottom) * scale.perMm, 6)
    }
  })

  test('each demand of the plan on a known height stands at its own millimetre', async () => {
    const shown = await opened()
    const drawn = [...shown.element.querySelectorAll<HTMLElement>('[data-demand]')]
    const rem = (value: string) => Number(value.replace('rem', '')) * 16
    const onScreen = drawn.flatMap((bar) =>
      [...bar.querySelectorAll('b')].map((end) => rem(bar.style.top) + rem(end.style.top)),
    )
    const picture = shown.element.querySelector<HTMLElement>('[data-scale]')
    const floor = plan.floor.highPoint.z
    const here = scaleOf(wantedOn(blocks, floor.state === 'unknown' ? [0] : [0, floor.value], []))
    expect(rem(picture?.style.height ?? '')).toBeCloseTo(here.height, 1)
    const ends = plan.heights.demands.flatMap(({ from, min, max }) =>
      from === 'line'
        ? [min, max].flatMap((f) => (f !== null && f.state !== 'unknown' ? [f.value] : []))
        : [],
    )
    expect(ends.length).toBeGreaterThan(70)
    for (const end of ends) {
      expect(
        onScreen.some((y) => Math.abs(y - here.y(end)) < 0.05),
        `${end} mm`,
      ).toBe(true)
    }
    await shown.close()
  })

  test('those that set the ends of the room are marked, and a bar is drawn from end to end', () => {
    const top = blocks.find(({ of }) => of === 'worktop-top')
    const wish = top?.bars.find(({ id }) => id === 'wish:worktop-height')
    expect(wish?.sets).toEqual(['lower', 'upper'])
    expect(wish && drawnFrom(wish, -100, scale)).toEqual([wish?.min, wish?.max])
    const board = top?.bars.find(({ id }) => id.startsWith('window-board'))
    expect(board?.sets).toEqual([])
  })
})

describe('moved', () => {
  test('by dragging, it is one wish, one edit, and one step back', async () => {
    const shown = await opened()
    const [before, kitchen] = [edits(shown), shown.store.getState().kitchen]
    const on = handle(shown, 'base-underside')
    await act(async () => pointer(on, 'pointerdown', 500))
    for (const y of [494, 480, 470]) await act(async () => pointer(on, 'pointermove', y))
    await act(async () => pointer(on, 'pointerup', 470))
    expect(edits(shown)).toBe(before + 1)
    const wish = wishes(shown).find((w) => w['of'] === 'base-underside')
    const { down } = (wish?.['min'] ?? {}) as { down: number }
    expect(wish).toMatchObject({ min: { down }, max: { down } })
    expect(down).toBeLessThan(858)
    expect(Number(on.getAttribute('aria-valuenow'))).toBe(-down)
    await act(async () => shown.actions.undo())
    expect(shown.store.getState().kitchen).toBe(kitchen)
    await shown.close()
  })

  test('a touch that does not move it wishes nothing', async () => {
    const shown = await opened()
    const on = handle(shown, 'base-top')
    await act(async () => pointer(on, 'pointerdown', 500))
    await act(async () => pointer(on, 'pointermove', 502))
    await act(async () => pointer(on, 'pointerup', 502))
    expect(edits(shown)).toBe(0)
    await shown.close()
  })

  test('by keys one or ten at a time, by buttons too; taken away it is no wish any more', async () => {
    const shown = await opened()
    const on = handle(shown, 'wall-underside')
    await act(async () => on.focus())
    await key(on, 'ArrowUp')
    await key(on, 'PageUp')
    await key(on, 'ArrowDown')
    expect(on.getAttribute('aria-valuenow')).toBe('402')
    await shown.click('−1 mm: Underside of the wall units')
    expect(wishes(shown).find((w) => w['of'] === 'wall-underside')).toMatchObject({ min: { up: 401 } })
    expect(on.getAttribute('aria-valuetext')).toContain('+401 mm from the line')
    await shown.click('Take wish away')
    expect(wishes(shown).map((w) => w['id'])).toEqual(['worktop-height'])
    await shown.close()
  })

  test('past what must be it is named at once, and the plan says by how much it misses', async () => {
    const shown = await opened(directWorker)
    await act(async () => shown.actions.edit(wishEdits(sceneFile('l-shape'), 'base-underside', -888)))
    await act(async () => handle(shown, 'base-underside').focus())
    expect(shown.text()).toContain('−888 lies past a: Reach of the legs')
    await planned()
    const { conflicts } = shown.store.getState().plan?.heights ?? {}
    expect(conflicts?.length).toBeGreaterThan(0)
    expect(shown.text()).toMatch(/cannot all hold: they miss by [\d.]+ mm/)
    await shown.close()
  })

  test('a wish typed as a range gives way to the one that is dragged, and comes back with it', async () => {
    const shown = await opened()
    const on = handle(shown, 'worktop-top')
    await key(on, 'ArrowUp')
    expect(wishes(shown)).toEqual([
      { id: 'worktop-height', of: 'worktop-top', min: { down: 99 }, max: { down: 99 } },
    ])
    await act(async () => shown.actions.undo())
    expect(wishes(shown)[0]).toHaveProperty('place')
    await shown.close()
  })
})

test('a height that is not known is named with what is missing, and not drawn', async () => {
  const file = structuredClone(sceneFile('l-shape')) as { floor: { readings: unknown[] } }
  file.floor.readings = []
  const shown = await show(<HeightsPicture />, { kitchen: file })
  await act(async () => shown.actions.edit([{ set: 'name', to: 'No floor' }]))
  await planned()
  expect(shown.element.querySelector('[data-height="base-underside"]')).toBeNull()
  expect(shown.text()).toContain('Not known yet, and so not drawn')
  expect(shown.text()).toContain('Underside of the base units: find out')
  await shown.close()
})
