import { derive, type Figure, hasValue, unknown } from '../figure'
import { finding } from '../holes/finding'
import type { Rail } from '../kitchen/schema'
import { message } from '../message'
import type { Finding, RailPlan } from '../plan/types'
import type { UnitPosition } from '../units/positions'
import type { Drilled } from './drill'
import { agreed, disagreement, holesBelow, hookOnEdge } from './hanging-edge'
import { type Row, rowFixings, spacingOf } from './row-fixings'
import type { WallWork } from './wall-work'

/** A rail keeps this far inside the run of units it carries, so that it cannot be seen past their sides. */
const INSIDE_RUN = 20
/** Hook-on edges nearer together than this are one line. */
const ONE_LINE = 1

export interface RailWork {
  readonly plan: RailPlan
  readonly row: Row
  readonly holes: readonly Drilled[]
  readonly findings: readonly Finding[]
}

/**
 * A rail under its units: from 20 mm inside the left side of the leftmost to 20 mm inside the right side of the
 * rightmost (common practice), its hook-on edge where the hangers of all of them want it.
 */
export function railFixings(
  work: WallWork,
  rail: Rail,
  positions: readonly UnitPosition[],
  topOf: (position: UnitPosition) => Figure,
): RailWork {
  const on = positions.filter((p) => rail.units.includes(p.unit.id) && p.unit.wall === rail.wall)
  const edges = on.map((p) => hookOnEdge(p, topOf(p)))
  const edge = agreed(edges) ?? unknown('mm', [`rails.${rail.id}.units`])
  const below =
    agreed(on.map((p) => p.unit.hanging.plateHoleBelow)) ?? unknown('mm', [`rails.${rail.id}.units`])
  const units = on.map((p) => p.unit.id)
  const called = on.map((p) => p.name).join(', ')
  const row: Row = {
    name: `rail.${rail.id}`,
    purpose: 'rail',
    for: units,
    ...ends(on, rail),
    holeHeight: holesBelow(edge, below),
    standOff: rail.thickness,
    maxSpacing: rail.maxSpacing,
  }
  const holes = rowFixings(work, row)
  const kept = keptOf(holes)
  const studs = kept.flatMap((d) => (d.hole.stud === null ? [] : [d.hole.stud]))
  const plan: RailPlan = { rail: rail.id, wall: rail.wall, units, from: row.from, to: row.to, edge, studs }
  const findings = [
    ...differentEdges(rail, called, edges),
    ...(work.kind === null || !hasValue(row.from) || !hasValue(row.to)
      ? []
      : spans(work, rail, called, row, kept)),
  ]
  return { plan, row, holes, findings }
}

function ends(on: readonly UnitPosition[], rail: Rail): Pick<Row, 'from' | 'to'> {
  const why = 'side of the outermost unit on the rail, 20 mm inside'
  const basis = { kind: 'common-practice', why } as const
  if (on.length === 0) {
    const nowhere = unknown('mm', [`rails.${rail.id}.units`])
    return { from: nowhere, to: nowhere }
  }
  return {
    from: derive(
      'mm',
      basis,
      on.map((p) => p.left),
      (...lefts) => Math.min(...lefts) + INSIDE_RUN,
    ),
    to: derive(
      'mm',
      basis,
      on.map((p) => p.right),
      (...rights) => Math.max(...rights) - INSIDE_RUN,
    ),
  }
}

/** Fixings that may be drilled, from left to right. */
export function keptOf(holes: readonly Drilled[]): readonly Drilled[] {
  return holes
    .filter((d) => d.hole.verdict !== 'refused')
    .sort((a, b) => placeOf(a) - placeOf(b) || (a.hole.id < b.hole.id ? -1 : 1))
}

const placeOf = ({ hole }: Drilled): number => (hasValue(hole.along) ? hole.along.value : 0)

function differentEdges(rail: Rail, units: string, edges: readonly Figure[]): readonly Finding[] {
  const by = disagreement(edges)
  if (by <= ONE_LINE) return []
  return [
    finding({
      rule: 'rail-edges-differ',
      subjects: [rail.id],
      weight: 'stop',
      where: { wall: rail.wall },
      say: message('fixings.rail-edges-differ', { units, by: Math.round(by) }),
      figures: edges,
      basis: { kind: 'geometry', why: 'one rail has one hook-on edge' },
    }),
  ]
}

function spans(
  work: WallWork,
  rail: Rail,
  units: string,
  row: Row,
  kept: readonly Drilled[],
): readonly Finding[] {
  const shared = { subjects: [rail.id], about: [rail.id, ...row.for], where: { wall: rail.wall } }
  if (kept.length < 2) {
    return [
      finding({
        ...shared,
        rule: 'rail-spacing',
        weight: 'stop',
        dangerous: true,
        say: message('fixings.rail-too-few', { units, wall: work.name, count: kept.length }),
        figures: [row.from, row.to],
        from: work.studs.from,
        basis: { kind: 'common-practice', why: 'a rail is held at two places at least' },
        ask: message('fixings.let-timber-in', { wall: work.name }),
      }),
    ]
  }
  return [
    ...tooFarApart(
      work.kind === 'masonry' ? spacingOf(rail.maxSpacing) : rail.maxSpacing,
      units,
      kept,
      shared,
    ),
    ...overhangs(rail, units, row, kept, shared),
  ]
}

type Shared = Pick<Parameters<typeof finding>[0], 'subjects' | 'about' | 'where'>

function tooFarApart(
  maxSpacing: Figure,
  units: string,
  kept: readonly Drilled[],
  shared: Shared,
): readonly Finding[] {
  if (!hasValue(maxSpacing)) return []
  const gaps = kept.slice(1).map((d, i) => gap(kept[i] as Drilled, d))
  const worst = [...gaps].filter(hasValue).sort((a, b) => b.value - a.value)[0]
  if (worst === undefined || worst.value <= maxSpacing.value + worst.pm) return []
  return [
    finding({
      ...shared,
      rule: 'rail-spacing',
      weight: maxSpacing.state === 'known' ? 'stop' : 'ask',
      say: message('fixings.rail-spacing', { units, gap: worst, most: maxSpacing }),
      figures: [worst, maxSpacing],
      basis: maxSpacing.basis,
    }),
  ]
}

function gap(a: Drilled, b: Drilled): Figure {
  return derive(
    'mm',
    { kind: 'geometry', why: 'from one fixing of the rail to the next' },
    [a.hole.along, b.hole.along],
    (left, right) => (right as number) - (left as number),
  )
}

function overhangs(
  rail: Rail,
  units: string,
  row: Row,
  kept: readonly Drilled[],
  shared: Shared,
): readonly Finding[] {
  const { overhang } = rail
  if (!hasValue(overhang)) return []
  const why = 'from the end of the rail to its last fixing'
  const between = (a: Figure, b: Figure) =>
    derive('mm', { kind: 'geometry', why }, [a, b], (from, to) => (to as number) - (from as number))
  const first = between(row.from, (kept[0] as Drilled).hole.along)
  const last = between((kept[kept.length - 1] as Drilled).hole.along, row.to)
  const worst = [first, last].filter(hasValue).sort((a, b) => b.value - a.value)[0]
  if (worst === undefined || worst.value <= overhang.value) return []
  return [
    finding({
      ...shared,
      rule: 'rail-overhang',
      weight: 'warn',
      say: message('fixings.rail-overhang', { units, over: worst, most: overhang }),
      figures: [worst, overhang],
      basis: overhang.basis,
    }),
  ]
}
