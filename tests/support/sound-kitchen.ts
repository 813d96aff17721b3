import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { withEdits } from '../../src/core/kitchen/edit'
import type { Edit } from '../../src/core/plan/types'
import { ROOT } from './root'

/**
 * What has to be settled of the second demo kitchen before nothing speaks against it: both walls traced and proved dead
 * to a depth past every hole, its one doubtful stud found, screws a size longer, a crew that can lift its
 * units, the dishwasher’s socket in the cupboard beside it, and the sheets of hob and hood read.
 */
const SETTLED: readonly Edit[] = [
  ...['a', 'b'].flatMap((wall): Edit[] => [
    { set: `walls.${wall}.traced`, to: 'whole' },
    { set: `walls.${wall}.tracedDepth`, to: 80 },
    { set: `walls.${wall}.provedDead`, to: true },
  ]),
  { set: 'walls.a.studs.a-s9.confirmed', to: 'both-edges' },
  { set: 'fixings.rail-screw.length', to: 60 },
  { set: 'fixings.second-screw.length', to: 90 },
  { set: 'fixings.bracket-screw.length', to: 50 },
  { set: 'crew.people.mate.filter', to: 'man' },
  { set: 'walls.b.accessories.dishwasher-socket.along', to: { at: 1560 } },
  { set: 'walls.b.accessories.dishwasher-socket.standsProud', to: 20 },
  { set: 'appliances.hob-1.clearAbove', to: 650 },
  { set: 'appliances.hob-1.clearFrom', to: 'worktop' },
  { set: 'appliances.hob-1.clearTall', to: 200 },
  { set: 'appliances.hob-1.below', to: 50 },
  { set: 'appliances.hood-1.clearAbove', to: 650 },
  { set: 'appliances.hood-1.clearFrom', to: 'worktop' },
  { set: 'units.base-3.drawers.drawer-top.boxTop', to: 40 },
]

/** A kitchen file a fitter would take on as it is: no stop, no ask. */
export function soundKitchen(): unknown {
  const file: unknown = JSON.parse(readFileSync(join(ROOT, 'scenes/l-shape.dryrun.json'), 'utf8'))
  return withEdits(file, SETTLED)
}
