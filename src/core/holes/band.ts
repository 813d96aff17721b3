import { type Basis, type Figure, hasValue, type InputId, quantise, sortedIds } from '../figure'
import type { Band } from '../plan/types'

/** One edge of a band: a figure, and how far the edge lies from it. Null: open-ended on that side. */
export type Edge = { readonly at: Figure; readonly off: number } | null

interface BandParts {
  readonly id: string
  readonly wall: string
  readonly kind: Band['kind']
  readonly about: readonly string[]
  readonly face?: Band['face']
  readonly left: Edge
  readonly right: Edge
  readonly bottom: Edge
  readonly top: Edge
  /** Facts it needs beside its edges: a band that lacks one is drawn, but holds up every hole on the wall. */
  readonly rests?: readonly Figure[]
  readonly from?: readonly InputId[]
  readonly lacking?: readonly InputId[]
  /** Precision of what sets the band's width, beside that of its edges. */
  readonly widthPm?: number
  readonly basis: Basis
}

/**
 * A band on a wall, seen from inside. Its precision is that of its least certain edge. An edge that is not known is
 * null, and `unknownBecause` names the facts that would place it; an open-ended edge is null with nothing lacking.
 */
export function band(parts: BandParts): Band {
  const edges = [parts.left, parts.right, parts.bottom, parts.top].filter((edge) => edge !== null)
  const figures = [...edges.map((edge) => edge.at), ...(parts.rests ?? [])]
  const missing = figures.flatMap((f) => (f.state === 'unknown' ? f.missing : []))
  const pms = edges.map((edge) => (hasValue(edge.at) ? edge.at.pm : 0))
  return {
    id: parts.id,
    wall: parts.wall,
    kind: parts.kind,
    about: sortedIds(parts.about),
    face: parts.face ?? 'room',
    left: place(parts.left),
    right: place(parts.right),
    bottom: place(parts.bottom),
    top: place(parts.top),
    pm: quantise(Math.max(0, ...pms) + (parts.widthPm ?? 0)),
    unknownBecause: sortedIds([...missing, ...(parts.lacking ?? [])]),
    from: sortedIds([...figures.flatMap((f) => f.from), ...(parts.from ?? []), ...(parts.lacking ?? [])]),
    basis: parts.basis,
  }
}

function place(edge: Edge): number | null {
  return edge !== null && hasValue(edge.at) ? quantise(edge.at.value + edge.off) : null
}

/** Edges either side of a centre. */
export function around(centre: Figure, half: number): readonly [Edge, Edge] {
  return [
    { at: centre, off: -half },
    { at: centre, off: half },
  ]
}
