import { derive, type Figure, hasValue, valueOf } from '../figure'
import { heightNamed } from '../heights/height-named'
import { type CornerSide, cornerSides, fromCorner } from '../placing/corners'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { leanOver } from '../placing/wall-lean'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

/** A filler this near to the corner is cut to the wall beside it, mm. */
const AT_THE_WALL = 5
const CUT: readonly (string | undefined)[] = ['filler', 'scribe']

/** What the wall beside it falls back by, from the corner out to the face of the filler: nothing in a square corner. */
function fallsBack(side: CornerSide, face: Figure): Figure {
  return derive('mm', rule.basis, [side.angle, face], (t, d) => {
    const turn = ((t as number) * Math.PI) / 180
    return (-(d as number) * Math.cos(turn)) / Math.sin(turn)
  })
}

/** At what share of its height the run was measured, from the foot of the filler up; null: nobody has said. */
function measuredAt(site: Site, side: CornerSide, piece: RunPiece): number | null {
  const at = site.wall(side.own)?.lengthAt ?? null
  const [top, foot, worktop] = [piece.top, piece.bottom, heightNamed(site.heights, 'worktop-top')].map(
    valueOf,
  )
  if (at === 'floor' || at === 'wall-unit') return at === 'floor' ? 0 : 1
  if (at === null || top === undefined || foot === undefined || worktop === undefined || top <= foot)
    return null
  return Math.min(1, Math.max(0, (worktop - foot) / (top - foot)))
}

/** By how much the wall beside it widens the gap over its height, and narrows it, from where the run was measured. */
function leanOff(
  site: Site,
  side: CornerSide,
  piece: RunPiece,
): { readonly wider: Figure; readonly narrower: Figure } | null {
  const wall = site.wall(side.other)
  if (wall === undefined) return null
  const at = side.otherEnd === 'left' ? piece.front : sum('mm', rule.basis, [side.otherLength], [piece.front])
  const lean = leanOver(site.survey, wall, at, sum('mm', rule.basis, [piece.top], [piece.bottom]))
  if (lean === null) return null
  const share = measuredAt(site, side, piece)
  // A wall that comes in at the top leaves more at the foot.
  const ends = (l: number) => (share === null ? [l, -l] : [l * share, -l * (1 - share)])
  return {
    wider: derive('mm', rule.basis, [lean], (l) => Math.max(0, ...ends(l as number))),
    narrower: derive('mm', rule.basis, [lean], (l) => -Math.min(0, ...ends(l as number))),
  }
}

function judged(site: Site, side: CornerSide, piece: RunPiece): Found | null {
  const far = side.end === 'left' ? 'right' : 'left'
  const [near, edge] = [fromCorner(side, 'own', piece[side.end]), fromCorner(side, 'own', piece[far])]
  const there = piece.part?.width
  if (there === undefined || !hasValue(near) || Math.abs(near.value) > AT_THE_WALL) return null
  const [back, lean] = [fallsBack(side, piece.front), leanOff(site, side, piece)]
  const gap = sum('mm', rule.basis, [edge, back, ...(lean === null ? [] : [lean.wider])])
  const short = sum('mm', rule.basis, [gap], [there])
  // As wide as the gap is enough: what nobody has measured says nothing against it.
  if (!hasValue(short) || short.value <= 0)
    return tooMuchToCut(
      site,
      side,
      piece,
      sum('mm', rule.basis, [edge, back], lean === null ? [] : [lean.narrower]),
    )
  const isSure = short.value > short.pm
  return {
    subjects: [piece.id],
    about: [piece.id, side.other],
    weight: isSure ? 'stop' : 'ask',
    said: [
      isSure ? 'short' : 'near',
      { filler: piece.name, wall: site.name(side.other), edge, gap, there, short },
    ],
    where: { wall: side.own, along: piece[side.end] },
    ask: ['ask'],
  }
}

/** The wall comes in on it: more has to be cut off than was left on for that. */
function tooMuchToCut(site: Site, side: CornerSide, piece: RunPiece, least: Figure): Found | null {
  const { part } = piece
  if (part === null || !hasValue(part.scribe)) return null
  const cut = sum('mm', rule.basis, [part.width], [least])
  if (overLimit(sum('mm', rule.basis, [cut], [part.scribe])) !== 'over') return null
  return {
    subjects: [piece.id],
    about: [piece.id, side.other],
    weight: 'warn',
    said: ['cut', { filler: piece.name, wall: site.name(side.other), cut, allowed: part.scribe }],
    where: { wall: side.own, along: piece[side.end] },
    ask: ['ask.cut'],
  }
}

/** F74, F48: a filler too narrow for the gap where the wall beside it runs away from it, out from the corner or up. */
export const rule: Rule = {
  id: 'filler-short',
  heading: 'A filler that is too narrow',
  catches: ['F48', 'F74'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the gap at the face of the filler, by the angle of the corner and the lean of the wall',
  },
  why: 'A filler as wide as the gap at the back is too narrow at the front, and nothing can be cut on to it.',
  words: {
    short:
      'The {filler} is {there} wide. It has to fill {gap}: the gap is {edge} at the back, and {wall} falls away from it. {short} is missing.',
    near: 'The {filler} is {there} wide and may have to fill {gap}, for {wall} falls away from it. Readings this near cannot tell: measure the gap at the face, low and high.',
    cut: '{wall} comes in on the {filler}: {cut} have to be cut off, and {allowed} were left on for that.',
    'ask.cut':
      'Measure the gap at the face, low and high, before it is cut. What shows of it will be narrower than planned.',
    ask: 'Have it 20 mm wider than the widest gap, and cut it to the wall: that much is usual.',
  },
  check: (site) => {
    const pieces = runPieces(site).filter(({ part }) => CUT.includes(part?.kind))
    return cornerSides(site.kitchen, site.survey).flatMap((side) =>
      pieces.filter(({ wall }) => wall === side.own).flatMap((piece) => judged(site, side, piece) ?? []),
    )
  },
}
