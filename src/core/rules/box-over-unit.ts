import { hasValue } from '../figure'
import { leastRoomToHookOn, windingDown } from '../heights/demands/hook-on'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { lapOf, meeting } from '../placing/laps'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

function judged(site: Site, piece: RunPiece, box: BoxOnWall): Found | null {
  const hook = piece.unit?.hookOn ?? null
  const unit = site.stated(piece.id)
  const along = lapOf({ from: piece.left, to: piece.right }, { from: box.left, to: box.right })
  const deep = lapOf({ from: piece.back, to: piece.front }, { from: box.near, to: box.out })
  const there = sum('mm', rule.basis, [box.bottom], [piece.top])
  // What it stands in is another matter; so is what it hardly reaches under.
  if (
    hook === null ||
    unit === undefined ||
    !hasValue(there) ||
    there.value < 0 ||
    meeting([along, deep]) === 'no'
  )
    return null
  const least = leastRoomToHookOn(unit)
  const short = sum('mm', rule.basis, [least], [there])
  const stands = overLimit(short)
  const common = {
    subjects: [piece.id, box.id],
    about: [piece.id, box.id],
    figures: [along, deep],
    where: { wall: piece.wall, along: box.left, height: box.bottom },
  }
  const values = {
    unit: piece.name,
    box: box.name,
    there,
    needed: hook.needed,
    short,
    from: box.left,
    to: box.right,
  }
  const down = windingDown(unit)
  const goesOnLower = hasValue(down) && down.value > 0
  if (stands === 'over' || stands === 'near') {
    const isSure = stands === 'over' && meeting([along, deep]) === 'yes'
    const said = isSure ? (goesOnLower ? 'short-wound-down' : 'short') : 'near'
    return { ...common, weight: isSure ? 'stop' : 'ask', said: [said, { ...values, down }], ask: ['ask'] }
  }
  const asItIs = overLimit(sum('mm', rule.basis, [hook.needed], [there]))
  if (!goesOnLower || (asItIs !== 'over' && asItIs !== 'near')) return null
  return { ...common, weight: 'warn', said: ['wind-down', { ...values, down }] }
}

/** F58, F38: a boxing or beam so close over a wall unit that it cannot be lifted on to its hooks, in a corner of it or all along. */
export const rule: Rule = {
  id: 'box-over-unit',
  heading: 'A boxing over a wall unit',
  catches: ['F38', 'F58'],
  dangerous: true,
  basis: { kind: 'geometry', why: 'from the top of the unit up to what is over any part of it' },
  why: 'Measured at its middle there is room enough; the boxing over its last hand’s width stops the hook under the rail.',
  words: {
    short:
      '{unit} has to be lifted over its place to be hooked on, and needs {needed} over it. Under {box}, from {from} to {to} along the wall, there are only {there}: {short} is missing.',
    'short-wound-down':
      '{unit} has to be lifted over its place to be hooked on, and needs {needed} over it. Under {box}, from {from} to {to} along the wall, there are only {there}. Even with its height screws wound down by {down}, {short} is missing.',
    'wind-down':
      'Under {box}, from {from} to {to} along the wall, there are only {there} over {unit}, and it needs {needed} to be hooked on. Wind its height screws down by {down} first, hook it on, and wind it up again.',
    near: '{unit} needs {needed} over it to be hooked on. Under {box}, from {from} to {to} along the wall, there are {there}. Readings this near cannot tell: measure there again.',
    ask: 'Set the wall units lower, or have the boxing cut back.',
  },
  check: (site: Site) => {
    const boxes = boxesOnWalls(site.kitchen, site.survey)
    if (boxes.length === 0) return []
    return runPieces(site).flatMap((piece) =>
      boxes.filter(({ wall }) => wall === piece.wall).flatMap((box) => judged(site, piece, box) ?? []),
    )
  },
}
