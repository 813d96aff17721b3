import { describe, expect, test } from 'vitest'
import { SurveyPlace } from '../../src/ui/survey/SurveyPlace'
import { outcomeOf, planOf, sceneFile } from '../support/kitchens'
import { show } from '../support/render'

describe('Survey and delivery', () => {
  test('findings stand by weight, each once with its words and basis; one on a wall leads to its place there', async () => {
    const plan = planOf('l-shape')
    const shown = await show(<SurveyPlace demos={[]} />, { plan, kitchen: sceneFile('l-shape') })
    const said = [...shown.element.querySelectorAll<HTMLElement>('.findings [data-finding]')]
    expect(said.map((e) => e.dataset['finding']).sort()).toEqual(plan.findings.map((f) => f.id).sort())
    for (const group of shown.element.querySelectorAll('.findings > li'))
      expect(group.querySelector('.basis')?.textContent).toMatch(/\.$/)
    const weights = [...shown.element.querySelectorAll('.finding-group h3')].map(
      (h) => h.textContent?.split(' ')[0],
    )
    expect(weights).toEqual(['Stop', 'Ask', 'Mind', 'Note'].filter((w) => weights.includes(w)))
    const placed = plan.findings.filter((f) => f.where !== null).length
    const links = [...shown.element.querySelectorAll('.findings a[href^="#paper"]')].map((a) =>
      a.getAttribute('href'),
    )
    expect(links).toHaveLength(placed)
    for (const link of links) expect(link).toMatch(/^#paper\/wall:[a-d]\/[^/]+$/)
    await shown.close()
  })

  test('what was found stands above the files, and what can hurt someone above the rest of its weight', async () => {
    const plan = planOf('l-shape')
    const shown = await show(<SurveyPlace demos={[]} />, { plan, kitchen: sceneFile('l-shape') })
    const headings = [...shown.element.querySelectorAll('h1, h2')].map((h) => h.textContent)
    expect(headings.indexOf('Found in Mill Lane')).toBe(1)
    expect(headings.indexOf('Kitchen files')).toBeGreaterThan(1)
    const asks = [...shown.element.querySelectorAll('.finding-group')].find((g) =>
      g.querySelector('h3')?.textContent?.startsWith('Ask'),
    )
    const hurts = [...(asks?.querySelectorAll('h4') ?? [])].map((h) => h.querySelector('.hurts') !== null)
    expect(hurts).toContain(true)
    expect(hurts).toContain(false)
    expect(hurts).toEqual([...hurts].sort((a, b) => Number(b) - Number(a)))
    await shown.close()
  })

  test('the small plan names every wall, and leads to those that have a sheet', async () => {
    const plan = planOf('l-shape')
    const shown = await show(<SurveyPlace demos={[]} />, { plan, kitchen: sceneFile('l-shape') })
    const names = [...shown.element.querySelectorAll('.room-plan text')].map((t) => t.textContent)
    expect(names).toEqual(['Hall partition', 'Garden wall', 'Dining wall', 'Side wall'])
    const links = [...shown.element.querySelectorAll('.room-plan a')].map((a) => a.getAttribute('href'))
    expect(links).toEqual(['#paper/wall:a', '#paper/wall:b'])
    await shown.close()
  })

  test('no order: each clash and each way out is told', async () => {
    const outcome = outcomeOf('no-order')
    if (outcome.kind !== 'no-order') throw new Error(outcome.kind)
    const { noPlan } = outcome
    const shown = await show(<SurveyPlace demos={[]} />, { noPlan, kitchen: sceneFile('no-order') })
    expect(shown.element.querySelectorAll('.clash h3')).toHaveLength(noPlan.conflicts.length + 1)
    expect(shown.text()).toContain('Give up “check after worktop”')
    expect(shown.text()).not.toMatch(/\[no |undefined/)
    await shown.close()
  })

  test('an empty survey says what to measure first', async () => {
    const shown = await show(<SurveyPlace demos={[]} />)
    await shown.click('Begin your own kitchen')
    expect(shown.store.getState().plan?.name).toBe('My kitchen')
    expect(shown.text()).toContain('What to measure first')
    expect(shown.text()).toContain('One level line round the room')
    await shown.close()
  })

  test('a refusal stands with its place and its mend, beside what is still open', async () => {
    const plan = planOf('l-shape')
    const problems = [
      { kind: 'missing', path: 'walls "a"', message: 'It is missing.', mend: 'Give it.' },
    ] as const
    const shown = await show(<SurveyPlace demos={[]} />, { plan, problems })
    expect(shown.element.querySelector('[role=alert]')?.textContent).toContain('Mill Lane is still open')
    expect(shown.element.querySelector('[role=alert]')?.textContent).toContain('Give it.')
    await shown.close()
  })
})
