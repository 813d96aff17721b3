import { isRecord, type JsonPath, listed, type Problem, placeIn, shown } from '../problem'
import type { Kitchen } from '../schema'
import { objectsIn } from './objects-in'

/** Lists whose ids must differ from each other's too: operations are named by the things they act on. */
const NAMING_OPERATIONS = ['walls', 'units', 'rails', 'appliances', 'finishing', 'worktops'] as const

interface Named {
  readonly id: string
  readonly path: JsonPath
}

function idsIn(list: readonly unknown[], path: JsonPath): readonly Named[] {
  return list.flatMap((item, index) =>
    isRecord(item) && typeof item['id'] === 'string' ? [{ id: item['id'], path: [...path, index] }] : [],
  )
}

function grouped(named: readonly Named[]): readonly (readonly [string, readonly Named[]])[] {
  const groups = new Map<string, Named[]>()
  for (const one of named) {
    const group = groups.get(one.id)
    if (group) group.push(one)
    else groups.set(one.id, [one])
  }
  return [...groups].filter(([, group]) => group.length > 1)
}

function withinLists(kitchen: Kitchen): readonly Problem[] {
  return objectsIn(kitchen).flatMap(({ value, path }) =>
    Array.isArray(value)
      ? grouped(idsIn(value, [])).map(([id, group]): Problem => {
          const places = group.map((one) => `#${Number(one.path.at(-1)) + 1}`).join(', ')
          const message = `The id ${shown(id)} stands ${group.length} times in this list (${places}, counted from 1).`
          const mend = 'Give all but one of them another id, and look at who refers to it.'
          return { kind: 'repeated-id', path: placeIn(kitchen, path()), message, mend }
        })
      : [],
  )
}

function acrossLists(kitchen: Kitchen): readonly Problem[] {
  const all = NAMING_OPERATIONS.flatMap((list) => idsIn(kitchen[list], [list]))
  return grouped(all).flatMap(([id, group]): Problem[] => {
    const lists = [...new Set(group.map((one) => String(one.path[0])))]
    if (lists.length === 1) return []
    const message = `The id ${shown(id)} stands in more than one list: ${listed(lists)}. Steps of the work are named by these ids.`
    const mend = 'Give each of them an id of its own, and look at who refers to it.'
    const onScreen = 'Give each of them a mark of its own.'
    return [{ kind: 'repeated-id', path: placeIn(kitchen, group[1]?.path ?? []), message, mend, onScreen }]
  })
}

/** Ids used twice within any list, or across the lists whose things name the steps of the work. */
export function repeatedIds(kitchen: Kitchen): readonly Problem[] {
  return [...withinLists(kitchen), ...acrossLists(kitchen)]
}
