import { hasValue } from '../figure'
import type { NamedFigure, UnitPlan } from '../plan/types'
import { shown } from './make'

type Side = 'left' | 'right'

interface Edge {
  /** The figure's name: its unit and side. */
  readonly name: string
  readonly side: Side
  readonly of: UnitPlan
}

/** Sides no further apart than this are one mark, mm. */
const ONE_MARK = 0.05

/**
 * The marks of a wall from left to right, each place once: "right side of tall unit 1, left side of base unit 1 and wall
 * unit 1". A mark is named by the first of its sides in order of their names, so that the same mark keeps its name.
 */
export function sharedMarks(units: readonly UnitPlan[], wall: string): readonly NamedFigure[] {
  const edges = units.flatMap((of): Edge[] => [
    { name: `${of.unit}.left`, side: 'left', of },
    { name: `${of.unit}.right`, side: 'right', of },
  ])
  return atOnePlace(edges).map((group) => {
    const [first] = [...group].sort((a, b) => (a.name < b.name ? -1 : 1)) as [Edge]
    return shown(first.name, first.of[first.side], 'mark', { what: sidesOf(group), wall })
  })
}

function atOnePlace(edges: readonly Edge[]): readonly (readonly Edge[])[] {
  const placeOf = ({ of, side }: Edge) => (hasValue(of[side]) ? of[side].value : null)
  const known = edges
    .flatMap((edge) => {
      const at = placeOf(edge)
      return at === null ? [] : [{ edge, at }]
    })
    .sort((a, b) => a.at - b.at || (a.edge.name < b.edge.name ? -1 : 1))
  const groups: { readonly at: number; readonly edges: Edge[] }[] = []
  for (const { edge, at } of known) {
    const last = groups.at(-1)
    if (last !== undefined && at - last.at <= ONE_MARK) last.edges.push(edge)
    else groups.push({ at, edges: [edge] })
  }
  const unknown = edges.filter((edge) => placeOf(edge) === null).map((edge) => [edge])
  return [...groups.map((group) => inOrder(group.edges, edges)), ...unknown]
}

/** As the units stand along the wall. */
function inOrder(some: readonly Edge[], all: readonly Edge[]): readonly Edge[] {
  return all.filter((edge) => some.includes(edge))
}

/** What ends at a mark first, then what begins there. */
function sidesOf(group: readonly Edge[]): string {
  return (['right', 'left'] as const)
    .flatMap((side) => {
      const names = group.filter((edge) => edge.side === side).map(({ of }) => of.name)
      return names.length === 0 ? [] : [`${side} side of ${joined(names)}`]
    })
    .join(', ')
}

function joined(names: readonly string[]): string {
  const last = names.at(-1) ?? ''
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`
}
