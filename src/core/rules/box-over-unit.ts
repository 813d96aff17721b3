import { hasValue } from '../figure'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { lapOf, meeting } from '../placing/laps'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

function judged(piece: RunPiece, box: BoxOnWall): Found | null {
  const hook = piece.unit?.hookOn ?? null
  const along = lapOf({ from: piece.left, to: piece.right }, { from: box.left, to: box.right })
  const deep = lapOf({ from: piece.back, to: piece.front }, { from: box.near, to: box.out })
  const there = sum('mm', rule.basis, [box.bottom], [piece.top])
  // What it stands in is another matter; so is what it hardly reaches under.
  if (hook === null || !hasValue(there) || there.value < 0 || meeting([along, deep]) === 'no') return null
  const short = sum('mm', rule.basis, [hook.needed], [there])
  const stands = overLimit(short)
  if (stands !== 'over' && stands !== 'near') return null
  const isSure = stands === 'over' && meeting([along, deep]) === 'yes'
  return {
    subjects: [piece.id, box.id],
    about: [piece.id, box.id],
    weight: isSure ? 'stop' : 'ask',
    said: [
      isSure ? 'short' : 'near',
      { unit: piece.name, box: box.name, there, needed: hook.needed, short, from: box.left, to: box.right },
    ],
    figures: [along, deep],
    where: { wall: piece.wall, along: box.left, height: box.bottom },
    ask: ['ask'],
  }
}

/** F58, F38: a boxing or beam so close over a wall unit that it cannot be lifted on to its hooks, in a corner of it or all along. */
export const rule: Rule = {
  id: 'box-over-unit',
  catches: ['F38', 'F58'],
  dangerous: true,
  basis: { kind: 'geometry', why: 'from the top of the unit up to what is over any part of it' },
  why: 'Measured at its middle there is room enough; the boxing over its last hand’s width stops the hook under the rail.',
  words: {
    short:
      '{unit} has to be lifted over its place to be hooked on, and needs {needed} over it. Under {box}, from {from} to {to} along the wall, there are only {there}: {short} is missing.',
    near: '{unit} needs {needed} over it to be hooked on. Under {box}, from {from} to {to} along the wall, there are {there}. Readings this near cannot tell: measure there again.',
    ask: 'Set the wall units lower, wind the height screws down before lifting if that is enough, or have the boxing cut back.',
  },
  check: (site: Site) => {
    const boxes = boxesOnWalls(site.kitchen, site.survey)
    if (boxes.length === 0) return []
    return runPieces(site).flatMap((piece) =>
      boxes.filter(({ wall }) => wall === piece.wall).flatMap((box) => judged(piece, box) ?? []),
    )
  },
}
