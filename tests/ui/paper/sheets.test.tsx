import { describe, expect, test } from 'vitest'
import { firstAnswer } from '../../../src/core/first/first-answer'
import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import { say } from '../../../src/core/words/say'
import { withWords } from '../../../src/core/words/with-words'
import { OnPaper } from '../../../src/ui/paper/OnPaper'
import { sheetsOf } from '../../../src/ui/paper/sheets'
import { planOf, sceneFile } from '../../support/kitchens'
import { show } from '../../support/render'

describe.each(['l-shape', 'one-wall'] as const)('the sheets of %s', (name) => {
  test('each says what it is, its survey, its precision and its stamp; none lacks a word', async () => {
    const plan = planOf(name)
    const shown = await show(<OnPaper />, { plan, kitchen: sceneFile(name) })
    const sheets = [...shown.element.querySelectorAll<HTMLElement>('.sheet')]
    expect(sheets).toHaveLength(sheetsOf(plan).length)
    for (const sheet of sheets) {
      const text = sheet.textContent ?? ''
      expect(text).toContain(plan.stamp.hash.slice(0, 8))
      expect(text).toMatch(/taped ± \d+ mm, levelled ± [\d.]+ mm/)
      expect(text).toMatch(/Survey of \d+ \w+ \d{4}/)
      expect(text).not.toMatch(/\[no |undefined|NaN|\[object/)
    }
    await shown.close()
  })

  test('each wall says that outside the hatching nothing is proved, and every hole is in its table', async () => {
    const plan = planOf(name)
    const shown = await show(<OnPaper />, { plan, kitchen: sceneFile(name) })
    const walls = [...shown.element.querySelectorAll<HTMLElement>('.wall-sheet')]
    for (const wall of walls) expect(wall.textContent).toContain('Outside the hatching is not proved clear')
    const rows = walls.flatMap((w) => [...w.querySelectorAll('.wide-table tbody tr')])
    expect(rows).toHaveLength(plan.holes.length)
    const refused = rows.filter((r) => r.textContent?.includes('Do not drill.'))
    expect(refused).toHaveLength(plan.holes.filter((h) => h.verdict === 'refused').length)
    await shown.close()
  })

  test('minutes stand at their steps as common practice has them, and are nowhere added up to a whole', async () => {
    const plan = planOf(name)
    const shown = await show(<OnPaper />, { plan, kitchen: sceneFile(name) })
    expect(shown.text()).not.toMatch(/\bhours? of work|\d+ to \d+ hours/)
    expect(shown.text()).toContain('common practice, no source: they are not added up to a whole')
    await shown.close()
  })
})

test('whom to book on the first sheet is whom the first answer books, in the same words', async () => {
  const kitchen = sceneFile('l-shape')
  const parsed = parseKitchen(kitchen)
  if (!parsed.ok) throw new Error('not read')
  const first = withWords(firstAnswer(parsed.value.kitchen))
  const wanted = first.filter(({ kind }) => kind === 'book').map((line) => say(line.say))
  expect(wanted.length).toBeGreaterThan(3)
  const shown = await show(<OnPaper />, { plan: planOf('l-shape'), kitchen, first })
  const there = [...shown.element.querySelectorAll('[aria-label="First sheet"] [data-bookings] li')]
  expect(there.map((line) => line.textContent)).toEqual(wanted)
  await shown.close()
})
