import { hasValue } from '../figure'
import type { Accessory, AlongPosition, Service, Wall } from '../kitchen/schema'
import { alongFromLeft } from '../survey/along'
import { ordinal } from '../units/stud-name'

const ACCESSORIES: Readonly<Record<Accessory['kind'], string>> = {
  socket: 'socket',
  switch: 'switch',
  spur: 'fused spur',
  'cooker-outlet': 'cooker outlet',
  isolator: 'isolator',
  light: 'light',
  aerial: 'aerial outlet',
  data: 'data outlet',
  'consumer-unit': 'consumer unit',
  other: 'outlet',
}
const SERVICES: Readonly<Record<Service['kind'], string>> = {
  cable: 'cable',
  'water-cold': 'cold water pipe',
  'water-hot': 'hot water pipe',
  heating: 'heating pipe',
  gas: 'gas pipe',
  waste: 'waste pipe',
  duct: 'duct',
  'not-known': 'pipe or cable',
}

interface OnWall {
  readonly id: string
  readonly word: string
  readonly face: 'room' | 'other'
  readonly at: AlongPosition | undefined
}

function thingsOn(wall: Wall): readonly OnWall[] {
  return [
    ...wall.accessories.map(({ id, kind, face, along }) => ({
      id,
      word: ACCESSORIES[kind],
      face,
      at: along,
    })),
    ...wall.services.map(({ id, kind, face, points }) => ({
      id,
      word: SERVICES[kind],
      face,
      at: points[0]?.along,
    })),
    ...wall.lintels.map(({ id, left }) => ({ id, word: 'lintel', face: 'room' as const, at: left })),
    ...wall.openings.map(({ id, kind, left }) => ({ id, word: kind, face: 'room' as const, at: left })),
  ]
}

/**
 * What a thing on or in a wall is called: "the socket"; where there are several alike, "the second socket from the left",
 * as seen from the room. One whose place is not known is called by its id in quotes, as it stands in the file.
 */
export function nameOnWall(wall: Wall, id: string): string {
  const all = thingsOn(wall)
  const own = all.find((thing) => thing.id === id)
  if (own === undefined) return id
  const where = own.face === 'other' ? ' on the other face' : ''
  const alike = all.filter(({ word, face }) => word === own.word && face === own.face)
  if (alike.length === 1) return `the ${own.word}${where}`
  const placed = alike
    .flatMap((thing) => {
      const along = thing.at === undefined ? undefined : alongFromLeft(wall, thing.at)
      return along !== undefined && hasValue(along) ? [{ id: thing.id, at: along.value }] : []
    })
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
  const number = placed.findIndex((thing) => thing.id === id) + 1
  return number === 0
    ? `the ${own.word} “${id}”${where}`
    : `the ${ordinal(number)} ${own.word} from the left${where}`
}
