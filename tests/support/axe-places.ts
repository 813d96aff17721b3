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
  {
    name: 'Rehearse, a word asked about and another order tried',
    hash: '#rehearse/second-fix:wall-3',
    open: async (page) => {
      await page.locator('.slip .trade-word').first().click()
      await page.getByRole('button', { name: 'Words used here' }).click()
      await page.getByRole('button', { name: 'How it comes to this' }).click()
      await page.locator('.chain').waitFor()
      await page.getByRole('button', { name: 'Change the order' }).click()
      await page.getByRole('button', { name: 'Earlier', exact: true }).click()
    },
  },
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
    name: 'Rehearse, the level tried and turned',
    hash: '#rehearse/level:base-2',
    open: async (page) => {
      await page.getByRole('button', { name: 'Try it: read the level and turn' }).click()
      await page.getByRole('button', { name: 'Leg back right: up 1' }).click()
      await page
        .getByRole('button', { name: /wind it out until it grips/ })
        .first()
        .waitFor()
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
  { name: 'Survey, the walls', hash: '#survey/walls' },
  {
    name: 'Survey, a figure that cannot be kept yet',
    hash: '#survey/units',
    open: async (page) => {
      await page.locator('[data-fact="units.tall-1.width"]').fill('60 0 0')
      await page.keyboard.press('Tab')
    },
  },
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
  {
    name: 'Survey, the first questions, one answer not understood',
    hash: '#survey/first',
    open: async (page) => {
      const width = page.locator('[data-question=width] input')
      await width.fill('wide')
      await width.press('Enter')
      await page.locator('.first-question .wrong').waitFor()
    },
  },
  {
    name: 'Survey, the delivery, one unit not here and one that measures otherwise',
    hash: '#survey/delivery',
    open: async (page) => {
      await page.getByRole('button', { name: 'It measures otherwise' }).first().click()
      await page.locator('[data-row="units.corner-1"]').getByRole('button', { name: 'Not here' }).click()
      await page.getByText('was looked for and has not come').waitFor()
    },
  },
  {
    name: 'Survey, all heights on one scale, one wished where it cannot be',
    hash: '#survey/wishes',
    open: async (page) => {
      await page.getByRole('slider', { name: 'Underside of the base units' }).focus()
      for (let i = 0; i < 4; i++) await page.keyboard.press('PageDown')
      await page.getByText('These cannot all hold', { exact: true }).waitFor()
    },
  },
  // The last of all: another kitchen is open after it.
  {
    name: 'Survey, your kitchens with a version and one taken out',
    hash: '#survey',
    open: async (page) => {
      await page.getByRole('button', { name: 'Begin your own kitchen' }).click()
      await page.getByRole('link', { name: 'On to: House and line' }).click()
      await page.locator('[data-fact="survey.by"]').fill('Ines')
      await page.evaluate(() => {
        window.location.hash = '#survey'
      })
      await page.getByRole('button', { name: 'Copy My kitchen' }).click()
      await page.getByRole('button', { name: 'Take out My kitchen (copy)' }).click()
      await page.getByText('Taken out: 1 kitchen').click()
      await page.locator('.versions summary').click()
      await page.getByLabel('Name of this version').fill('as measured')
      await page.getByRole('button', { name: 'Keep this version' }).click()
      await page.getByRole('button', { name: 'Return to as measured' }).waitFor()
    },
  },
]
