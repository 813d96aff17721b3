import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { overLimit } from '../placing/over-limit'
import { carriedOffsets, spreadOf } from '../survey/carried'
import { lineOffset } from '../survey/line-offset'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a college marking sheet calls a line good that closes within 1 mm, and rejects one that is out by more than 2',
}
const MOST = known(2, 0, 'mm', [], practice)
/** Over this way the two-wall error is taken. */
const OVER = 5000

const grown: Basis = { kind: 'geometry', why: 'the error over 5 m, grown to the longest way across the room' }
const size = (figure: Figure): Figure =>
  derive('mm', practice, [figure], (value) => Math.abs(value as number))

/** The longest straight way across the room; the longest wall where the room has no outline. */
function longestWay({ survey, kitchen }: Site): Figure | null {
  const lengths = kitchen.walls.map(({ length }) => length)
  if (lengths.length === 0 || !lengths.every(hasValue)) return null
  const from = lengths.flatMap((length) => length.from)
  const corners = survey.outline ?? []
  const ways = corners.flatMap((a) => corners.map((b) => Math.hypot(a.x - b.x, a.y - b.y)))
  const most = Math.max(...ways, ...lengths.map(({ value }) => value))
  return known(Math.round(most), 0, 'mm', from, grown)
}

function judged(
  said: 'laser' | 'closing',
  id: string,
  error: Figure,
  measured: Figure,
  way: Figure | null,
): Found | null {
  const stands = overLimit(sum('mm', practice, [error], [MOST]))
  if (stands !== 'over' && stands !== 'near') return null
  return {
    subjects: [id, said],
    about: [id],
    weight: stands === 'over' ? 'stop' : 'ask',
    said: [
      stands === 'over' ? said : `${said}-near`,
      { error, most: MOST, ...(way === null ? {} : { way }) },
    ],
    figures: [error, measured],
    from: [factId('lines', id, said === 'laser' ? 'reversal' : 'closing')],
    ask: [`ask.${said}`],
  }
}

/** Marks read from two lines, and an offset typed beside them, that do not agree on how far the lines are apart. */
function apart({ kitchen }: Site, id: string): Found | null {
  const at = kitchen.lines.findIndex((line) => line.id === id)
  const line = kitchen.lines[at]
  if (line === undefined || at === 0) return null
  const before = { lines: kitchen.lines.slice(0, at) }
  const carried = carriedOffsets(line, (other) => lineOffset(before, other))
  const error = spreadOf(hasValue(line.offset) && carried.length > 0 ? [line.offset, ...carried] : carried)
  if (error === null || error.value <= MOST.value) return null
  return {
    subjects: [id, 'marks'],
    about: [id],
    weight: 'stop',
    said: ['marks', { error, most: MOST }],
    figures: [error],
    ask: ['ask.marks'],
  }
}

/** F17: a line that is not level: the laser is out, or the line does not come back to where it began. */
export const rule: Rule = {
  id: 'line-out-of-true',
  heading: 'A line that is out of true',
  catches: ['F17'],
  dangerous: false,
  basis: practice,
  why: 'Everything is measured from the line: a line that leans takes the whole kitchen with it.',
  words: {
    laser:
      'The laser is out by {error} over the longest way across this room, {way}; more than {most} is not taken. Every line struck with it leans.',
    'laser-near':
      'The laser may be out by too much: {error} over the longest way across this room, {way}, where {most} is the most. Turn it round and look again, more closely.',
    closing: 'The line misses its own start by {error} once round the room; more than {most} is not taken.',
    'closing-near':
      'The line misses its own start by {error} once round the room, where {most} is the most. Go round again and read it more closely.',
    marks:
      'The marks this line was carried by put it {error} apart, one from another; more than {most} is not taken. One of them was read wrongly, or a line has moved.',
    'ask.marks': 'Read every mark again, from both lines.',
    'ask.laser': 'Have the laser set, or use a water level. Then read everything again.',
    'ask.closing':
      'Find the wall at which it jumps, strike the line again, and read again what was read from it.',
  },
  check: (site) =>
    site.kitchen.lines.flatMap(({ id, reversal, closing }) => {
      const way = longestWay(site)
      const laser =
        way === null
          ? null
          : judged(
              'laser',
              id,
              derive('mm', grown, [reversal, way], (e, w) => (Math.abs(e as number) * (w as number)) / OVER),
              reversal,
              way,
            )
      return [laser, judged('closing', id, size(closing), closing, null), apart(site, id)].flatMap(
        (found) => found ?? [],
      )
    }),
}
