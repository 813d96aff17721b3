import { agree } from '../agree'
import { type Case, wallOf } from '../case'
import { hookEdge } from '../holes/fixing-heights'
import { isRefused } from '../holes/hole'
import { railEnds, railStuds } from '../holes/in-a-row'
import { isKnown, less } from '../measure'
import { fromLeft } from '../room'
import { isStudWall } from '../wall-make-up'

/** Every rail runs inside its units, at their hook-on edge, fixed at every usable stud behind it. */
export function checkRails(c: Case): void {
  for (const rail of c.given.rails) {
    const plan = c.plan.rails.find((r) => r.rail === rail.id)
    if (rail.units.length === 0) continue
    if (plan === undefined) {
      c.refuse('rail', rail.id, 'the plan leaves it out')
      continue
    }
    const { from, to } = railEnds(c, rail)
    agree(c.refuse, 'rail', `${rail.id} from`, plan.from, from)
    agree(c.refuse, 'rail', `${rail.id} to`, plan.to, to)
    const same = plan.wall === rail.wall && [...plan.units].sort().join() === [...rail.units].sort().join()
    if (!same) c.refuse('rail', rail.id, 'its wall or units are not those of the file')
    const edges = rail.units.flatMap((id) => c.units.get(id)?.unit ?? []).map((u) => hookEdge(c, u))
    // One unit whose hook-on edge is not known leaves that of the rail open.
    const open = plan.edge.state === 'unknown' && edges.some((edge) => !isKnown(edge))
    for (const id of rail.units) {
      const unit = c.units.get(id)?.unit
      if (unit === undefined || open) continue
      agree(c.refuse, 'rail', `${rail.id} edge at ${id}`, plan.edge, hookEdge(c, unit))
    }
    const wall = wallOf(c, rail.wall)
    if (wall === undefined || !isStudWall(wall)) continue
    const studs = railStuds(c, rail)
    const unit = c.units.get(rail.units[0] ?? '')?.unit
    const height = unit === undefined ? null : less(hookEdge(c, unit), unit.hanging.plateHoleBelow)
    const free = studs.filter(
      (s) => height === null || !isRefused(c, wall.id, fromLeft(wall, s.centre), height),
    )
    const drilled = c.plan.holes.filter((h) => h.purpose === 'rail' && h.verdict !== 'refused')
    const inUse = studs.filter((s) => drilled.some((h) => h.stud === s.id))
    const lists = [inUse, free, studs].map((list) => list.map((s) => s.id))
    if (!lists.some((list) => sameSet(plan.studs, list))) {
      c.refuse(
        'rail',
        rail.id,
        `the studs it can be fixed to are ${free.map((s) => s.id).join(', ') || 'none'}`,
      )
    }
  }
  for (const rail of c.plan.rails) {
    if (!c.given.rails.some((r) => r.id === rail.rail))
      c.refuse('rail', rail.rail, 'the kitchen has no such rail')
  }
}

function sameSet(one: readonly string[], other: readonly string[]): boolean {
  return one.toSorted().join() === other.toSorted().join()
}
