import type { Kitchen } from '../kitchen/schema'
import { alongFromLeft } from '../survey/along'
import { unitNames } from '../units/names'
import { applianceName, partName, worktopName } from '../units/part-name'
import { studName } from '../units/stud-name'
import type { FactNames } from '../words/fact-name'

/** Names of everything in a kitchen that has one, for facts said in words. */
export function namesOf(kitchen: Kitchen): FactNames {
  const units = unitNames(kitchen)
  return {
    unit: (id) => units.get(id) ?? id,
    wall: (id) => kitchen.walls.find((wall) => wall.id === id)?.name ?? `wall ${id}`,
    thing: (list, id, wall) => thingName(kitchen, list, id, wall),
  }
}

function thingName(kitchen: Kitchen, list: string, id: string, wallId: string | null): string | undefined {
  const wall = kitchen.walls.find((one) => one.id === wallId)
  switch (list) {
    case 'studs': {
      if (wall === undefined) return undefined
      const places = wall.studs.map((stud) => ({ id: stud.id, centre: alongFromLeft(wall, stud.centre) }))
      return `the ${studName(places, id)}`
    }
    case 'accessories':
      return wall?.accessories.find((one) => one.id === id)?.kind.replace('-', ' ')
    case 'appliances': {
      const one = kitchen.appliances.find((appliance) => appliance.id === id)
      return one === undefined ? undefined : applianceName(kitchen, one)
    }
    case 'worktops': {
      const top = kitchen.worktops.find((worktop) => worktop.id === id)
      return top === undefined ? undefined : worktopName(kitchen, top)
    }
    case 'finishing': {
      const part = kitchen.finishing.find((one) => one.id === id)
      return part === undefined ? undefined : partName(kitchen, part)
    }
    case 'fixings':
      return kitchen.fixings.find((one) => one.id === id)?.name
    case 'people':
      return kitchen.crew.people.find((one) => one.id === id)?.name
    default:
      return undefined
  }
}
