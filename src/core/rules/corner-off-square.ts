import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { HUNG_KINDS } from '../kitchen/kinds'
import { type CornerSide, cornerSides, fromCorner } from '../placing/corners'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import type { UnitPlan } from '../plan/types'
import { angleByLengths, anglesApart } from '../survey/corner'
import { sum } from '../survey/sum'
import type { Found, Rule, Site, Way } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a gap of 2 mm beside a filler is not seen; one of more is',
}
const UNSEEN = known(2, 0, 'mm', [], practice)
const SQUARE = known(90, 0, 'deg', [], { kind: 'geometry', why: 'a square corner' })
/** What stands further from the corner than its front is deep, by this, has nothing to do with it, mm. Common practice. */
const AT_THE_CORNER = 300
/** A filler beside a unit touches it to within this, mm. */
const TOUCHES = 2

const CORNER: readonly UnitPlan['kind'][] = ['corner-base', 'corner-wall']

/** A run where it comes to a corner: the unit nearest to it, its near edge from the corner, and the face of its front. */
interface End {
  readonly piece: RunPiece
  readonly edge: Figure
  readonly face: Figure
}

function endOf(site: Site, side: CornerSide, pieces: readonly RunPiece[], isHigh: boolean): End | null {
  const ends = pieces.flatMap((piece): readonly (End & { at: number })[] => {
    const { unit } = piece
    if (unit === null || piece.wall !== side.own || HUNG_KINDS.includes(unit.kind) !== isHigh) return []
    const edge = fromCorner(side, 'own', piece[side.end])
    const front = site.stated(piece.id)?.front
    const thick = front !== undefined && hasValue(front) ? [front] : []
    return hasValue(edge)
      ? [{ piece, edge, face: sum('mm', rule.basis, [piece.front, ...thick]), at: edge.value }]
      : []
  })
  const nearest = ends.sort((a, b) => a.at - b.at)[0]
  if (nearest === undefined || !hasValue(nearest.face)) return null
  return nearest.at <= nearest.face.value + AT_THE_CORNER ? nearest : null
}

/** Where the faces of both runs meet, along the own wall from the corner: for equal depths d it is d / tan(t/2). */
function facesMeet(angle: Figure, own: Figure, other: Figure): Figure {
  return derive('mm', rule.basis, [angle, own, other], (t, d, o) => {
    const turn = ((t as number) * Math.PI) / 180
    return ((o as number) + (d as number) * Math.cos(turn)) / Math.sin(turn)
  })
}

/** The filler between the corner and the unit beside it. */
function fillerAt(side: CornerSide, pieces: readonly RunPiece[], { edge }: End): RunPiece | null {
  const far = side.end === 'left' ? 'right' : 'left'
  const one = pieces.find(({ part, wall, ...piece }) => {
    if (part?.kind !== 'filler' || wall !== side.own) return false
    const at = fromCorner(side, 'own', piece[far])
    return hasValue(at) && hasValue(edge) && Math.abs(at.value - edge.value) <= TOUCHES
  })
  return one ?? null
}

function wider(filler: RunPiece, gap: Figure): readonly Way[] {
  if (!hasValue(gap)) return []
  const to = Math.ceil(gap.value + gap.pm)
  return [
    {
      said: ['wider', { filler: filler.name, to }],
      cost: 'a part to buy',
      edits: [{ set: factId('finishing', filler.id, 'width'), to }],
    },
  ]
}

/** One run at the corner against the front of the other one. */
function judged(side: CornerSide, pieces: readonly RunPiece[], own: End, other: End): Found | null {
  if (CORNER.includes(own.piece.unit?.kind ?? 'base')) return null
  const meet = facesMeet(side.angle, own.face, other.face)
  const gap = sum('mm', rule.basis, [own.edge], [meet])
  const square = sum('mm', rule.basis, [own.edge], [other.face])
  if (!hasValue(gap) || !hasValue(square)) return null
  const common = {
    subjects: [own.piece.id, other.piece.id],
    about: [own.piece.id, other.piece.id],
    where: { wall: side.own, along: own.piece[side.end] },
    ask: ['ask'] as const,
  }
  const over = sum('mm', rule.basis, [meet], [own.edge])
  const values = {
    angle: side.angle,
    unit: own.piece.name,
    other: other.piece.name,
    edge: own.edge,
    meet,
    gap,
    over,
  }
  if (square.value >= 0 && gap.value < 0) {
    const isSure = gap.value < -gap.pm
    return { ...common, weight: isSure ? 'stop' : 'ask', said: [isSure ? 'clash' : 'clash-near', values] }
  }
  const filler = fillerAt(side, pieces, own)
  if (filler?.part == null) return null
  const slot = sum('mm', practice, [gap], [filler.part.width, UNSEEN])
  if (!hasValue(slot) || slot.value <= slot.pm) return null
  const said = { ...values, filler: filler.name, there: filler.part.width }
  return {
    ...common,
    about: [...common.about, filler.id],
    weight: 'warn',
    said: ['slot', said],
    figures: [slot],
    waysOut: wider(filler, gap),
  }
}

function atCorner(
  site: Site,
  one: CornerSide,
  two: CornerSide,
  pieces: readonly RunPiece[],
  isHigh: boolean,
): readonly Found[] {
  const [a, b] = [endOf(site, one, pieces, isHigh), endOf(site, two, pieces, isHigh)]
  if (a === null || b === null) return []
  const common = {
    subjects: [one.own, two.own, isHigh ? 'high' : 'low'],
    about: [one.own, two.own, a.piece.id, b.piece.id],
  }
  const walls = { wall: site.name(one.own), next: site.name(two.own) }
  if (!hasValue(one.angle))
    return [{ ...common, weight: 'ask', said: ['angle', walls], figures: [one.angle], ask: ['ask.angle'] }]
  const off = sum('deg', rule.basis, [one.angle], [SQUARE])
  if (!hasValue(off) || Math.abs(off.value) <= off.pm) return []
  const here = facesMeet(one.angle, a.face, b.face)
  const shift = derive(
    'mm',
    practice,
    [here, b.face, UNSEEN],
    (h, f, u) => Math.abs((h as number) - (f as number)) - (u as number),
  )
  const isSeen = hasValue(shift) && shift.value > shift.pm
  const values = {
    ...walls,
    angle: one.angle,
    here,
    there: facesMeet(one.angle, b.face, a.face),
    square: b.face,
  }
  return [
    {
      ...common,
      weight: isSeen ? 'warn' : 'note',
      said: [off.value > 0 ? 'open' : 'closed', values],
      where: { wall: one.own, along: one.ownLength },
    },
    ...[judged(one, pieces, a, b), judged(two, pieces, b, a)].flatMap((found) => found ?? []),
  ]
}

/** A typed angle and three lengths that cannot both be right. */
function twoAngles(site: Site, side: CornerSide): readonly Found[] {
  const corner = site.wall(side.own)?.cornerRight
  const by = corner === undefined ? null : anglesApart(corner)
  const taped = corner === undefined ? null : angleByLengths(corner)
  if (corner === undefined || by === null || taped === null || overLimit(by) !== 'over') return []
  const said = {
    wall: site.name(side.own),
    next: site.name(side.other),
    typed: corner.angle,
    taped,
    by,
  }
  return [
    {
      subjects: [side.own, side.other, 'read'],
      about: [side.own, side.other],
      weight: 'ask',
      said: ['two-angles', said],
      where: { wall: side.own, along: side.ownLength },
      ask: ['ask'],
    },
  ]
}

/** F44: a corner that is not square, so that the fronts of the two runs meet elsewhere and the fillers come out wrong. */
export const rule: Rule = {
  id: 'corner-off-square',
  heading: 'A corner out of square',
  catches: ['F44'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'where the fronts of two runs cross, both as far out from their walls as their units are deep',
  },
  why: 'Fillers bought for a square corner leave a slot in an open one and do not go in a closed one.',
  words: {
    open: 'The corner of {wall} and {next} is {angle}, more than square. The fronts meet {here} from it along {wall} and {there} along {next}, nearer than in a square corner: both fillers are wider.',
    closed:
      'The corner of {wall} and {next} is {angle}, less than square. The fronts meet {here} from it along {wall} and {there} along {next}, further than in a square corner: both fillers are narrower.',
    slot: 'In a corner of {angle} the filler beside {unit} has to be {gap} wide to reach the front of {other}, and {filler} is {there}.',
    clash:
      'In a corner of {angle} the front of {unit} runs into that of {other}: it begins {edge} from the corner, and they meet at {meet}. {over} is missing.',
    'clash-near':
      'In a corner of {angle} the front of {unit} may run into that of {other}: it begins {edge} from the corner, and they meet at {meet}. Readings this near cannot tell: measure the corner again.',
    'two-angles':
      'The corner of {wall} and {next} is entered as {typed:pm}, and its three lengths make it {taped:pm}. They cannot both be right. The lengths are used.',
    angle: 'Runs meet in the corner of {wall} and {next}, and how square it is nobody has measured.',
    ask: 'Measure the corner again before the fillers are cut: 900 on one wall, 1200 on the next, and straight across.',
    'ask.angle':
      'Mark 900 mm on one wall and 1200 mm on the next, and measure straight across: 1500 mm is square.',
    wider: 'Have {filler} {to} mm wide, and cut it to fit.',
  },
  check: (site) => {
    const sides = cornerSides(site.kitchen, site.survey)
    const pieces = runPieces(site)
    return sides
      .filter(({ end }) => end === 'right')
      .flatMap((one) => {
        const two = sides.find(
          ({ own, other, end }) => own === one.other && other === one.own && end === 'left',
        )
        return two === undefined
          ? []
          : [
              ...twoAngles(site, one),
              ...[false, true].flatMap((isHigh) => atCorner(site, one, two, pieces, isHigh)),
            ]
      })
  },
}
