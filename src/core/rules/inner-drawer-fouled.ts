import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { doorsAtCorners, meetsWallAt } from '../placing/doors-at-corners'
import { type Door, type Front, frontsInRoom } from '../placing/fronts-in-room'
import { overLimit } from '../placing/over-limit'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'drawer runners take 12.5 a side between the box and the side of the unit, and a box keeps 3 off the door it passes',
}
const RUNNER = known(12.5, 0.5, 'mm', [], practice)
const CLEAR = known(3, 0, 'mm', [], practice)
/** Half of the gap left all round a door: its edge lies that far inside the side of its unit, mm. */
const GAP = 1.5

/**
 * By how much the open leaf stands in front of the drawer box. The inner face of a leaf w wide and t thick, hung on the
 * front corner and opened by a, is at most w·cos a + t·sin a in from its hinge edge short of square, and t·sin a from
 * there on. The box begins a side of the unit and a runner in.
 */
function inTheWay(opens: Figure, width: Figure, thickness: Figure, board: Figure): Figure {
  return derive('mm', rule.basis, [opens, width, thickness, board, RUNNER, CLEAR], (a, w, t, b, r, c) => {
    const turn = ((a as number) * Math.PI) / 180
    const leaf = GAP + Math.max(0, (w as number) * Math.cos(turn)) + (t as number) * Math.sin(turn)
    return leaf + (c as number) - ((b as number) + (r as number))
  })
}

/** As far as its hinges let it, or the wall beside it. */
function furthest(
  site: Site,
  front: Front,
  door: Door,
): { readonly opens: Figure; readonly stoppedBy: string | null } {
  const stopped = doorsAtCorners(site).find(
    (at) => at.front.unit.id === front.unit.id && at.door.id === door.id,
  )
  const wall = stopped === undefined || door.hinge === null ? null : meetsWallAt(stopped.side, stopped.leaf)
  if (stopped === undefined || wall === null || !hasValue(wall)) return { opens: door.opens, stoppedBy: null }
  if (!hasValue(door.opens) || door.opens.value <= wall.value) return { opens: door.opens, stoppedBy: null }
  return { opens: wall, stoppedBy: site.name(stopped.side.other) }
}

function judged(site: Site, front: Front, door: Door): Found | null {
  const { unit, plan, box } = front
  const { opens, stoppedBy } = furthest(site, front, door)
  const fact = (name: string) => factId('units', unit.id, 'doors', door.id, name)
  const common = {
    subjects: [unit.id, door.id],
    about: [unit.id],
    where: { wall: plan.wall, along: plan.left },
  }
  const width = hasValue(door.width) ? door.width : known(box.x1 - box.x0, 1, 'mm', [], rule.basis)
  const thickness = hasValue(door.thickness) ? door.thickness : unit.front
  const by = inTheWay(opens, width, thickness, unit.board)
  const values = { unit: plan.name, opens, by, wall: stoppedBy ?? '' }
  if (!hasValue(opens)) {
    return { ...common, weight: 'ask', said: ['not-read', values], from: [fact('opens')], ask: ['ask.read'] }
  }
  const stands = overLimit(by)
  if (stands === 'within' || stands === 'not-known') return null
  const wide = {
    said: ['wide', { unit: plan.name }],
    cost: 'a part to buy',
    edits: [{ set: fact('opens'), to: 155 }],
  } as const
  return {
    ...common,
    weight: stands === 'over' ? 'stop' : 'ask',
    said: [`${stands === 'over' ? 'fouled' : 'near'}${stoppedBy === null ? '' : '-wall'}`, values],
    from: unit.drawers
      .filter(({ inner }) => inner === true)
      .map(({ id }) => factId('units', unit.id, 'drawers', id, 'inner')),
    ask: ['ask'],
    waysOut: stoppedBy === null ? [wide] : [],
  }
}

/** F46: a drawer or pull-out behind a door, which its own door stands in front of even when it is open. */
export const rule: Rule = {
  id: 'inner-drawer-fouled',
  heading: 'An inner drawer that meets the door',
  catches: ['F46'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the inner face of the door, opened as far as it goes about the front corner of its carcass (an overlay door, common practice), against the side of the drawer box',
  },
  why: 'A pull-out behind a door comes out only past a door that is all the way out of its way.',
  words: {
    fouled:
      'What pulls out behind the door of {unit} meets the open door. The door opens to {opens}, and then still stands {by} too far in front of it.',
    near: 'What pulls out behind the door of {unit} may meet the open door, which opens to {opens}. Figures this near cannot tell: try it before the unit is loaded, and set the hinges.',
    'fouled-wall':
      'What pulls out behind the door of {unit} meets the open door. {wall} stops the door at {opens}, and it then still stands {by} too far in front of it.',
    'near-wall':
      'What pulls out behind the door of {unit} may meet the open door, which {wall} stops at {opens}. Figures this near cannot tell: measure from the unit to the wall again.',
    'not-read': 'How far the door of {unit} opens is not known, and something pulls out behind it.',
    ask: 'Ask the maker of the hinges how far the open door stands in front of the unit, or have a hinge that opens wide.',
    'ask.read': 'Look on the sheet of the hinges for their furthest opening.',
    wide: 'Fit wide-opening hinges to {unit}.',
  },
  check: (site) => {
    const fronts = frontsInRoom(site).filter(({ unit }) => unit.drawers.some(({ inner }) => inner === true))
    const units = [...new Set(fronts.map(({ unit }) => unit.id))]
    return units.flatMap((id) => {
      const found = fronts
        .filter(({ unit }) => unit.id === id)
        .flatMap((front) => {
          const { door } = front
          const isHung = door !== null && (door.hinge === 'left' || door.hinge === 'right')
          return isHung ? (judged(site, front, door) ?? []) : []
        })
      // Which of its doors the drawer is behind nobody says: the worst of them stands for the unit.
      return found.find(({ weight }) => weight === 'stop') ?? found.slice(0, 1)
    })
  },
}
