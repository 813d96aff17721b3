/** What a voice is given to say: units, signs and fractions as words. */
import { expect, test } from 'vitest'
import galley from '../../scenes/galley.dryrun.json'
import northAmerican from '../../scenes/north-american.dryrun.json'
import { workThrough } from '../../src/core/plan/entry'
import { spoken } from '../../src/core/words/spoken'
import { withWords } from '../../src/core/words/with-words'
import { stepInWords } from '../../src/ui/rehearse/step-text'
import { planOf } from '../support/kitchens'

test.each([
  ['Set it 862 mm above the floor.', 'Set it 862 millimetres above the floor.'],
  ['At most 1 mm.', 'At most 1 millimetre.'],
  [
    'Top of the wall units +1\u202f112 mm from the line.',
    'Top of the wall units 1112 millimetres above the line.',
  ],
  ['Wind until it is −858 mm from the line.', 'Wind until it is 858 millimetres below the line.'],
  ['−3 mm, give or take 1.', '3 millimetres below the line, give or take 1.'],
  ['It came out at −3 mm.', 'It came out at minus 3 millimetres.'],
  ['862 mm ± 2 mm', '862 millimetres give or take 2 millimetres'],
  ['+ is above it, − below.', 'plus is above it, minus below.'],
  [
    'Measure up (+) or down (−), never from the floor.',
    'Measure up, plus, or down, minus, never from the floor.',
  ],
  [
    'Screw: 5 × 50 mm wood screws, 3 mm pilots.',
    'Screw: 5 by 50 millimetre wood screws, 3 millimetre pilots.',
  ],
  ['It weighs 36.3 kg (assumed) stripped.', 'It weighs 36.3 kilograms, assumed, stripped.'],
  ['It weighs 1 kg (assumed).', 'It weighs 1 kilogram, assumed.'],
  ['Over 5 m it may be out by 1 mm.', 'Over 5 metres it may be out by 1 millimetre.'],
  [
    'Turn it 1¼ turns, then ½ turn: 1.25 mm a turn.',
    'Turn it 1 and a quarter turns, then half a turn: 1.25 millimetres a turn.',
  ],
  ['A pull of 250 N at 90°.', 'A pull of 250 newtons at 90 degrees.'],
])('%s', (written, said) => {
  expect(spoken(written)).toBe(said)
})

test('no step of any demo kitchen leaves a sign or a unit to be guessed', () => {
  const more = [galley, northAmerican].map((file) => {
    const outcome = withWords(workThrough(file))
    if (outcome.kind !== 'plan') throw new Error(outcome.kind)
    return outcome.plan
  })
  const said = [planOf('one-wall'), planOf('l-shape'), ...more].flatMap((plan) =>
    plan.operations.flatMap((o) => stepInWords(o).map(({ text }) => spoken(text))),
  )
  expect(said.length).toBeGreaterThan(3000)
  const odd = /[±−×°¼½¾+\u202f\u202f]|\d (mm|kg|min|m|N|A)\b|,,| ,|\(assumed\)|\[no |undefined/
  expect(said.filter((text) => odd.test(text))).toEqual([])
})
