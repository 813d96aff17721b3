import type { InputId } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { unitNames } from './names'
import { applianceSaid, nameSaid, partName, worktopName } from './part-name'

/** Something on the list that was looked for and is not there. */
export interface NotCome {
  readonly list: 'units' | 'appliances' | 'finishing' | 'worktops' | 'rails' | 'fixings'
  readonly id: string
  /** As it is said within a sentence. */
  readonly name: string
  readonly fact: InputId
}

interface Listed {
  readonly id: string
  readonly delivered: boolean | null
}

/** What has not come, in the order of the lists. What nobody has looked for yet is not among it, nor is a mere space. */
export function notCome(kitchen: Kitchen): readonly NotCome[] {
  const names = unitNames(kitchen)
  const absent = <T extends Listed>(
    list: NotCome['list'],
    things: readonly T[],
    name: (thing: T) => string,
  ): readonly NotCome[] =>
    things
      .filter(({ delivered }) => delivered === false)
      .map((thing) => ({
        list,
        id: thing.id,
        name: name(thing),
        fact: factId(list, thing.id, 'delivered'),
      }))
  const units = kitchen.units.filter(({ kind }) => kind !== 'appliance-space')
  return [
    ...absent('units', units, ({ id }) => names.get(id) ?? id),
    ...absent('appliances', kitchen.appliances, applianceSaid),
    ...absent('finishing', kitchen.finishing, (part) => nameSaid(partName(kitchen, part))),
    ...absent('worktops', kitchen.worktops, (top) => nameSaid(worktopName(kitchen, top))),
    ...absent('rails', kitchen.rails, ({ wall }) => `the hanging rail for ${wallSaid(kitchen, wall)}`),
    ...absent('fixings', kitchen.fixings, ({ name, kind }) => name ?? `the ${kind.replaceAll('-', ' ')}`),
  ]
}

function wallSaid({ walls }: Kitchen, id: string): string {
  return walls.find((wall) => wall.id === id)?.name ?? `wall ${id}`
}
