import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { withEdits } from '../../../src/core/kitchen/edit'
import { workThrough } from '../../../src/core/plan/entry'
import type { Finding } from '../../../src/core/plan/types'
import { ROOT } from '../../support/root'
import { tryRule } from '../../support/rule-trial'

// The corner of Hall partition and Garden wall, by 900, 1 200 and 1 505 mm: 90.4 degrees. Fronts 560 + 19 = 579 mm out meet
// 579 / tan 45.2 = 575 mm from it. Base unit 4 begins at 640: its filler has to be 65 mm wide.
const lengths = (across: number) =>
  ({
    set: 'walls.a.cornerRight',
    to: {
      angle: { value: 90, pm: 0.1 },
      thisLeg: { value: 900, pm: 0.5 },
      nextLeg: { value: 1200, pm: 0.5 },
      across: { value: across, pm: 0.5 },
    },
  }) as const
const filler = (to: number) => ({ set: 'finishing.filler-corner-b.width', to }) as const

tryRule('corner-off-square', [
  {
    what: 'a filler bought for a square corner in an open one',
    inside: [filler(60)],
    outside: [filler(50)],
    weight: 'warn',
    about: ['base-4', 'filler-corner-b'],
    says: ['65 mm', '50 mm'],
  },
  {
    // Three lengths read to 0.5 are good to 0.095 degrees; the typed angle to 0.1. 1 502 across make it 90.16, 1 503 90.24.
    what: 'a typed angle that its three lengths deny',
    inside: [lengths(1502)],
    outside: [lengths(1503)],
    weight: 'ask',
    about: ['a', 'b'],
    says: ['90.2 ± 0.1°', 'cannot both be right'],
  },
])

const corner = (name: string): unknown =>
  JSON.parse(readFileSync(join(ROOT, `tests/adversarial/kitchens/${name}.dryrun.json`), 'utf8'))

function found(file: unknown): readonly Finding[] {
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error(outcome.kind)
  return outcome.plan.findings.filter(({ rule }) => rule === 'corner-off-square')
}

test.each([
  // 579 / tan 45.5 = 568.98; 579 / tan 44.5 = 589.19. Square: 579.
  ['02-corner-91-drawers', 'open', 568.98],
  ['03-corner-89-drawers', 'closed', 589.19],
])('corner-off-square: where the fronts meet in %s', (name, way, meet) => {
  const [one] = found(corner(name))
  expect(one?.weight).toBe('warn')
  expect(one?.say.key).toBe(`corner-off-square.${way}`)
  for (const at of ['here', 'there'])
    expect(one?.say.values[at]).toMatchObject({ value: expect.closeTo(meet, 1) })
})

test('corner-off-square: fronts that clear one another in a square corner and not in a closed one', () => {
  // Fronts meet at 589.2 mm; base unit b1 at 585 would clear the 579 of a square corner.
  const file = withEdits(corner('03-corner-89-drawers'), [{ set: 'units.base-b1.order.left.at', to: 585 }])
  const clash = found(file).find(({ weight }) => weight === 'stop')
  expect(clash?.about).toContain('base-b1')
  expect(clash?.say.values['over']).toMatchObject({ value: expect.closeTo(4.2, 1) })
})
