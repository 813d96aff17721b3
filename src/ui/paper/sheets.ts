import type { Plan } from '../../core/plan/types'
import { wallName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { unitsOn } from './wall/pen'

export interface SheetName {
  readonly id: string
  readonly name: string
}

export const wallSheet = (wall: string): string => `wall:${wall}`

/** The address of a finding on the sheet of its wall, after `#paper/`. */
export const findingPlace = (wall: string, finding: string): string =>
  `${wallSheet(wall)}/${encodeURI(finding)}`

/** The words of a finding on the sheet of its wall: `#paper/wall:a/<finding>` leads to its mark, `…/words` to its words. */
export const findingWords = (wall: string, finding: string): string => `${findingPlace(wall, finding)}/words`

export interface Chosen {
  readonly sheet: string
  readonly finding: string | null
  readonly isWords: boolean
}

/** What an address asks for: a sheet, and on it a finding's mark or its words. */
export function chosenIn(address: string | null): Chosen {
  const [sheet = '', finding, end] = (address ?? '').split('/')
  return { sheet, finding: finding ?? null, isWords: end === 'words' }
}

/** The sheets of a plan, in the order they are printed: what to know first, the heights, each wall with work or a finding on it, the work. */
export function sheetsOf(plan: Plan): readonly SheetName[] {
  const busy = plan.walls.filter(
    (w) =>
      unitsOn(plan, w.wall).length > 0 ||
      plan.holes.some((h) => h.wall === w.wall) ||
      plan.findings.some((f) => f.where?.wall === w.wall),
  )
  const walls = busy.length > 0 ? busy : plan.walls
  return [
    { id: 'first', name: 'First sheet' },
    ...walls.map((w) => ({ id: wallSheet(w.wall), name: upperFirst(wallName(w.wall, plan)) })),
    ...(plan.heights.values.length > 0 ? [{ id: 'heights', name: 'Heights' }] : []),
    ...(plan.operations.length > 0 ? [{ id: 'work', name: 'Order of work' }] : []),
  ]
}
