import { hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { type CornerSide, cornerSides, fromCorner } from '../placing/corners'
import { lapOf, meeting } from '../placing/laps'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { sum } from '../survey/sum'
import type { Found, Rule, Site, Way } from './rule'

const TRIM: readonly BoxOnWall['kind'][] = ['skirting', 'coving', 'picture-rail']

const takenOff = ({ id, name }: BoxOnWall): readonly Way[] => [
  { said: ['off', { trim: name }], cost: 'an hour', edits: [{ remove: factId('boxes', id) }] },
]

/** On the wall behind a unit: it keeps the back off the wall, or the top of the unit goes up into it. */
function behind(piece: RunPiece, trim: BoxOnWall): Found | null {
  const upright = lapOf({ from: piece.bottom, to: piece.top }, { from: trim.bottom, to: trim.top })
  const deep = sum('mm', rule.basis, [trim.out], [piece.back])
  const along = lapOf({ from: piece.left, to: piece.right }, { from: trim.left, to: trim.right })
  const meets = meeting([along, upright, deep])
  if (meets !== 'yes' && meets !== 'perhaps') return null
  const common = {
    subjects: [piece.id, trim.id],
    about: [piece.id, trim.id],
    figures: [upright, deep],
    waysOut: takenOff(trim),
  }
  const over = sum('mm', rule.basis, [piece.top], [trim.bottom])
  const isOver = hasValue(piece.top) && hasValue(trim.top) && piece.top.value <= trim.top.value
  const values = {
    unit: piece.name,
    trim: trim.name,
    out: trim.out,
    top: piece.top,
    bottom: trim.bottom,
    over,
  }
  const where = { wall: piece.wall, along: piece.left, height: trim.bottom }
  if (isOver)
    return {
      ...common,
      where,
      weight: meets === 'yes' ? 'stop' : 'ask',
      said: [meets === 'yes' ? 'over' : 'over-near', values],
      ask: ['ask'],
    }
  return meets === 'yes' ? { ...common, where, weight: 'warn', said: ['behind', values], ask: ['ask'] } : null
}

/** On the wall beside the end of a run: it takes its thickness off the room there is. */
function beside(side: CornerSide, piece: RunPiece, trim: BoxOnWall): Found | null {
  const [gap, a, b] = [
    fromCorner(side, 'own', piece[side.end]),
    fromCorner(side, 'other', trim.left),
    fromCorner(side, 'other', trim.right),
  ]
  const reach = hasValue(a) && hasValue(b) && a.value > b.value ? { from: b, to: a } : { from: a, to: b }
  const upright = lapOf({ from: piece.bottom, to: piece.top }, { from: trim.bottom, to: trim.top })
  const meets = meeting([upright, lapOf({ from: piece.back, to: piece.front }, reach)])
  const short = sum('mm', rule.basis, [trim.out], [gap])
  const stands = overLimit(short)
  if (meets === 'no' || meets === 'not-known' || (stands !== 'over' && stands !== 'near')) return null
  const isSure = stands === 'over' && meets === 'yes'
  const values = { unit: piece.name, trim: trim.name, out: trim.out, gap, short }
  return {
    subjects: [piece.id, trim.id],
    about: [piece.id, trim.id],
    weight: isSure ? 'stop' : 'ask',
    said: [isSure ? 'end' : 'end-near', values],
    figures: [upright, gap],
    where: { wall: piece.wall, along: piece[side.end], height: trim.bottom },
    ask: ['ask'],
    waysOut: takenOff(trim),
  }
}

function found(site: Site): readonly Found[] {
  const trims = boxesOnWalls(site.kitchen, site.survey).filter(({ kind }) => TRIM.includes(kind))
  if (trims.length === 0) return []
  const pieces = runPieces(site)
  const backs = pieces
    .filter(({ part }) => part?.kind !== 'filler')
    .flatMap((piece) =>
      trims.filter(({ wall }) => wall === piece.wall).flatMap((trim) => behind(piece, trim) ?? []),
    )
  const ends = cornerSides(site.kitchen, site.survey).flatMap((side) =>
    pieces
      .filter(({ wall, part }) => wall === side.own && part?.kind !== 'filler')
      .flatMap((piece) =>
        trims.filter(({ wall }) => wall === side.other).flatMap((trim) => beside(side, piece, trim) ?? []),
      ),
  )
  return [...backs, ...ends]
}

/** F03: a skirting, coving or picture rail that nobody allowed for, behind a unit or at the end of a run. */
export const rule: Rule = {
  id: 'trim-in-the-way',
  heading: 'Trim that is in the way',
  catches: ['F03'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'how far the trim stands out, and from where to where it runs' },
  why: 'A run measured from wall to wall above the skirting is two skirtings too long at the floor.',
  words: {
    end: '{trim} stands {out} out from its wall, and {unit} begins {gap} from that wall. {short} is missing while the trim is on.',
    'end-near':
      '{trim} stands {out} out from its wall, and {unit} begins {gap} from that wall. Readings this near cannot tell: measure to the trim, not to the wall.',
    behind:
      '{trim} is behind {unit} and keeps its back {out} off the wall: take it off, or cut out the sides of the unit.',
    over: 'The top of {unit}, {top:signed} from the line, goes up into {trim}, which begins at {bottom:signed} there. It is {over} too high.',
    'over-near':
      'The top of {unit}, {top:signed} from the line, may go up into {trim}, which begins at {bottom:signed}. Readings this near cannot tell: measure again.',
    ask: 'Decide whether the trim comes off before anything is fixed. Taken off later, it comes off from behind a unit.',
    off: 'Take off {trim} where units will stand, before the lines are struck.',
  },
  check: found,
}
