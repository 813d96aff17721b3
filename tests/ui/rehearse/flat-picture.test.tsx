import { expect, test } from 'vitest'
import { FlatPicture } from '../../../src/ui/rehearse/FlatPicture'
import { middleOf } from '../../../src/ui/rehearse/middle-of'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('l-shape')
const whole = { left: 0, right: 3900, bottom: -1000, top: 1400 }
const operation = (id: string) => {
  const found = plan.operations.find((o) => o.id === id)
  if (found === undefined) throw new Error(`no operation ${id}`)
  return found
}

test('the drawing is pushed to the holes of a step, or to its unit, or it stands in the middle', () => {
  const rail = plan.holes.filter((h) => operation('drill-rail:rail-2').holes.includes(h.id))
  const alongs = rail.map((h) => (h.along.state === 'unknown' ? Number.NaN : h.along.value))
  expect(middleOf(plan, operation('drill-rail:rail-2'), 'a', whole).along).toBe(
    (Math.min(...alongs) + Math.max(...alongs)) / 2,
  )
  // Tall unit 1 stands from 40 to 640.
  expect(middleOf(plan, operation('level:tall-1'), 'a', whole).along).toBe(340)
  expect(middleOf(plan, operation('trace:a'), 'a', whole)).toEqual({ along: 1950, height: 200 })
})

test('it can be reached and pushed with the keys', async () => {
  const shown = await show(<FlatPicture plan={plan} operation={operation('hang:wall-1')} />, { plan })
  const box = shown.element.querySelector<HTMLElement>('.flat')
  expect(box?.tabIndex).toBe(0)
  expect(box?.getAttribute('aria-label')).toBe('Drawing of Hall partition')
  await shown.close()
})
