import type { Kitchen } from '../kitchen/schema'
import { eachOnce } from './each-once'

type Box = Kitchen['boxes'][number]

const KIND_WORDS: Readonly<Record<Box['kind'], string>> = {
  boxing: 'boxing',
  beam: 'beam',
  chimney: 'chimney breast',
  radiator: 'radiator',
  step: 'step',
  skirting: 'skirting',
  coving: 'coving',
  'picture-rail': 'picture rail',
  pipe: 'pipe',
  light: 'light fitting',
  boiler: 'boiler',
  other: 'fixture',
}

/** What everything fixed and box-shaped is called, by its id: "the boxing on Garden wall". No two are called alike. */
export function boxNames({ boxes, walls }: Pick<Kitchen, 'boxes' | 'walls'>): ReadonlyMap<string, string> {
  const wallOf = (id: string) => walls.find((wall) => wall.id === id)?.name ?? `wall ${id}`
  const names = eachOnce(boxes.map(({ kind, wall }) => `the ${KIND_WORDS[kind]} on ${wallOf(wall)}`))
  return new Map(boxes.map(({ id }, i) => [id, names[i] as string]))
}
