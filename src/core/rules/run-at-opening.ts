import { type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Opening } from '../kitchen/schema'
import { lapOf, meeting } from '../placing/laps'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { sum } from '../survey/sum'
import type { Found, Rule, Site, Way } from './rule'

/** No trim round a door is wider than this, mm: nearer than it, its width matters. Common practice. */
const WIDEST_TRIM = 120

const NAMES: Readonly<Record<Opening['kind'], string>> = {
  door: 'door',
  window: 'window',
  arch: 'arch',
  hatch: 'hatch',
}
const isThrough = ({ kind }: Opening) => kind === 'door' || kind === 'arch'

interface Frame {
  readonly opening: Opening
  readonly left: Figure
  readonly right: Figure
  readonly bottom: Figure
  readonly top: Figure
}

/** The opening with its trim all round, by so much as is asked. */
function framed(site: Site, wall: string, opening: Opening, trim: Figure): Frame {
  const { along, height } = site.survey
  const left = sum('mm', rule.basis, [along(wall, opening.left)], [trim])
  const right = sum('mm', rule.basis, [along(wall, opening.right), trim])
  const at = { wall, along: along(wall, opening.left), out: NONE }
  return {
    opening,
    left,
    right,
    bottom: height(opening.bottom, at),
    top: sum('mm', rule.basis, [height(opening.top, at), trim]),
  }
}

const NONE = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the opening itself' })

/** Its heights count only where both are read; a door goes down to the floor and is as high as anybody can reach. */
function uprightLap(piece: RunPiece, { opening, bottom, top }: Frame): readonly Figure[] {
  const lap = lapOf({ from: piece.bottom, to: piece.top }, { from: bottom, to: top })
  return hasValue(lap) || !isThrough(opening) ? [lap] : []
}

/** Moves the run by moving the one unit of it that is placed from the corner, when this is that one. */
function waysOut(site: Site, piece: RunPiece, by: Figure): readonly Way[] {
  const part = site.kitchen.finishing.find(({ id }) => id === piece.id)
  if (part?.kind !== 'end-panel' || !hasValue(by)) return []
  return [
    {
      said: ['without', { part: piece.name }],
      cost: 'minutes',
      edits: [{ remove: factId('finishing', piece.id) }],
    },
  ]
}

function judged(site: Site, wall: string, piece: RunPiece, opening: Opening): Found | null {
  const isTrimKnown = hasValue(opening.architrave)
  const frame = framed(site, wall, opening, isTrimKnown ? opening.architrave : NONE)
  const lap = lapOf({ from: piece.left, to: piece.right }, { from: frame.left, to: frame.right })
  const upright = uprightLap(piece, frame)
  if (!hasValue(lap) || meeting(upright) === 'no' || meeting(upright) === 'not-known') return null
  const meets = meeting([lap, ...upright])
  const isLeft = hasValue(piece.left) && hasValue(frame.left) && piece.left.value < frame.left.value
  const values = {
    what: piece.name,
    opening: NAMES[opening.kind],
    wall: site.name(wall),
    over: lap,
    edge: isLeft ? frame.left : frame.right,
    end: isLeft ? piece.right : piece.left,
    trim: opening.architrave,
  }
  const common = {
    subjects: [piece.id, `${wall}.${opening.id}`],
    about: [piece.id, wall],
    where: { wall, along: isLeft ? piece.right : piece.left },
    figures: [lap, ...upright],
  }
  if (meets === 'yes')
    return {
      ...common,
      weight: 'stop',
      said: [isTrimKnown ? 'on-trim' : 'in-opening', values],
      ask: ['ask'],
      waysOut: waysOut(site, piece, lap),
    }
  if (isTrimKnown)
    return meets === 'perhaps' ? { ...common, weight: 'ask', said: ['near', values], ask: ['ask'] } : null
  const gap = -lap.value
  if (!isThrough(opening) || gap > WIDEST_TRIM) return null
  const from = [factId('walls', wall, 'openings', opening.id, 'architrave')]
  return { ...common, weight: 'ask', said: ['trim', values], from, ask: ['ask.trim'] }
}

/** F06: the end of a run that covers the trim of a door or window, or stands in the opening. */
export const rule: Rule = {
  id: 'run-at-opening',
  heading: 'A run that reaches an opening',
  catches: ['F06'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'the end of the run against the opening and the trim round it' },
  why: 'A run planned up to the opening forgets the trim, and the last panel lands on it.',
  words: {
    'on-trim':
      '{what} ends at {end} along {wall}, and the trim of the {opening} begins at {edge}. It covers {over} of it.',
    'in-opening':
      '{what} ends at {end} along {wall}, and the {opening} begins at {edge}. It stands {over} in it.',
    near: '{what} ends at {end} along {wall}, and the trim of the {opening} begins at {edge}. Readings this near cannot tell: measure both from the same corner.',
    trim: '{what} ends at {end} along {wall}, close to the {opening}, which begins at {edge}. How wide the trim round it is nobody has said.',
    ask: 'Move the end of the run, or have the trim made narrower before the panel is bought.',
    'ask.trim': 'Measure the trim from the opening to its outer edge.',
    without: 'Leave out {part} and show the side of the unit.',
  },
  check: (site) => {
    const pieces = runPieces(site)
    return site.kitchen.walls.flatMap(({ id, openings }) =>
      openings.flatMap((opening) =>
        pieces.filter(({ wall }) => wall === id).flatMap((piece) => judged(site, id, piece, opening) ?? []),
      ),
    )
  },
}
