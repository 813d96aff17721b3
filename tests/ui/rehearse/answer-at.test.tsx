/** Where a finding is answered: a tick of the rehearsal settles nothing, so the step leads to the field that does. */
import { beforeAll, expect, test } from 'vitest'
import { settledBy } from '../../../src/core/plan/settled-by'
import type { Finding } from '../../../src/core/plan/types'
import { StepSlip } from '../../../src/ui/rehearse/StepSlip'
import { addressOfFact } from '../../../src/ui/survey/go-to-fact'
import { planOf, type SceneName, sceneFile } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('l-shape')

beforeAll(async () => {
  await Promise.all([
    import('../../../src/ui/rehearse/StepFindings'),
    import('../../../src/ui/rehearse/WhyAnswer'),
    import('../../../src/ui/rehearse/StageNow'),
  ])
})

const slipOf = async (id: string) => {
  const index = plan.operations.findIndex((o) => o.id === id)
  const operation = plan.operations[index]
  if (operation === undefined) throw new Error(`no operation ${id}`)
  return show(
    <StepSlip plan={plan} operation={operation} index={index} ticked={new Set()} onTick={() => {}} />,
    { plan, kitchen: sceneFile('l-shape'), at: id },
  )
}

test('a hold point leads to the field that settles what stops it, and says that ticks settle nothing', async () => {
  const shown = await slipOf('fix:base-3')
  const answer = shown.element.querySelector('.to-settle .answer-at')
  expect(answer?.textContent).toBe(
    'The answer is put in on the survey: How it was found of the ninth stud from the left of Hall partition.',
  )
  expect(answer?.querySelector('a')?.getAttribute('href')).toBe(addressOfFact('walls.a.studs.a-s9.confirmed'))
  expect(shown.element.querySelector('.checks + .ticks-only')?.textContent).toMatch(
    /for the rehearsal only: nothing is written down, and nothing found is settled/,
  )
  await shown.click(/How it was found of the ninth stud/)
  expect(shown.store.getState().chosen['walls.a.studs']).toBe('a-s9')
  await shown.close()
})

test('what is found at a step says so too, and a note, which asks nothing, does not', async () => {
  const shown = await slipOf('connect:hood-1')
  const items = [...shown.element.querySelectorAll('.step-findings li')]
  expect(items.length).toBeGreaterThan(1)
  for (const item of items) {
    const asks = ['ask', 'stop'].includes(item.getAttribute('data-weight') ?? '')
    expect(item.querySelector('.answer-at') !== null, item.textContent ?? '').toBe(asks)
  }
  await shown.close()
})

const isAsked = ({ weight }: Finding) => weight === 'ask' || weight === 'stop'

test.each(['l-shape', 'galley'] as const satisfies readonly SceneName[])(
  'in %s everything that is asked and can hurt somebody leads to a field of the survey',
  (name) => {
    const asked = planOf(name).findings.filter((f) => isAsked(f) && f.dangerous)
    expect(asked.length).toBeGreaterThan(0)
    const nowhere = asked.filter((f) => !settledBy(f).some((fact) => addressOfFact(fact) !== undefined))
    expect(nowhere.map((f) => f.id)).toEqual([])
  },
)
