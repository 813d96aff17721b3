/** Typing into the survey: what is kept, what waits, and what is said of it. */
import { act } from 'react'
import { describe, expect, test } from 'vitest'
import { PAGES } from '../../src/core/form/pages'
import { listAt, thingAt } from '../../src/core/form/things'
import { PageForm } from '../../src/ui/survey/form/PageForm'
import { sceneFile } from '../support/kitchens'
import { type Shown, show } from '../support/render'

const pageOf = (id: string) => {
  const page = PAGES.find((p) => p.id === id)
  if (page === undefined) throw new Error(id)
  return page
}

const opened = (id: string, kitchen: unknown = sceneFile('l-shape')) =>
  show(<PageForm page={pageOf(id)} />, { kitchen })

const input = ({ element }: Shown, fact: string): HTMLInputElement => {
  const found = element.querySelector<HTMLInputElement>(`input[data-fact="${fact}"]`)
  if (found === null) throw new Error(`no field for ${fact}`)
  return found
}

/** Types letter by letter over what stands there; the field is left only when that is asked for. */
async function type(shown: Shown, fact: string, text: string): Promise<void> {
  const field = input(shown, fact)
  await act(async () => field.focus())
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
  for (let end = 1; end <= text.length; end++) {
    await act(async () => {
      set?.call(field, text.slice(0, end))
      field.dispatchEvent(new Event('input', { bubbles: true }))
    })
  }
}
const leave = (shown: Shown, fact: string) => act(async () => input(shown, fact).blur())
const kept = (shown: Shown, fact: string): unknown => thingAt(shown.store.getState().kitchen, fact)

const LENGTH = 'walls.a.length'

describe('a length', () => {
  test('is in the kitchen at each letter that makes one, and is one edit', async () => {
    const shown = await opened('walls')
    const edits = shown.store.getState().past.length
    await type(shown, LENGTH, '3950')
    expect(kept(shown, LENGTH)).toBe(3950)
    await leave(shown, LENGTH)
    expect(shown.store.getState().past.length).toBe(edits + 1)
    await shown.close()
  })

  test('half typed is no fault; left so it says what is missing, and what stood there before stands again', async () => {
    const shown = await opened('walls')
    await type(shown, LENGTH, '155 1/')
    expect(shown.element.querySelector('[aria-invalid]')).toBeNull()
    await leave(shown, LENGTH)
    const field = input(shown, LENGTH)
    expect(field.getAttribute('aria-invalid')).toBe('true')
    expect(field.value).toBe('155 1/')
    expect(shown.element.querySelector('.wrong')?.textContent).toContain('Not a length yet')
    expect(kept(shown, LENGTH)).toBe(3900)
    await type(shown, LENGTH, '155 1/2 in')
    await leave(shown, LENGTH)
    expect(shown.element.querySelector('.wrong')).toBeNull()
    expect(kept(shown, LENGTH)).toBe('155 1/2 in')
    await shown.close()
  })

  test('that is impossible is told at its field, and the plan is said to be the one from before', async () => {
    const shown = await opened('walls')
    await type(shown, LENGTH, '-5')
    await act(async () => new Promise((resolve) => setTimeout(resolve, 300)))
    expect(input(shown, LENGTH).getAttribute('aria-invalid')).toBe('true')
    expect(shown.element.querySelector('.typed .wrong')?.textContent).toContain('must be from 1 to 100000 mm')
    // In the words of the screen, in both places: nobody types "null" into a field.
    expect(shown.element.querySelector('.typed .wrong')?.textContent).toContain('leave it open')
    expect(shown.element.querySelector('[role=alert]')?.textContent).toContain('leave it open')
    expect(shown.text()).not.toMatch(/\bnull\b/)
    expect(shown.element.querySelector('[role=alert]')?.textContent).toContain('does not go together yet')
    await shown.close()
  })

  test('that is emptied is not known any more', async () => {
    const shown = await opened('walls')
    const field = input(shown, LENGTH)
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
    await act(async () => {
      field.focus()
      set?.call(field, '')
      field.dispatchEvent(new Event('input', { bubbles: true }))
    })
    expect(kept(shown, LENGTH)).toBeUndefined()
    expect(field.placeholder).toBe('not known yet')
    await shown.close()
  })
})

test('an assumed figure looks assumed and says why, until somebody says that it is so', async () => {
  const file = structuredClone(sceneFile('l-shape')) as { units: Record<string, unknown>[] }
  const [first] = file.units
  if (first !== undefined) first['height'] = { value: 1970, assumed: true, because: 'usual height' }
  const shown = await opened('units', file)
  const field = input(shown, 'units.tall-1.height')
  expect(field.dataset['assumed']).toBe('')
  expect(shown.text()).toContain('assumed: usual height')
  await shown.click('That is so')
  expect(kept(shown, 'units.tall-1.height')).toBe(1970)
  await shown.close()
})

test('a figure that is taken for an empty field stands faintly in it, and is not entered until somebody says that it is so', async () => {
  const file = structuredClone(sceneFile('l-shape')) as { units: Record<string, unknown>[] }
  const [first] = file.units
  if (first !== undefined) delete first['depth']
  const shown = await opened('units', file)
  const DEPTH = 'units.tall-1.depth'
  const field = input(shown, DEPTH)
  expect([field.value, field.placeholder, kept(shown, DEPTH)]).toEqual(['', 'assumed 560', undefined])
  expect(field.dataset['assumed']).toBeUndefined()
  expect(shown.text()).toContain('assumed 560 mm ± 15, common practice')
  expect(shown.element.querySelectorAll('[data-fact="units.tall-1.width"]:placeholder-shown')).toHaveLength(0)
  await shown.click('That is so')
  expect(kept(shown, DEPTH)).toBe(560)
  expect(shown.text()).not.toContain('Yours?')
  expect(input(shown, DEPTH).value).toBe('560')
  await shown.close()
})

test('from blank with nothing known no figure of the work appears, and no hole', async () => {
  const shown = await show(<PageForm page={pageOf('walls')} />, {
    kitchen: { format: 'dryrun-kitchen', version: 1, name: 'Blank' },
  })
  await shown.click('Add a wall')
  await act(async () => new Promise((resolve) => setTimeout(resolve, 300)))
  const { plan } = shown.store.getState()
  expect(plan?.walls.length).toBe(1)
  expect(plan?.holes).toEqual([])
  const known = JSON.stringify(plan?.heights ?? {}).match(/"state":"known"/g) ?? []
  expect(known).toEqual([])
  await shown.close()
})

describe('a window as it is measured', () => {
  const WINDOW = 'walls.a.openings.opening-x'
  const blank = () => ({
    format: 'dryrun-kitchen',
    version: 1,
    name: 'One window',
    lines: [{ id: 'line' }],
    walls: [
      {
        id: 'a',
        length: 3900,
        openings: [{ id: 'opening-x', kind: 'window', left: {}, right: {}, bottom: {}, top: {} }],
      },
    ],
  })
  const across = ({ element }: Shown, near: string, part = 'width'): HTMLInputElement => {
    const found = element.querySelector<HTMLInputElement>(
      `input[data-span="${WINDOW}.${near}"][data-part="${part}"]`,
    )
    if (found === null) throw new Error(`nothing across from ${near}`)
    return found
  }
  const into = async (field: HTMLInputElement, text: string): Promise<void> => {
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
    await act(async () => field.focus())
    for (let end = 1; end <= text.length; end++) {
      await act(async () => {
        set?.call(field, text.slice(0, end))
        field.dispatchEvent(new Event('input', { bubbles: true }))
      })
    }
    await act(async () => field.blur())
  }

  test('its edge and its width give the other edge, which is what is kept and shown', async () => {
    const shown = await opened('walls', blank())
    await into(input(shown, `${WINDOW}.left.at`), '900')
    const edits = shown.store.getState().past.length
    await into(across(shown, 'left'), '1200')
    expect(kept(shown, `${WINDOW}.right`)).toEqual({ at: { value: 2100, pm: 4 } })
    expect(input(shown, `${WINDOW}.right.at`).value).toBe('2100 ± 4')
    expect(shown.store.getState().past.length).toBe(edits + 1)
    expect(JSON.stringify(kept(shown, WINDOW))).not.toContain('1200')
    await shown.close()
  })

  test('a width typed first waits and says for what; the edge put right takes it along, in one edit', async () => {
    const shown = await opened('walls', blank())
    await into(across(shown, 'left'), '1200')
    expect(kept(shown, `${WINDOW}.right`)).toEqual({})
    expect(shown.text()).toContain('Kept once it is joined by “Left edge”.')
    const edits = shown.store.getState().past.length
    await into(input(shown, `${WINDOW}.left.at`), '910')
    expect(kept(shown, `${WINDOW}.right.at.value`)).toBe(2110)
    expect(shown.text()).not.toContain('Kept once')
    await into(input(shown, `${WINDOW}.left.at`), '900')
    expect(kept(shown, `${WINDOW}.right.at.value`)).toBe(2100)
    expect(shown.store.getState().past.length).toBe(edits + 2)
    await shown.close()
  })

  test('the far edge typed over shows in the width, and no width moves it any more', async () => {
    const shown = await opened('walls', blank())
    await into(input(shown, `${WINDOW}.left.at`), '900')
    await into(across(shown, 'left'), '1200')
    await into(input(shown, `${WINDOW}.right.at`), '2000')
    expect(across(shown, 'left').value).toBe('1100')
    await into(input(shown, `${WINDOW}.left.at`), '950')
    expect(kept(shown, `${WINDOW}.right.at`)).toBe(2000)
    expect(across(shown, 'left').value).toBe('1050')
    await act(async () => shown.actions.undo())
    expect(across(shown, 'left').value).toBe('1100')
    await shown.close()
  })

  test('a width that is none puts back what stood there, and says why', async () => {
    const shown = await opened('walls', blank())
    await into(input(shown, `${WINDOW}.left.at`), '900')
    await into(across(shown, 'left'), '1200')
    await into(across(shown, 'left'), '14 1/')
    expect(kept(shown, `${WINDOW}.right.at.value`)).toBe(2100)
    expect(across(shown, 'left').getAttribute('aria-invalid')).toBe('true')
    expect(shown.text()).toContain('Not a length yet')
    await into(across(shown, 'left'), '-5')
    expect(shown.text()).toContain('Width: more than 0.')
    expect(kept(shown, `${WINDOW}.right.at.value`)).toBe(2100)
    await shown.close()
  })
})

describe('what is taken out', () => {
  const studs = ({ store }: Shown) => listAt(store.getState().kitchen, 'walls.a.studs').map(({ id }) => id)
  const out = ({ element }: Shown, path: string) =>
    act(async () => element.querySelector<HTMLElement>(`[data-remove="${path}"]`)?.click())
  const status = ({ element }: Shown, list: string) =>
    element.querySelector(`[data-list="${list}"] > [role=status]`)?.textContent
  const back = ({ element }: Shown, list: string) =>
    element.querySelector<HTMLElement>(`[data-put-back="${list}"]`)

  test('is said in sight and aloud, the keyboard goes on with the next, and it can be put back where it stood', async () => {
    const shown = await opened('walls')
    const before = shown.store.getState().kitchen
    const marks = studs(shown)
    expect(marks.length).toBeGreaterThan(2)
    const [first, second, third] = marks as readonly string[]
    await out(shown, `walls.a.studs.${second}`)
    expect(studs(shown)).not.toContain(second)
    expect(status(shown, 'walls.a.studs')).toBe(`Stud ${second} taken out.`)
    const line = back(shown, 'walls.a.studs')?.closest('p')
    expect(line?.textContent).toContain(`Stud ${second} taken out.`)
    expect(line?.previousElementSibling?.getAttribute('data-thing')).toBe(first)
    expect((document.activeElement as HTMLElement).dataset['thing']).toBe(third)
    await act(async () => back(shown, 'walls.a.studs')?.click())
    expect(shown.store.getState().kitchen).toEqual(before)
    expect(status(shown, 'walls.a.studs')).toBe('')
    expect(back(shown, 'walls.a.studs')).toBeNull()
    expect((document.activeElement as HTMLElement).dataset['thing']).toBe(second)
    await shown.close()
  })

  test('the last of a list leaves the keyboard at what adds one; a unit comes back to its place', async () => {
    const shown = await opened('units')
    const before = listAt(shown.store.getState().kitchen, 'units')
    const mark = String(before[1]?.['id'])
    await act(async () => shown.actions.choose('units', mark))
    await out(shown, `units.${mark}`)
    expect((document.activeElement as HTMLElement).dataset['thing']).toBe(before[2]?.['id'])
    await act(async () => back(shown, 'units')?.click())
    expect(listAt(shown.store.getState().kitchen, 'units')).toEqual(before)
    await act(async () => shown.actions.choose('units', String(before[0]?.['id'])))
    for (const { id } of before) await out(shown, `units.${String(id)}`)
    expect((document.activeElement as HTMLElement).dataset['add']).toBe('units')
    expect(back(shown, 'units')).not.toBeNull()
    await act(async () => shown.actions.undo())
    expect(back(shown, 'units')).toBeNull()
    await shown.close()
  })
})

test('a unit begun as one sort and made another goes by a mark of that sort; a mark that was typed stays', async () => {
  const file = structuredClone(sceneFile('l-shape')) as { units: Record<string, unknown>[] }
  const shown = await opened('units', file)
  const kinds = () => listAt(shown.store.getState().kitchen, 'units').map(({ id, kind }) => `${id} ${kind}`)
  const before = kinds()
  await act(async () => shown.element.querySelector<HTMLElement>('[data-add="units"]')?.click())
  const given = kinds().at(-1)?.split(' ')[0]
  const choose = async (mark: string, to: string) => {
    const select = shown.element.querySelector<HTMLSelectElement>(`select[data-fact="units.${mark}.kind"]`)
    await act(async () => {
      select?.focus()
      Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')?.set?.call(select, to)
      select?.dispatchEvent(new Event('change', { bubbles: true }))
    })
    return select
  }
  const select = await choose(String(given), 'island')
  expect(kinds()).toEqual([...before, 'island-1 island'])
  expect(shown.element.querySelector<HTMLInputElement>('[data-mark-of]')?.value).toBe('island-1')
  // The choice is still the one with the keyboard, of the thing under its new mark.
  expect(document.activeElement).toBe(select)
  expect(select?.dataset['fact']).toBe('units.island-1.kind')
  await act(async () => shown.actions.undo())
  expect(kinds()).toEqual([...before, `${given} ${String(given).replace(/-\d+$/, '')}`])
  await shown.close()
})
