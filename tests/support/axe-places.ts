import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

/** What axe objects to on a page, one line each. */
export async function violations(page: Page): Promise<readonly string[]> {
  const found = await new AxeBuilder({ page }).analyze()
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map((n) => n.html.slice(0, 200)).join(' | ')}`,
  )
}

/** What else has to be open in a place for all of it to be looked at. */
export const STATES: readonly { name: string; hash: string; open?: (page: Page) => Promise<void> }[] = [
  { name: 'Rehearse', hash: '#rehearse/second-fix:wall-3' },
  {
    name: 'Rehearse, asked why and what a figure stands on',
    hash: '#rehearse/level:wall-3',
    open: async (page) => {
      await page.getByRole('button', { name: 'Why now?' }).click()
      await page.locator('.slip-figures button').first().click()
      await page.getByRole('button', { name: 'Look round' }).click()
    },
  },
  {
    name: 'Rehearse, a hold point with a finding open and looked at',
    hash: '#rehearse/stand-up:tall-1',
    open: async (page) => {
      await page.locator('.scene-flag:visible').first().click()
      await page.getByRole('button', { name: 'Show it in the picture' }).first().click()
    },
  },
  { name: 'Survey and delivery', hash: '#survey' },
  { name: 'On paper, first sheet', hash: '#paper/first' },
  { name: 'On paper, a wall', hash: '#paper/wall:a' },
  {
    name: 'On paper, a wall enlarged',
    hash: '#paper/wall:b',
    open: async (page) => {
      const enlarge = page.getByRole('button', { name: 'Enlarge', exact: true })
      if (await enlarge.isVisible()) await enlarge.click()
    },
  },
  { name: 'On paper, heights', hash: '#paper/heights' },
  { name: 'On paper, order of work', hash: '#paper/work' },
  {
    name: 'On the day',
    hash: '#day',
    open: (page) => page.locator('.day-log summary').click(),
  },
  {
    name: 'On the day, trouble',
    hash: '#day',
    open: (page) => page.getByRole('button', { name: 'Something is wrong' }).click(),
  },
]
