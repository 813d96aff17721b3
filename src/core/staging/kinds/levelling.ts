import { hasValue } from '../../figure'
import { levelOn } from '../../levelling/level-on'
import type { StandingUnit } from '../../plan/standing-at'
import { extentOf } from '../../plan/travel-path'
import type { Adjuster } from '../../plan/types'
import { HANGER } from '../../views/carcass'
import { act, atUnit, DOWN, figureOf, inHand, type Stage, type Stages, UP } from '../stage'
import type { Act, Contact } from '../staging'

const RIGHT = { x: 1, y: 0, z: 0 }
const BACK = { x: 0, y: -1, z: 0 }

/** Where an adjuster is got at: a leg half way down, a height screw inside the unit under its top. */
function adjusterAt(unit: StandingUnit, adjuster: Adjuster): Contact | null {
  if (!hasValue(adjuster.x)) return null
  if (adjuster.kind === 'height-screw') {
    const { height } = extentOf(unit.unit.solid)
    return atUnit(unit, { x: adjuster.x.value, y: HANGER.out, z: height - HANGER.below }, BACK, RIGHT)
  }
  const leg = unit.unit.legs.find((l) => l.foot === adjuster.id || adjuster.id.endsWith(`.${l.foot}`))
  if (leg === undefined) return null
  const length = hasValue(leg.extension) ? leg.extension.value : 0
  return atUnit(unit, { x: leg.x, y: leg.y, z: -length / 2 }, DOWN, RIGHT)
}

const partOf = (unit: StandingUnit, adjuster: Adjuster): string =>
  adjuster.kind === 'leg'
    ? `leg:${unit.unit.unit}.${adjuster.id.split('.').at(-1)}`
    : `unit:${unit.unit.unit}`

/** The level lies on the unit and is read; then each adjuster is turned by what the reading says, which nobody knows yet. */
export const levelled: Stages = (stage) =>
  inHand(stage).flatMap((unit): readonly Act[] => {
    const put = levelOn(unit.unit, 'along')
    if (put === null) return []
    const { x0, x1, y0, y1, z0, z1 } = put.body
    const [x, y, z] = [(x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2]
    const meets =
      put.way === 'upright'
        ? atUnit(unit, { x, y: y0, z }, BACK, RIGHT)
        : atUnit(unit, { x, y, z: z0 }, DOWN, RIGHT)
    const tool = stage.operation.tools.includes('long-level') ? 'long-level' : 'level'
    return [
      act(tool, `level:${unit.unit.unit}`, meets, { kind: 'rest' }),
      ...unit.unit.adjusters.flatMap((a) => {
        const contact = adjusterAt(unit, a)
        return contact === null
          ? []
          : [
              act(a.kind === 'leg' ? 'hands' : 'screwdriver', partOf(unit, a), contact, {
                kind: 'turn',
                turns: null,
                raises: null,
              }),
            ]
      }),
      ...(unit.unit.shims ?? []).map((s) =>
        act('packers', `unit:${unit.unit.unit}`, atUnit(unit, { x: s.x, y: s.y, z: -2 }, BACK, RIGHT), {
          kind: 'press',
        }),
      ),
    ]
  })

/** Drawn in to the wall and kept from lifting off: the other screw of each hanger. */
export const locked: Stages = (stage) =>
  inHand(stage).flatMap((unit) =>
    unit.unit.adjusters
      .filter((a) => a.kind === 'height-screw')
      .flatMap((a) => {
        const contact = adjusterAt(unit, a)
        if (contact === null) return []
        return [
          act('screwdriver', `unit:${unit.unit.unit}`, contact, { kind: 'turn', turns: null, raises: null }),
        ]
      }),
  )

/** Every leg is wound to its length before the unit goes in, by so many turns where one turn is known. */
export const legsSet: Stages = (stage) =>
  inHand(stage).flatMap((unit) =>
    unit.unit.legs.map((leg) => {
      // A tall is stood up on legs wound right in.
      const isIn = unit.legs === 'wound-in'
      const comesTo = isIn ? leg.min : leg.extension
      const length = hasValue(comesTo) ? comesTo.value : 0
      return act(
        'hands',
        `leg:${unit.unit.unit}.${leg.foot}`,
        atUnit(unit, { x: leg.x, y: leg.y, z: -length }, UP, RIGHT),
        {
          kind: 'turn',
          turns: figureOf(stage, `turns.${leg.foot}`) ?? (!isIn && hasValue(leg.turns) ? leg.turns : null),
          raises: figureOf(stage, `leg.${leg.foot}`) ?? comesTo,
        },
      )
    }),
  )

/** A hanger is screwed in on each side, in the top corners at the back. */
export const hangersFitted: Stages = (stage: Stage) =>
  inHand(stage).flatMap((unit) => {
    const { width, height } = extentOf(unit.unit.solid)
    const inset = figureOf(stage, 'hanger-in')
    const x = inset !== null && hasValue(inset) ? inset.value : HANGER.in
    return [x, width - x].map((at) =>
      act(
        'screwdriver',
        `unit:${unit.unit.unit}`,
        atUnit(unit, { x: at, y: HANGER.out, z: height - HANGER.below }, BACK, RIGHT),
        {
          kind: 'press',
        },
      ),
    )
  })
