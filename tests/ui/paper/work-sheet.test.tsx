import { expect, test } from 'vitest'
import { targetOnPaper } from '../../../src/ui/paper/target'
import { WorkSheet } from '../../../src/ui/paper/WorkSheet'
import { planOf, sceneFile } from '../../support/kitchens'
import { show } from '../../support/render'

test.each(['l-shape', 'one-wall'] as const)('%s: every check has a place for its answer', async (name) => {
  const plan = planOf(name)
  const shown = await show(<WorkSheet plan={plan} />, { plan, kitchen: sceneFile(name) })
  const checks = plan.operations.flatMap((o) => o.checks)
  const rows = [...shown.element.querySelectorAll('.to-check li')]
  expect(rows).toHaveLength(checks.length)
  checks.forEach((check, i) => {
    const row = rows[i] as Element
    const isRead = check.target !== null
    expect(row.querySelector('.write') !== null || row.querySelector('.box') !== null).toBe(true)
    if (isRead) expect(row.querySelector('.write')).not.toBeNull()
    if (isRead) expect(row.querySelector('.figure')?.textContent).toBe(targetOnPaper(check))
  })
  const withTolerance = checks.filter((c) => c.tolerance !== null && c.tolerance.state !== 'unknown')
  expect(withTolerance.length).toBeGreaterThan(20)
  for (const check of withTolerance)
    if (check.target?.state !== 'unknown') expect(targetOnPaper(check)).toMatch(/ ± [\d.]+$|^0 to [\d.]+ mm$/)
  await shown.close()
})

test('a height from the line is signed, a drop and a width are not', () => {
  const checks = planOf('l-shape').operations.flatMap((o) => o.checks)
  const all = checks.map(targetOnPaper)
  expect(all).toContain('+392 mm ± 1')
  expect(all).toContain('−138 mm ± 1')
  expect(all).toContain('600 mm ± 2')
  expect(all).toContain('1\u202f000 mm ± 1')
})
