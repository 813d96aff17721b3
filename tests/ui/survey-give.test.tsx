/** A kitchen given on: the link and the code carry it whole, and where they cannot, that is said. */
import { act } from 'react'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { LINK_MARK, linkOf, textOfLink } from '../../src/state/link'
import { GiveOn } from '../../src/ui/survey/give/GiveOn'
import { MOST_LETTERS, matrixOf, QUIET_ZONE } from '../../src/ui/survey/give/matrix'
import { sceneFile } from '../support/kitchens'
import { dotsOf, readMatrix } from '../support/read-matrix'
import { type Shown, show } from '../support/render'

const SMALL = {
  format: 'dryrun-kitchen',
  version: 1,
  name: 'Küche im Anbau',
  walls: [{ id: 'a', length: 2400 }],
  units: [{ id: 'base-1', kind: 'base', wall: 'a', order: { left: { at: 0 } }, width: 600 }],
}

afterEach(() => vi.unstubAllGlobals())

async function shownFor(kitchen: unknown, more = {}): Promise<Shown> {
  const shown = await show(<GiveOn />, { kitchen, ...more })
  for (const end = Date.now() + 5000; shown.element.querySelector('.copy-link') === null; ) {
    await act(async () => new Promise((resolve) => setTimeout(resolve, 10)))
    if (Date.now() > end) throw new Error(shown.text())
  }
  return shown
}

describe('a small kitchen', () => {
  test('is carried whole by the link and by the dots of the code', async () => {
    const shown = await shownFor(SMALL)
    const address = (shown.element.querySelector('.copy-link input') as HTMLInputElement).value
    expect(address.split('#')[0]).toBe(window.location.href.split('#')[0])
    const svg = shown.element.querySelector('.matrix svg') as SVGElement
    const size = Number(svg.getAttribute('viewBox')?.split(' ')[2])
    const dots = dotsOf(svg.querySelector('path')?.getAttribute('d') ?? '', size, QUIET_ZONE)
    expect(readMatrix(dots)).toBe(address)
    const read = await textOfLink(readMatrix(dots).split('#')[1] ?? '')
    expect(JSON.parse(read as string)).toEqual(SMALL)
    await shown.close()
  })

  test('its link is copied; where the browser does not copy, it is marked', async () => {
    const writeText = vi.fn(async (_: string) => undefined)
    vi.stubGlobal('navigator', { clipboard: { writeText } })
    const shown = await shownFor(SMALL)
    await shown.click('Copy the link')
    expect(writeText.mock.calls[0]?.[0]).toContain(`#${LINK_MARK}`)
    expect(shown.text()).toContain('Copied.')
    writeText.mockRejectedValue(new Error('forbidden'))
    await shown.click('Copy the link')
    expect(shown.text()).toContain('copy it by hand')
    await shown.close()
  })
})

test('a kitchen too large for a code says so, and gives the file instead', async () => {
  const shown = await shownFor(sceneFile('l-shape'))
  expect(shown.element.querySelector('svg')).toBeNull()
  expect(shown.text()).toContain('too large for a matrix code')
  expect(shown.button('Save the file')).toBeTruthy()
  await shown.close()
})

test('what does not go together is not given on: nobody could open it', async () => {
  const shown = await show(<GiveOn />, { kitchen: SMALL, isBehind: true })
  expect(shown.text()).toContain('Mend it first')
  expect(shown.element.querySelector('.copy-link')).toBeNull()
  await shown.close()
})

describe('the dots', () => {
  test('the most letters just go in, and one more does not', async () => {
    const letters = (await linkOf(sceneFile('l-shape')))
      .padEnd(MOST_LETTERS + 1, 'a')
      .slice(0, MOST_LETTERS + 1)
    const most = await matrixOf(letters.slice(0, -1))
    expect(most?.size).toBe(141)
    expect(readMatrix(dotsOf(most?.path ?? '', 141, QUIET_ZONE))).toBe(letters.slice(0, -1))
    expect(await matrixOf(letters)).toBeUndefined()
  })

  test.each([20, 60, 150, 300, 500, 700, 900, 1100, 1300, 1500])(
    '%i letters are read off them',
    async (length) => {
      const letters = `https://example.org/a/b/#kitchen=${'aB3_-'.repeat(400)}`.slice(0, length)
      const code = await matrixOf(letters)
      expect(readMatrix(dotsOf(code?.path ?? '', code?.size ?? 0, QUIET_ZONE))).toBe(letters)
    },
  )
})
