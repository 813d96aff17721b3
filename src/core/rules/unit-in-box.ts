import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { lapOf, meeting } from '../placing/laps'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { sum } from '../survey/sum'
import type { Found, Rule, Said, Site, Way } from './rule'

/** Skirtings, covings and rails run along the wall and are cut out of the way: another matter. Lights hang in the room. */
const ELSEWHERE: readonly BoxOnWall['kind'][] = ['skirting', 'coving', 'picture-rail', 'light']
const WATER: readonly BoxOnWall['kind'][] = ['radiator', 'pipe']
const practice: Basis = {
  kind: 'common-practice',
  why: 'a hand and a spanner beside a radiator, its valve or a pipe',
}
const ROUND_WATER = known(50, 0, 'mm', [], practice)
/** No space behind a back is as deep as this, mm. Common practice. */
const NO_VOID = 100
/** Shallower than this there is no unit to be had, mm. Common practice. */
const SHALLOWEST = 200

/** The space for something in the wall's way: behind the back of a unit, or behind what goes into a space. */
function spaceBehind(site: Site, { id }: RunPiece): Figure | null {
  const unit = site.stated(id)
  if (unit === undefined) return null
  const appliance = site.kitchen.appliances.find((one) => one.id === unit.applianceBay)
  if (unit.kind !== 'appliance-space') return unit.void
  return appliance === undefined ? null : sum('mm', rule.basis, [unit.depth], [appliance.depthNeeded])
}

/** Whether it reaches past the space behind the back; `side`: not, but a side of the unit has to be cut out for it. */
function howDeep(
  site: Site,
  piece: RunPiece,
  box: BoxOnWall,
  deep: Figure,
): 'in' | 'near' | 'side' | 'behind' | 'not-known' {
  const space = spaceBehind(site, piece)
  if (space === null || !hasValue(space)) return hasValue(deep) && deep.value > NO_VOID ? 'in' : 'not-known'
  const past = sum('mm', rule.basis, [deep], [space])
  if (!hasValue(past)) return 'not-known'
  if (past.value > -past.pm) return past.value > past.pm ? 'in' : 'near'
  const unit = site.stated(piece.id)
  const edges = [piece.left, piece.right, box.left, box.right, unit?.board].flatMap((f) =>
    f && hasValue(f) ? [f.value] : [],
  )
  const [left, right, from, to, board] = edges
  if (board === undefined) return 'behind'
  const between = (from as number) >= (left as number) + board && (to as number) <= (right as number) - board
  return between ? 'behind' : 'side'
}

function waysOut(piece: RunPiece, box: BoxOnWall, room: Figure, name: string): readonly Way[] {
  const { out } = box
  const smaller = hasValue(room) && hasValue(out) ? Math.floor(room.value - room.pm) : 0
  const shallower: Way = {
    said: ['shallower', { unit: name, deep: smaller }],
    cost: 'a part to buy',
    edits: [
      { set: factId('units', piece.id, 'depth'), to: smaller },
      { set: factId('units', piece.id, 'standOff'), to: hasValue(out) ? Math.ceil(out.value + out.pm) : 0 },
    ],
  }
  const moved: Way = {
    said: ['moved', { box: box.name }],
    cost: 'a day or more',
    edits: [{ remove: factId('boxes', box.id) }],
  }
  const isMovable = WATER.includes(box.kind) || box.kind === 'boxing'
  return [...(smaller >= SHALLOWEST ? [shallower] : []), ...(isMovable ? [moved] : [])]
}

/** The unit reaches up into something that hangs over it, and less far than it would stand in it. */
function tooTall(piece: RunPiece, box: BoxOnWall, deep: Figure): boolean {
  const [by, up] = [deep, lapOf({ from: piece.bottom, to: piece.top }, { from: box.bottom, to: box.top })]
  if (!hasValue(by) || !hasValue(up) || !hasValue(box.bottom) || !hasValue(piece.bottom)) return false
  return box.bottom.value > piece.bottom.value && up.value < by.value
}

function judged(site: Site, piece: RunPiece, box: BoxOnWall): Found | null {
  const { bottom, top } = box
  const deep = lapOf({ from: piece.back, to: piece.front }, { from: box.near, to: box.out })
  const upright = lapOf({ from: piece.bottom, to: piece.top }, { from: bottom, to: top })
  const along = lapOf({ from: piece.left, to: piece.right }, { from: box.left, to: box.right })
  const beside = besideWater(piece, box, along, [deep, upright])
  const meets = meeting([along, deep, upright])
  const common = { subjects: [piece.id, box.id], about: [piece.id, box.id], ask: ['ask'] as Said }
  const where = { wall: box.wall, along: box.left, height: bottom }
  if (beside !== null) return { ...common, where, weight: 'warn', said: beside }
  if (meets === 'no') return null
  const room = derive('mm', rule.basis, [piece.front, box.out], (f, o) => (f as number) - (o as number))
  const values = {
    unit: piece.name,
    box: box.name,
    from: box.left,
    to: box.right,
    out: box.out,
    room,
    top: piece.top,
    bottom,
  }
  if (meets === 'not-known')
    return { ...common, weight: 'ask', said: ['not-measured', values], figures: [along, deep, upright] }
  const depth = howDeep(site, piece, box, deep)
  if (depth === 'behind') return null
  if (depth === 'side') return { ...common, where, weight: 'warn', said: ['side', values], figures: [deep] }
  const ways = piece.unit === null ? [] : waysOut(piece, box, room, piece.name)
  if (meets === 'perhaps' || depth !== 'in')
    return {
      ...common,
      where,
      weight: 'ask',
      said: [depth === 'not-known' ? 'void' : 'near', values],
      figures: [along, deep, upright],
    }
  if (tooTall(piece, box, deep))
    return {
      ...common,
      where,
      weight: 'stop',
      said: ['too-tall', { ...values, over: upright }],
      waysOut: ways.slice(-1),
    }
  return { ...common, where, weight: 'stop', said: ['in', values], figures: [along, deep], waysOut: ways }
}

/** What is said of a unit that stands too near a radiator or pipe to get a hand in; null: it does not. */
function besideWater(piece: RunPiece, box: BoxOnWall, along: Figure, others: readonly Figure[]): Said | null {
  if (!WATER.includes(box.kind) || !hasValue(along) || along.value >= 0 || meeting(others) === 'no')
    return null
  const gap = derive('mm', rule.basis, [along], (a) => -(a as number))
  const short = sum('mm', practice, [ROUND_WATER], [gap])
  const isShort = hasValue(short) && short.value > short.pm
  return isShort ? ['beside', { unit: piece.name, box: box.name, gap, room: ROUND_WATER }] : null
}

/** F04, F38: a unit planned where a boxing, chimney breast, radiator or pipe already is. */
export const rule: Rule = {
  id: 'unit-in-box',
  heading: 'A unit where a boxing is',
  catches: ['F04', 'F38'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'from where to where both reach: along the wall, out from it and up it' },
  why: 'What was hidden behind the old units stays where it is, and the new unit was bought as deep as the old.',
  words: {
    in: '{unit} and {box} want the same place, from {from} to {to} along the wall. It comes {out} out from the wall. In front of it a unit may be {room} deep at most.',
    'too-tall':
      '{unit} reaches up into {box}: its top is {top:signed} from the line, and that begins at {bottom:signed}. It is {over} too tall.',
    near: '{unit} may stand in {box}, from {from} to {to} along the wall and {out} out from it. Readings this near cannot tell: measure both again.',
    side: '{box} comes {out} out from the wall, from {from} to {to} along it. It goes into the space behind {unit}, but the sides of the unit have to be cut out for it.',
    void: '{box} is behind {unit}, from {from} to {to} along the wall and {out} out from it. How much space the unit has behind its back is not known.',
    'not-measured':
      '{box} is in the way of {unit}, as far as it has been measured. Measure the rest of it: left, right, out from the wall, underside and top.',
    beside: 'There are {gap} between {unit} and {box}. A hand and a spanner need {room} there.',
    ask: 'Measure it again with a straightedge, valves and clips too. Ask what is in it before anybody moves or cuts it.',
    shallower: 'Have {unit} made {deep} mm deep, and stand it in front.',
    moved: 'Have a plumber move {box} first.',
  },
  check: (site) => {
    const boxes = boxesOnWalls(site.kitchen, site.survey).filter(({ kind }) => !ELSEWHERE.includes(kind))
    if (boxes.length === 0) return []
    const pieces = runPieces(site).filter(({ part }) => part === null || part.kind === 'end-panel')
    return pieces.flatMap((piece) =>
      boxes.filter(({ wall }) => wall === piece.wall).flatMap((box) => judged(site, piece, box) ?? []),
    )
  },
}
