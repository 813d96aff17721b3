/** A list from a spreadsheet: pasted, looked through, added as one edit, and out again as a file. */
import { act } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { PAGES } from '../../src/core/form/pages'
import { thingsAt } from '../../src/core/form/rename'
import { listAt } from '../../src/core/form/things'
import { PageForm } from '../../src/ui/survey/form/PageForm'
import { rowsOf } from '../../src/ui/survey/table/rows-of'
import { textOf } from '../../src/ui/survey/table/text-of'
import { sceneFile } from '../support/kitchens'
import { type Shown, show } from '../support/render'

const page = (id: string) => {
  const found = PAGES.find((p) => p.id === id)
  if (found === undefined) throw new Error(id)
  return found
}
const opened = async (id: string, list: string): Promise<Shown> => {
  const shown = await show(<PageForm page={page(id)} />, { kitchen: sceneFile('one-wall') })
  await shown.click(`Spreadsheet: ${list}`)
  await until(shown, 'textarea')
  return shown
}

/** Lets what is fetched come, until it is there. */
async function until({ element, settle }: Shown, selector: string): Promise<void> {
  for (const end = Date.now() + 10_000; element.querySelector(selector) === null; await settle()) {
    if (Date.now() > end) throw new Error(`no ${selector}`)
  }
}

async function paste(shown: Shown, text: string): Promise<void> {
  const area = shown.element.querySelector('textarea') as HTMLTextAreaElement
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')?.set?.call(area, text)
    area.dispatchEvent(new Event('input', { bubbles: true }))
  })
  await until(shown, '.preview')
}

describe('a delivery list pasted into the units', () => {
  test('is shown before it is added: how many, and line and column of what is not understood', async () => {
    const shown = await opened('units', 'Units')
    const wall = String(listAt(sceneFile('one-wall'), 'walls')[0]?.['id'])
    await paste(
      shown,
      `Mark\tWhat\tBack to wall\tWidth\tColour\tDepth\nnew-1\tbase unit\t${wall}\t600\tgreen\t1.200\nnew-2\tbase unit\t${wall}\t23 5/8 in\tgreen\t560\nnew-3\tbaseless\t${wall}\t1\t\t\n`,
    )
    const text = shown.element.querySelector('.preview')?.textContent ?? ''
    expect(text).toContain('2 to be added: new-1, new-2')
    expect(text).toContain('Columns not understood, left out: 1')
    expect(text).toContain('column E (Colour)')
    expect(text).toContain('line 2, column F (Depth): "1.200". 1.200 may be read in two ways')
    expect(text).toContain('line 4. It does not say: what.')
    await shown.close()
  })

  test('comes as one edit, and goes as one', async () => {
    const shown = await opened('units', 'Units')
    const before = shown.store.getState()
    const wall = String(listAt(before.kitchen, 'walls')[0]?.['id'])
    await paste(shown, `What;Back to wall;Width\nbase unit;${wall};2,5\nbase unit;${wall};600`)
    await shown.click('Add 2')
    const { kitchen, past } = shown.store.getState()
    expect(listAt(kitchen, 'units').length).toBe(listAt(before.kitchen, 'units').length + 2)
    expect(listAt(kitchen, 'units').at(-2)?.['width']).toBe(2.5)
    expect(past.length).toBe(before.past.length + 1)
    expect(shown.text()).toContain('Added 2. Take back takes all of it back.')
    await act(async () => shown.actions.undo())
    expect(shown.store.getState().kitchen).toBe(before.kitchen)
    await shown.close()
  })
})

test('an empty list is saved as a table to fill in, a full one as it is', async () => {
  const saved: Blob[] = []
  const make = vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    saved.push(blob as Blob)
    return 'blob:saved'
  })
  const shown = await opened('levels', 'Floor readings')
  await shown.click('Save this list as CSV')
  const text = (await saved[0]?.text()) ?? ''
  const lines = text.replace('\ufeff', '').split('\r\n')
  expect(lines[0]).toContain('Down from the line (mm)')
  expect(lines.length).toBe(listAt(sceneFile('one-wall'), 'floor.readings').length + 2)
  make.mockRestore()
  await shown.close()
})

describe('the cells of a table', () => {
  const units = thingsAt('units')
  if (units === undefined) throw new Error('units')

  test.each([
    ['commas', 'What,Width,Depth\nbase,"2,4",560'],
    ['semicolons', 'What;Width;Depth\nbase;2,4;560'],
    ['tabs', 'What\tWidth\tDepth\nbase\t2,4\t560'],
    ['a mark of UTF-8, and empty lines above', '\ufeff\r\n;;\r\nWhat;Width;Depth\r\nbase;2,4;560'],
  ])('are told apart by %s', async (_, text) => {
    expect(await rowsOf(text, units)).toEqual([
      ['What', 'Width', 'Depth'],
      ['base', '2,4', '560'],
    ])
  })

  test('are read however the spreadsheet has written its file', async () => {
    const utf16 = new Uint8Array([0xff, 0xfe, ...[...'±3'].flatMap((c) => [c.charCodeAt(0), 0])])
    expect(await textOf(new Blob([utf16]))).toBe('±3')
    expect(await textOf(new Blob(['±3']))).toBe('±3')
    expect(await textOf(new Blob([new Uint8Array([0xb1, 0x33])]))).toBe('±3')
  })

  test('are not looked for in a text that is far too long', async () => {
    expect(await rowsOf('a,'.repeat(600_000), units)).toContain('too long')
  })
})
