import { derive, type Figure, known } from '../figure'
import type { Unit } from '../kitchen/schema'
import type { Adjuster, LegPlan } from '../plan/types'

/**
 * The adjusters of a unit, as its maker or a trial gave them. Which screw is which, what one turn does and which way it
 * goes are asked or tried, never assumed. A leg's travel is counted from the length it is planned to have.
 */
export function adjustersOf(unit: Unit, legs: readonly LegPlan[]): readonly Adjuster[] {
  if (unit.stands === 'plates' || unit.stands === 'rail') return hangers(unit)
  return legs.flatMap((leg) => {
    const foot = unit.feet.find((f) => f.id === leg.foot)
    return foot === undefined ? [] : [legAdjuster(unit, foot.x, foot.y, leg)]
  })
}

function legAdjuster(unit: Unit, x: Figure, y: Figure, leg: LegPlan): Adjuster {
  return {
    kind: 'leg',
    id: leg.foot,
    x,
    y,
    perTurn: unit.legs.perTurn,
    clockwise: null,
    place: null,
    upLeft: derive(
      'mm',
      { kind: 'geometry', why: 'longest less planned' },
      [leg.max, leg.extension],
      (max, now) => max - now,
    ),
    downLeft: derive(
      'mm',
      { kind: 'geometry', why: 'planned less shortest' },
      [leg.extension, leg.min],
      (now, min) => now - min,
    ),
  }
}

function hangers(unit: Unit): readonly Adjuster[] {
  const { hangerIn, heightScrew, up, down } = unit.hanging
  const common = {
    kind: 'height-screw',
    y: known(0, 0, 'mm', [`units.${unit.id}.stands`], { kind: 'geometry', why: 'hangers are at the back' }),
    perTurn: heightScrew.perTurn,
    clockwise: heightScrew.clockwise,
    place: heightScrew.place,
    upLeft: up,
    downLeft: down,
  } as const
  const right = derive(
    'mm',
    { kind: 'geometry', why: 'as far in from the right side' },
    [unit.width, hangerIn],
    (w, i) => w - i,
  )
  return [
    { ...common, id: 'left', x: hangerIn },
    { ...common, id: 'right', x: right },
  ]
}
