import { type Basis, derive, type Figure, hasValue, known, type ValueFigure } from '../figure'
import { factId } from '../kitchen/fact-id'
import { HIGH_KINDS } from '../kitchen/kinds'
import type { Unit } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

/** Degrees between the places of a turning door that are looked at: a leaf 600 wide moves 52 mm from one to the next. */
const STEP = 5
/** A door turned square to its unit, where its sheet does not say how far it opens. */
const SQUARE = 90

/** A place of a front corner or of the outer top corner of a door, and the ceiling over it. */
interface Place {
  readonly what: 'corner' | 'door'
  readonly along: Figure
  readonly over: ValueFigure
  readonly ceiling: Figure
}

const turned: Basis = { kind: 'geometry', why: 'the outer top corner of the leaf, turning about its hinge' }
const degrees = (value: number): Figure => known(value, 0, 'deg', [], turned)
const radians = (angle: number) => (angle * Math.PI) / 180

/** Where the outer corner of a leaf is at an angle: along from its hinge and out from the front. */
function leafAt(width: Figure, angle: number): { readonly side: Figure; readonly out: Figure } {
  const at = (turn: (angle: number) => number) =>
    derive('mm', turned, [width, degrees(angle)], (w, a) => (w as number) * turn(radians(a as number)))
  return { side: at(Math.cos), out: at(Math.sin) }
}

/** The doors whose top is the top of their unit, or may be: a lower one of two is as wide and turns under it. */
function leaves({ doors }: Pick<Unit, 'doors'>): Unit['doors'] {
  const side = doors.filter(({ hinge }) => hinge === 'left' || hinge === 'right')
  const keys = [...new Set(side.map(({ hinge, width }) => `${hinge} ${hasValue(width) ? width.value : ''}`))]
  return keys.flatMap((key) =>
    side.filter(({ hinge, width }) => `${hinge} ${hasValue(width) ? width.value : ''}` === key).slice(0, 1),
  )
}

function placesOf(site: Site, plan: UnitPlan): readonly Place[] {
  const position = site.positions.find((one) => one.unit.id === plan.unit)
  if (position === undefined) return []
  const { unit, out, depth, left, right } = position
  const front = sum('mm', rule.basis, [out, depth, unit.front])
  const at = (what: Place['what'], along: Figure, away: Figure): readonly Place[] => {
    const ceiling = site.survey.ceilingAt(plan.wall, along, away)
    const over = sum('mm', rule.basis, [plan.top], [ceiling])
    return hasValue(over) ? [{ what, along, over, ceiling }] : []
  }
  const corners = [left, right].flatMap((along) => at('corner', along, front))
  const swung = leaves(unit).flatMap(({ hinge, width, opens }) => {
    const furthest = Math.min(hasValue(opens) ? opens.value : SQUARE, 180)
    const angles = Array.from({ length: Math.floor(furthest / STEP) }, (_, i) => (i + 1) * STEP)
    return angles.flatMap((angle) => {
      const leaf = leafAt(width, angle)
      const along =
        hinge === 'left' ? sum('mm', turned, [left, leaf.side]) : sum('mm', turned, [right], [leaf.side])
      return at('door', along, sum('mm', turned, [front, leaf.out]))
    })
  })
  return [...corners, ...swung]
}

function judged(site: Site, plan: UnitPlan): readonly Found[] {
  const places = placesOf(site, plan)
  return (['corner', 'door'] as const).flatMap((what): readonly Found[] => {
    const of = places.filter((place) => place.what === what)
    const most = Math.max(...of.map(({ over }) => over.value))
    const worst = of.find(({ over }) => over.value === most)
    if (worst === undefined) return []
    const stands = overLimit(worst.over)
    if (stands === 'within' || stands === 'not-known') return []
    const said = stands === 'over' ? what : `${what}-near`
    const values = {
      unit: plan.name,
      along: worst.along,
      over: worst.over,
      ceiling: worst.ceiling,
      top: plan.top,
    }
    return [
      {
        subjects: [plan.unit, what],
        about: [plan.unit],
        weight: stands === 'over' ? 'stop' : 'ask',
        said: [said, values],
        where: { wall: plan.wall, along: worst.along, height: worst.ceiling },
        from: [factId('units', plan.unit, 'doors')],
        ask: ['ask'],
      },
    ]
  })
}

/** F59: a ceiling that slopes down into the room, over the front of a unit or over its open door. */
export const rule: Rule = {
  id: 'ceiling-at-front',
  heading: 'The ceiling over the fronts',
  catches: ['F59'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the top of the unit against the ceiling between its readings, at the front corners and along the sweep of the door',
  },
  why: 'Under a slope a unit that fits at the wall meets the ceiling with its front, or its door does not open.',
  words: {
    corner:
      'The front of {unit} does not fit under the ceiling: the ceiling over it is {ceiling:signed} from the line, the top of the unit {top:signed}. It is {over} too high.',
    'corner-near':
      'The front of {unit} may touch the ceiling, which is {ceiling:signed} from the line there. Readings this near cannot tell: read the ceiling over the front again.',
    door: 'The door of {unit} meets the ceiling as it opens, {along} along the wall: the ceiling over it is {ceiling:signed} from the line, the top of the unit {top:signed}. It is {over} too high.',
    'door-near':
      'The door of {unit} may touch the ceiling as it opens, which is {ceiling:signed} from the line there. Readings this near cannot tell: read the ceiling over the open door again.',
    ask: 'Take a lower unit, another place for it, or a sliding or shorter door. Its maker can say which there is.',
  },
  check: (site) =>
    site.units.filter(({ kind }) => HIGH_KINDS.includes(kind)).flatMap((plan) => judged(site, plan)),
}
