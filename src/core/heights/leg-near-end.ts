import { type Basis, hasValue } from '../figure'
import { message } from '../message'
import { finding } from '../plan/finding'
import type { Finding, LegPlan, UnitId } from '../plan/types'
import { footName } from '../units/foot-name'
import type { HeightsContext, StandingUnit } from './context'
import { footPlace } from './footings'

const nearEnd: Basis = {
  kind: 'geometry',
  why: 'what is left of the leg is less than the floor and the sheet are known to',
}

interface Near {
  readonly leg: LegPlan
  readonly end: 'shortest' | 'longest'
  /** What is left to that end of the leg, less what it is known to, mm: the least is the worst. */
  readonly left: number
}

/** The end a leg comes so near to that its readings cannot tell whether it reaches; null for one well within. */
function nearOf(leg: LegPlan): Near | null {
  const { extension, min, max, within } = leg
  if (within !== 'yes' || !hasValue(extension) || !hasValue(min) || !hasValue(max)) return null
  const ends: readonly Near[] = [
    { leg, end: 'shortest', left: extension.value - min.value - extension.pm - min.pm },
    { leg, end: 'longest', left: max.value - extension.value - extension.pm - max.pm },
  ]
  const worst = ends.reduce((a, b) => (b.left < a.left ? b : a))
  return worst.left < 0 ? worst : null
}

/**
 * Legs that reach by what is known, by less than it is known to: told once for a unit, of its worst foot. Nothing is
 * said of a unit that is levelled already, or of one in `told`, whose height was said to have too little room.
 */
export function legsNearEnd(
  context: HeightsContext,
  legs: ReadonlyMap<UnitId, readonly LegPlan[]>,
  told: ReadonlySet<string>,
): readonly Finding[] {
  return context.standing.flatMap((unit) => {
    if (told.has(unit.id) || context.achieved.undersides.has(unit.id)) return []
    const near = (legs.get(unit.id) ?? []).flatMap((leg) => nearOf(leg) ?? [])
    const [first, ...rest] = near
    if (first === undefined) return []
    return [
      said(
        context,
        unit,
        near,
        rest.reduce((a, b) => (b.left < a.left ? b : a), first),
      ),
    ]
  })
}

function said(
  context: HeightsContext,
  { id, position, footings }: StandingUnit,
  near: readonly Near[],
  { leg, end }: Near,
): Finding {
  const footing = footings.find((foot) => foot.id === leg.foot)
  return finding({
    rule: 'leg-near-end',
    subjects: [id],
    weight: 'ask',
    say: message(`heights.leg-near-end.${end}`, {
      unit: context.nameOf(id),
      foot: footName(leg.foot, footing && footPlace(position, footing)),
      extension: leg.extension,
      end: end === 'shortest' ? leg.min : leg.max,
    }),
    ask: message('heights.leg-near-end.ask', { unit: context.nameOf(id) }),
    about: [id, ...near.map((one) => `${id}.${one.leg.foot}`)],
    figures: [leg.extension, leg.min, leg.max],
    basis: nearEnd,
    where: { wall: position.unit.wall, along: footing?.along, height: leg.floor },
  })
}
