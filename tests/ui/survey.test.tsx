import { describe, expect, test } from 'vitest'
import { SurveyPlace } from '../../src/ui/survey/SurveyPlace'
import { outcomeOf, planOf, sceneFile } from '../support/kitchens'
import { show } from '../support/render'

describe('Survey and delivery', () => {
  test('findings stand by weight, each with its basis; one on a wall leads to that wall', async () => {
    const plan = planOf('l-shape')
    const shown = await show(<SurveyPlace demos={[]} />, { plan, kitchen: sceneFile('l-shape') })
    expect(shown.element.querySelectorAll('.findings > li')).toHaveLength(plan.findings.length)
    const weights = [...shown.element.querySelectorAll('.finding-group h3')].map(
      (h) => h.textContent?.split(' ')[0],
    )
    expect(weights).toEqual(['Stop', 'Ask', 'Mind', 'Note'].filter((w) => weights.includes(w)))
    const placed = plan.findings.filter((f) => f.where !== null).length
    const links = [...shown.element.querySelectorAll('.findings a')].map((a) => a.getAttribute('href'))
    expect(links).toHaveLength(placed)
    for (const link of links) expect(link).toMatch(/^#paper\/wall:[a-d]$/)
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
    await shown.click('Start an empty survey')
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
