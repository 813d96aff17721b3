import { expect, test } from 'vitest'
import { SIGNS } from '../../../src/core/operations/signs'
import { PICTURES } from '../../../src/ui/signs/pictures'
import { Sign } from '../../../src/ui/signs/Sign'
import { planOf } from '../../support/kitchens'
import { show } from '../../support/render'

/** ISO 3864: what shape and colour each class has. */
const CLASSES: Readonly<Record<string, { readonly tag: string; readonly color: string }>> = {
  W: { tag: 'path', color: '#f9a800' },
  M: { tag: 'circle', color: '#005387' },
  P: { tag: 'circle', color: '#ffffff' },
  E: { tag: 'path', color: '#237f52' },
  F: { tag: 'path', color: '#9b2423' },
}

test.each(Object.keys(SIGNS))('%s has the shape and colour of its class', async (code) => {
  const shown = await show(<Sign code={code} />)
  const ground = shown.element.querySelector('svg > *')
  expect(ground?.tagName.toLowerCase()).toBe(CLASSES[code.charAt(0)]?.tag)
  expect(ground?.getAttribute('fill')).toBe(CLASSES[code.charAt(0)]?.color)
  await shown.close()
})

test('every sign that stands at a step of the invented kitchens has a picture of its own', () => {
  const codes = (['l-shape', 'one-wall'] as const).flatMap((name) =>
    planOf(name).operations.flatMap((o) => o.cautions.map((c) => c.sign)),
  )
  expect([...new Set(codes)].filter((code) => PICTURES[code] === undefined)).toEqual([])
})
