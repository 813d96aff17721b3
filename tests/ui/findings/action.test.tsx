import { expect, test } from 'vitest'
import { actionFirst } from '../../../src/ui/findings/action'
import { FindingList } from '../../../src/ui/findings/FindingList'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

const plan = planOf('l-shape')

test('what settles an ask goes before what was found; where nothing does, its first sentence', () => {
  expect(actionFirst('It is not known.', 'Read the sheet.')).toEqual({
    action: 'Read the sheet.',
    rest: 'It is not known.',
  })
  expect(actionFirst('Trace the wall. Bands show where cables should be.', null)).toEqual({
    action: 'Trace the wall.',
    rest: 'Bands show where cables should be.',
  })
})

test('every ask of the list begins with what is to be done, in bold', async () => {
  const shown = await show(<FindingList findings={plan.findings} plan={plan} />, { plan })
  const group = [...shown.element.querySelectorAll('.finding-group')].find((g) =>
    g.querySelector('h3')?.textContent?.startsWith('Ask'),
  )
  const bodies = [...(group?.querySelectorAll('.said') ?? [])]
  expect(bodies.length).toBeGreaterThan(4)
  for (const body of bodies) expect(body.querySelector('p')?.firstElementChild?.tagName).toBe('STRONG')
  await shown.close()
})

test('deep holes are named by their numbers, and the finding leads to its place in the room', async () => {
  const shown = await show(<FindingList findings={plan.findings} plan={plan} />, { plan })
  const item = shown.element.querySelector('[data-finding="hole-past-50:a"]')
  expect(item?.querySelector('strong')?.textContent).toMatch(
    /^Stop before holes 1 and 2 in Hall partition: trace/,
  )
  const links = [...(item?.querySelectorAll('a') ?? [])]
  const inRoom = links.find((a) => a.textContent === 'See it in the room')
  expect(decodeURI(inRoom?.getAttribute('href') ?? '')).toBe('#rehearse/stand-up:tall-1/hole-past-50:a')
  await shown.close()
})

test('what has no place in the room leads nowhere in it', async () => {
  const shown = await show(<FindingList findings={plan.findings} plan={plan} />, { plan })
  const wish = shown.element.querySelector('[data-finding="wish-from-bare-floor:worktop-height"]')
  expect(wish?.textContent).not.toContain('See it in the room')
  await shown.close()
})
