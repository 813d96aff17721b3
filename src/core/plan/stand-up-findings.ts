import { type Basis, type Figure, hasValue } from '../figure'
import { message } from '../message'
import { besideItsPlace } from '../placing/beside-its-place'
import { sum } from '../survey/sum'
import { finding } from './finding'
import type { TallStandUp } from './stand-ups'
import type { Finding, PlacingPath, UnitPlan } from './types'

const geometry: Basis = { kind: 'geometry', why: 'solids as measured, moved along the way in' }

/**
 * Whether each tall unit can be stood up under the ceiling: where it is to stand, elsewhere in the room to be walked in
 * from there, or not at all. Failure modes F50, F51.
 */
export function standUpFindings(
  units: readonly UnitPlan[],
  tilts: ReadonlyMap<string, TallStandUp>,
  paths: readonly PlacingPath[],
): readonly Finding[] {
  return units.flatMap((unit) => {
    const tilt = tilts.get(unit.unit)
    if (tilt === undefined || unit.standUp === null) return []
    const turn = paths.find((p) => p.unit === unit.unit)?.segments.find((s) => s.kind === 'stand-up')
    const isElsewhere = tilt.elsewhere !== null && turn !== undefined
    const way = isElsewhere || turn !== undefined ? unit.standUp : tilt.here.plan
    const there =
      isElsewhere && unit.standUp.fits === 'yes'
        ? [elsewhere(unit, tilt, turn.upright)]
        : bareFinding(unit, way)
    return [...there, ...legsOff(unit, way, tilt)]
  })
}

type Way = NonNullable<UnitPlan['standUp']>

function bareFinding({ unit, name, wall }: UnitPlan, { needed, ceiling, fits }: Way): readonly Finding[] {
  if (fits === 'yes') return []
  const rule = fits === 'no' ? 'cannot-stand-up' : 'stand-up-not-known'
  return [
    finding({
      rule,
      subjects: [unit],
      weight: fits === 'no' ? 'stop' : 'ask',
      dangerous: true,
      where: { wall },
      say: message(rule, { unit: name, needed, ceiling }),
      figures: [needed, ceiling],
      basis: geometry,
    }),
  ]
}

/**
 * It goes up, but only with its legs off: with them on, there is no height for it over any side. What the work says of its
 * legs is then no matter of taste (failure modes F50, F53).
 */
function legsOff(
  { unit, name, wall }: UnitPlan,
  { needed, ceiling, fits }: Way,
  { withLegsOn }: TallStandUp,
): readonly Finding[] {
  if (fits !== 'yes' || withLegsOn === null) return []
  const short = missing(withLegsOn, ceiling)
  if (!hasValue(short) || short.value <= short.pm) return []
  return [
    finding({
      rule: 'stand-up-legs-off',
      subjects: [unit],
      weight: 'warn',
      where: { wall },
      say: message('stand-up-legs-off', { unit: name, ceiling, withLegsOn, needed, short }),
      figures: [withLegsOn, ceiling, needed, short],
      basis: geometry,
    }),
  ]
}

/** It goes up further along, where the ceiling is higher: said, for the place it is to stand in invites it. */
function elsewhere(
  { unit, name, wall, pose }: UnitPlan,
  { here }: TallStandUp,
  upright: NonNullable<UnitPlan['pose']>,
): Finding {
  const { needed, ceiling } = here.plan
  const { way, aside, out } = besideItsPlace(pose ?? upright, upright)
  const by = way === 'straight' ? out : aside
  return finding({
    rule: 'stand-up-elsewhere',
    subjects: [unit],
    weight: 'warn',
    dangerous: true,
    where: { wall },
    say: message(`stand-up-elsewhere.${way === 'straight' ? 'out' : way}`, {
      unit: name,
      needed,
      ceiling,
      by,
    }),
    figures: [needed, ceiling, ...(hasValue(needed) && hasValue(ceiling) ? [missing(needed, ceiling)] : [])],
    basis: geometry,
  })
}

const missing = (needed: Figure, ceiling: Figure): Figure =>
  sum('mm', { kind: 'geometry', why: 'height it needs, less the height there' }, [needed], [ceiling])
