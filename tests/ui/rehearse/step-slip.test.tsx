import { beforeAll, expect, test } from 'vitest'
import { StepSlip } from '../../../src/ui/rehearse/StepSlip'
import { words } from '../../../src/ui/words'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('l-shape')

const slip = { ticked: new Set<string>(), onTick: () => {} }

/** As when the page has had time: what a tap needs has been fetched. */
beforeAll(async () => {
  await Promise.all([
    import('../../../src/ui/rehearse/StandsOn'),
    import('../../../src/ui/rehearse/WhyAnswer'),
    import('../../../src/ui/rehearse/StepFindings'),
    import('../../../src/ui/rehearse/StageNow'),
  ])
})

test('every operation has a slip with its title, its words and its crew, and no word is missing', async () => {
  for (const [index, operation] of plan.operations.entries()) {
    const shown = await show(<StepSlip plan={plan} operation={operation} index={index} {...slip} />, { plan })
    expect(shown.element.querySelectorAll('h1')).toHaveLength(1)
    expect(shown.text(), operation.id).not.toMatch(/\[no |undefined|NaN|\[object/)
    expect(shown.text(), operation.id).toContain('minutes by common practice.')
    expect(shown.element.querySelectorAll('.does li'), operation.id).toHaveLength(operation.does.length)
    // A single one stands whole in the line above; of more than one each stands in the list.
    const listed = shown.element.querySelectorAll('.caution, div.hurt-line')
    expect(listed, operation.id).toHaveLength(operation.cautions.length)
    for (const { say } of operation.cautions)
      expect(shown.text(), operation.id).toContain(words(say).replaceAll(/\s+/g, ' '))
    await shown.close()
  }
})

const slipOf = async (id: string) => {
  const index = plan.operations.findIndex((o) => o.id === id)
  const operation = plan.operations[index]
  if (operation === undefined) throw new Error(`no operation ${id}`)
  return show(<StepSlip plan={plan} operation={operation} index={index} {...slip} />, { plan, at: id })
}

test('a figure tells on a tap what it stands on, and which facts it came from', async () => {
  const shown = await slipOf('hang:wall-3')
  expect(shown.text()).not.toContain('Comes from')
  await shown.click(/underside of wall unit 3/)
  const stands = () => shown.element.querySelector('.stands-on')?.textContent
  expect(stands()).toMatch(
    /Geometry: .+Comes from: what the chosen heights rest on: many facts, above all of the/,
  )
  expect(stands()).not.toMatch(/\d+ (facts|of the)/)
  await shown.click(/wall unit 3 without doors/)
  expect(stands()).toMatch(/Right to ± .+ kg\.Assumed: nobody has confirmed it yet\.Comes from: /)
  await shown.close()
})

test('an assumed figure says so, to the eye and to the ear', async () => {
  const shown = await slipOf('hang:wall-3')
  const button = shown.element.querySelector('.assumed')?.closest('button')
  expect(button?.querySelector('.how')?.textContent).toContain('(assumed)')
  await shown.close()
})

test('“Why now?” gives the reasons, each with its strength and basis, and leads to the other operation', async () => {
  const shown = await slipOf('level:wall-3')
  await shown.click('Why now?')
  expect(shown.text()).toContain('It comes after')
  expect(shown.text()).toMatch(/A must\./)
  await shown.click(/Hang wall unit 3$/)
  expect(shown.store.getState().at).toBe('hang:wall-3')
  await shown.close()
})

test('“Could this come first?” says what holds it', async () => {
  const shown = await slipOf('level:wall-3')
  await shown.click('Could this come first?')
  expect(shown.text()).toMatch(/No: \d+ steps must come before it\./)
  expect(shown.text()).toContain('What holds it')
  await shown.close()
})

test('a preferred reason says what the other way costs', async () => {
  const preferred = plan.reasons.find((r) => !r.hard && r.cost > 0 && !plan.order.setAside.includes(r.id))
  const shown = await slipOf(preferred?.after ?? '')
  await shown.click('Why now?')
  for (
    let more = /^\d+ more$/;
    [...shown.element.querySelectorAll('button')].some((b) => more.test(b.textContent ?? ''));
  ) {
    await shown.click(more)
  }
  expect(shown.text()).toContain(`the other way costs about ${Math.round(preferred?.cost ?? 0)} min more`)
  await shown.close()
})

test('every hole on the wall stands under its height', async () => {
  const operation = plan.operations.find((o) => o.holes.length > 2)
  const shown = await slipOf(operation?.id ?? '')
  expect(shown.element.querySelectorAll('.holes-on-wall li')).toHaveLength(operation?.holes.length ?? 0)
  await shown.close()
})

test('where tall units, wall units, bases, worktops and fronts begin, why the one comes before the other stands under the title', async () => {
  const stageAt = async (id: string) => {
    const shown = await slipOf(id)
    const said = shown.element.querySelector('h1 + .why-stage')?.textContent ?? null
    await shown.close()
    return said
  }
  expect(await stageAt('stand-up:tall-1')).toMatch(
    /^Why tall units before wall units: Tall unit 1 first: the top of wall unit 1, .+ Either could come first; this is reckoned to save about 30 min, one of 4 such reasons\.$/,
  )
  for (const id of ['drill-rail:rail-1', 'hang:wall-1'])
    expect(await stageAt(id)).toMatch(/^Why wall units after tall units: .+Either could come first/)
  expect(await stageAt('place:corner-1')).toMatch(
    /^Why base units after wall units: Wall unit 1, .+ is lifted without reaching over base unit 1, .+ about 20 min, one of 4/,
  )
  expect(await stageAt('worktop:worktop-a')).toMatch(
    /^Why worktops after base units: Base tops are proved at .+ before worktop 1 covers them\. A must\.$/,
  )
  expect(await stageAt('hang-fronts:base-5')).toMatch(
    /^Why doors and drawers after worktops: Fronts of base unit 1 are marked by worktop 1, .+Either could come first/,
  )
  expect(await stageAt('hang:wall-2')).toBeNull()
})
