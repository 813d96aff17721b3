import type { HeightValue } from '../../core/plan/types'
import { NEAR, round } from '../agree'
import { type Case, topOf, underside } from '../case'
import type { GivenUnit } from '../given'
import { chosen, ownDemands } from '../height-demands'
import { type Group, groupOf, isCarcass } from '../positions'

/** The heights chosen meet every demand of this kitchen, or the plan says which they do not meet. */
export function checkHeights(c: Case): void {
  const unmet = new Set(c.plan.heights.unmet)
  for (const { id, say, height, min, max } of ownDemands(c)) {
    if (height.value === null || unmet.has(id)) continue
    const low = min?.value ?? Number.NEGATIVE_INFINITY
    const high = max?.value ?? Number.POSITIVE_INFINITY
    if (height.value < low - NEAR) {
      c.refuse('height demand', id, `${say}: ${round(height.value)} is below ${round(low)}`)
    }
    if (height.value > high + NEAR) {
      c.refuse('height demand', id, `${say}: ${round(height.value)} is above ${round(high)}`)
    }
  }
  for (const unit of c.given.units) checkUnit(c, unit)
  checkOwnedUp(c, unmet)
  for (const value of c.plan.heights.values) checkValue(c, value)
  for (const group of ['base', 'wall', 'tall'] as const) checkKnown(c, group)
}

/**
 * A height that rests on something nobody has read or looked up is not known; one that rests on nothing of the kind is.
 * Heights read on the day are known whatever is missing.
 */
function checkKnown(c: Case, group: Group): void {
  if (c.achieved.edges.size > 0) return
  const missing = groupMissing(c, group)
  const everywhere = [
    ...(['base', 'wall', 'tall'] as const).flatMap((g) => groupMissing(c, g)),
    ...c.given.units.filter((u) => isCarcass(u) && u.stands === null).map((u) => `units.${u.id}.stands`),
    // What an appliance needs under the worktop, where nobody has looked it up.
    ...c.given.appliances.flatMap((a) => [a.heightMin, a.workingGap].flatMap((m) => m.missing)),
    ...ownDemands(c)
      .filter((d) => /^(plinth-cover|wish|bay-in|bay-max|bay-out):/.test(d.id))
      .flatMap((d) => [d.min, d.max, ...(d.rests ?? [])].flatMap((m) => m?.missing ?? [])),
  ]
  const product = missing.every((id) => !id.startsWith('floor') && !id.startsWith('walls'))
  for (const { of, height } of c.plan.heights.values) {
    if (!of.startsWith(`${group}-`)) continue
    const unread = missing.filter((id) => !isStoodInFor(c, id))
    if (unread.length > 0 && (height.state === 'known' || (height.state === 'assumed' && !product))) {
      c.refuse('unknown', of, `it is given although ${unread[0] ?? ''} is not known`)
    }
    const used = c.given.units.some((u) => groupOf(u) === group)
    if (used && height.state === 'unknown' && everywhere.length === 0 && ceilingRead(c)) {
      c.refuse('unknown', of, 'it is called unknown although nothing it rests on is')
    }
  }
}

/** A size of a unit, or its feet, for which the plan uses a stated default and says so. */
function isStoodInFor(c: Case, id: string): boolean {
  const [list, name = '', field] = id.split('.')
  const plan = list === 'units' ? c.planUnits.get(name) : undefined
  if (plan === undefined) return false
  if (field === 'feet') return plan.legs.some((leg) => leg.floor.state === 'assumed')
  const sizes: Readonly<Record<string, string>> = {
    width: plan.width.state,
    height: plan.height.state,
    depth: plan.depth.state,
  }
  return field !== undefined && sizes[field] === 'assumed'
}

/** Facts that the heights of a group surely rest on and that are not known. */
function groupMissing(c: Case, group: Group): readonly string[] {
  const kinds = ['leg-reach', 'shim-floor', ...(group === 'base' ? ['bay-in', 'worktop-thickness'] : [])]
  const about = (id: string): boolean => {
    const unit = c.units.get(id.split(':')[1]?.split('.')[0] ?? '')?.unit
    return unit === undefined ? group === 'base' : groupOf(unit) === group
  }
  const limits = ownDemands(c)
    .filter((d) => kinds.some((kind) => d.id.startsWith(`${kind}:`)) && about(d.id))
    .flatMap((d) => [d.min, d.max, ...(d.rests ?? [])].flatMap((m) => m?.missing ?? []))
  const own = c.given.units.filter((u) => groupOf(u) === group)
  const heights = own.flatMap((u) => u.height.missing)
  const feet = own.filter((u) => u.stands === 'legs' && u.feet.length === 0).map((u) => `units.${u.id}.feet`)
  return [...limits, ...heights, ...feet]
}

function ceilingRead(c: Case): boolean {
  const { readings } = c.levels.ceiling
  const placed = [...c.room.frames.values()].every((frame) => frame.placed)
  return (
    placed &&
    readings.length > 0 &&
    readings.length === c.given.ceiling.length &&
    readings.every((r) => r.z.value !== null)
  )
}

/** A unit stands or hangs at the height of its group: by its underside, or by its top, or where it was read on the day. */
function checkUnit(c: Case, unit: GivenUnit): void {
  // The space for an appliance goes with the base units it stands among.
  const group = groupOf(unit) ?? 'base'
  if (!isCarcass(unit) && chosen(c, 'base-underside').value === null) return
  const own = underside(c, unit.id).value
  if (own === null) return
  const top = topOf(c, unit).value
  const achieved = c.achieved.edges.get(unit.id)
  const read = achieved === undefined ? null : achieved.edge === 'underside' ? own : top
  const onLine = (a: number | null, b: number | null | undefined): boolean =>
    a !== null && b !== null && b !== undefined && Math.abs(a - b) <= NEAR
  if (achieved !== undefined && !onLine(read, achieved.level.value)) {
    c.refuse('height', unit.id, 'it was read at another height on the day')
  }
  const grouped =
    onLine(own, chosen(c, `${group}-underside`).value) || onLine(top, chosen(c, `${group}-top`).value)
  if (achieved === undefined && !grouped) {
    c.refuse('height', unit.id, `its underside ${own} does not go with the ${group} heights chosen`)
  }
}

/** Demands the plan lists itself are met too, or owned up to; and what is not met stands among the findings. */
function checkOwnedUp(c: Case, unmet: ReadonlySet<string>): void {
  const value = (of: string): number | null => {
    if (of === 'line') return 0
    return of.startsWith('unit:') ? underside(c, of.slice('unit:'.length)).value : chosen(c, of).value
  }
  for (const demand of c.plan.heights.demands) {
    const from = value(demand.from)
    const to = value(demand.to)
    if (!demand.hard || unmet.has(demand.id) || from === null || to === null) continue
    const min = demand.min?.state === 'unknown' ? undefined : demand.min?.value
    const max = demand.max?.state === 'unknown' ? undefined : demand.max?.value
    if ((min !== undefined && to - from < min - NEAR) || (max !== undefined && to - from > max + NEAR)) {
      c.refuse('height demand', demand.id, 'the heights do not meet it and the plan does not say so')
    }
  }
  const listed = new Map(c.plan.heights.demands.map((d) => [d.id, d.hard]))
  for (const id of unmet) {
    if (!listed.has(id))
      c.refuse('height demand', id, 'it is said not to be met and is no demand of the plan')
  }
  const hardUnmet = [...unmet].some((id) => listed.get(id) === true)
  if (hardUnmet && !c.plan.findings.some((f) => f.rule === 'heights-clash' && f.weight === 'stop')) {
    c.refuse('height demand', 'unmet', 'demands are not met and no finding stops the work for it')
  }
  if (c.plan.heights.conflicts.length > 0 && unmet.size === 0) {
    c.refuse('height demand', 'conflicts', 'demands clash, and yet all are said to be met')
  }
}

function checkValue(c: Case, { of, height, lowest, highest }: HeightValue): void {
  if (height.state === 'unknown') return
  const below = lowest !== null && height.value < lowest - NEAR
  const above = highest !== null && height.value > highest + NEAR
  if (below || above) c.refuse('height', of, `${height.value} lies outside the room it is said to have`)
}
