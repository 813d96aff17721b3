import { hasValue, type InputId, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import {
  bareWall,
  type DoorAtCorner,
  doorsAtCorners,
  leafGap,
  meetsWallAt,
} from '../placing/doors-at-corners'
import { overLimit } from '../placing/over-limit'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const nothing = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the face of the wall' })
/** Square: short of it the door does not open at all well, which is another matter. */
const SQUARE = 90

/** How far a door that opens as far as its hinges let it would be in the wall; null where it keeps off it. */
function struck(at: DoorAtCorner) {
  const { side, leaf, door } = at
  if (!hasValue(door.opens) || door.opens.value <= SQUARE || door.hinge === null) return null
  const gap = leafGap(side, leaf, bareWall(side), door.opens)
  const into = gap === null ? null : sum('mm', rule.basis, [nothing], [gap])
  if (into === null || overLimit(into) !== 'over') return null
  const stops = meetsWallAt(side, leaf)
  return !hasValue(stops) || stops.value < SQUARE ? null : { at, into, stops }
}

function judged(
  site: Site,
  unit: string,
  struckOnes: readonly NonNullable<ReturnType<typeof struck>>[],
): Found {
  const [first] = struckOnes as [NonNullable<ReturnType<typeof struck>>]
  const { side, front, door } = first.at
  const fact = (id: string): InputId => factId('units', unit, 'doors', id, 'opens')
  return {
    subjects: [unit],
    about: [unit, side.own, side.other],
    weight: 'warn',
    said: [
      'strikes',
      {
        unit: front.plan.name,
        wall: site.name(side.other),
        opens: door.opens,
        stops: first.stops,
        into: first.into,
      },
    ],
    where: { wall: side.own, along: front.plan[side.end] },
    ask: ['ask'],
    waysOut: [
      {
        said: ['stop', { unit: front.plan.name, square: SQUARE }],
        cost: 'a part to buy',
        edits: struckOnes.map(({ at }) => ({ set: fact(at.door.id), to: SQUARE })),
      },
    ],
  }
}

/** F85: a door at the end of a run that goes on past square into the wall beside it. */
export const rule: Rule = {
  id: 'door-strikes-wall',
  heading: 'A door that strikes the wall',
  catches: ['F85'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the free edge and the handle of the door, opened as far as its hinges go, against the wall',
  },
  why: 'The hinges go further than the room does: the handle strikes the wall at every opening, and the hinges work loose.',
  words: {
    strikes:
      'The door of {unit} opens to {opens} by its hinges, but strikes {wall} at about {stops}. Fully open it would be {into} in it.',
    ask: 'Ask whoever sold the hinges for a stop that holds them at a smaller angle, or plan a wider filler.',
    stop: 'Fit stops that hold the doors of {unit} at {square} degrees.',
  },
  check: (site) => {
    const all = doorsAtCorners(site).flatMap((at) => struck(at) ?? [])
    const units = [...new Set(all.map(({ at }) => at.front.unit.id))]
    return units.map((unit) =>
      judged(
        site,
        unit,
        all.filter(({ at }) => at.front.unit.id === unit),
      ),
    )
  },
}
