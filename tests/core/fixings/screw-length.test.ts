import { expect, test } from 'vitest'
import { type Figure, known, unknown } from '../../../src/core/figure'
import { depthOfHole, lengthNeeded, pilotDepth } from '../../../src/core/fixings/screw-length'
import { plain } from '../../support/fixed-wall'

const mm = (value: number, pm = 0): Figure => known(value, pm, 'mm', [])

// Worked by hand, stand-off + layers in front + embedment:
//   screw through 20 rail and 12.5 board into a stud, 35 held: 20 + 12.5 + 35 = 67.5
//   dot and dab, rail 18, board 12.5, void 10, plug 50: 18 + 22.5 + 50 = 90.5; void 25, plug 60: 18 + 37.5 + 60 = 115.5
//   (the published range is 90 to 116)
//   tile 10 + adhesive 4 over plaster 12: a plate of 2: 2 + 26 + 40 = 68
test.each([
  ['rail and board into a stud', 20, 12.5, 35, 67.5],
  ['dot and dab, the least', 18, 22.5, 50, 90.5],
  ['dot and dab, the most', 18, 37.5, 60, 115.5],
  ['tiled and plastered brick', 2, 26, 40, 68],
])('%s needs %d + %d + %d = %d', (_, standOff, inFront, embedment, needed) => {
  expect(plain(lengthNeeded(mm(standOff), mm(inFront), mm(embedment)))).toBe(needed)
})

// By hand: a 70 screw through a 20 rail comes 50 past the face; its pilot of 40 behind 12.5 board is 52.5 deep. A 60 screw
// on a 2 plate comes 58; its hole of 55 behind 12 plaster is 67 deep: 67.
test('the tip decides, or the hole drilled for the plug or pilot', () => {
  const wood = { standOff: mm(20), inFront: mm(12.5), holeDepth: mm(30), length: mm(70) }
  expect(plain(depthOfHole(wood))).toBe(50)
  expect(plain(depthOfHole({ ...wood, holeDepth: mm(40) }))).toBe(52.5)
  const plug = { standOff: mm(2), inFront: mm(12), holeDepth: mm(55), length: mm(60) }
  expect(plain(depthOfHole(plug))).toBe(67)
})

test('a pilot nobody has stated is taken as no deeper than the screw, and marked', () => {
  const holeDepth = pilotDepth(unknown('mm', ['fixings.wood.holeDepth']))
  const wood = { standOff: mm(20), inFront: mm(12.5), holeDepth, length: mm(70) }
  expect(depthOfHole(wood)).toMatchObject({ state: 'assumed', value: 50, from: ['fixings.wood.holeDepth'] })
})

test('its precision is that of what decides it', () => {
  const plug = {
    standOff: mm(2),
    inFront: mm(12, 3),
    holeDepth: mm(55, 1),
    length: mm(60),
  }
  expect(depthOfHole(plug)).toMatchObject({ value: 67, pm: 4 })
})

test.each(['standOff', 'inFront', 'holeDepth', 'length'])('without its %s it is not known', (lost) => {
  const plug = { standOff: mm(2), inFront: mm(12), holeDepth: mm(55), length: mm(60) }
  expect(plain(depthOfHole({ ...plug, [lost]: unknown('mm', [lost]) }))).toBe(`lacks ${lost}`)
})
