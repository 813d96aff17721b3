import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { overLimit } from '../placing/over-limit'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { leanOver } from '../placing/wall-lean'
import { highestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a side that stands 3 mm off the wall shows; less is sealed',
}
const SEALED = known(3, 0, 'mm', [], practice)
/** A straightedge laid this near to a panel tells of the wall behind it, mm. Common practice. */
const ABOUT = 300

const size = (figure: Figure): Figure =>
  derive('mm', rule.basis, [figure], (value) => Math.abs(value as number))

/** The deepest hollow of the wall about there; nothing where none was read. */
function hollowAt(site: Site, piece: RunPiece): readonly Figure[] {
  const bows = (site.wall(piece.wall)?.straightness ?? []).flatMap(({ along, bow }) => {
    const at = site.survey.along(piece.wall, along)
    const isNear = hasValue(at) && hasValue(piece.left) && Math.abs(at.value - piece.left.value) <= ABOUT
    return isNear && hasValue(bow) && bow.value > 0 ? [bow] : []
  })
  return bows.length === 0 ? [] : [highestOf('mm', rule.basis, bows)]
}

/** How far what stands plumb there is off the wall, at its top or at its foot. */
function offTheWall(site: Site, piece: RunPiece): Figure | null {
  const wall = site.wall(piece.wall)
  if (wall === undefined) return null
  const tall = sum('mm', rule.basis, [piece.top], [piece.bottom])
  const lean = leanOver(site.survey, wall, piece.left, tall)
  const off = [...(lean === null ? [] : [size(lean)]), ...hollowAt(site, piece)]
  return off.length === 0 ? null : sum('mm', rule.basis, off)
}

/** A panel is cut to the wall along its back edge: what is cut away there it must have. */
function panel(site: Site, piece: RunPiece, fronts: readonly Figure[]): Found | null {
  const off = offTheWall(site, piece)
  if (off === null || fronts.length === 0) return null
  const front = highestOf('mm', rule.basis, fronts)
  const needed = sum('mm', rule.basis, [front, off])
  const short = sum('mm', rule.basis, [needed], [piece.front])
  const stands = overLimit(short)
  if (stands !== 'over' && stands !== 'near') return null
  const isSure = stands === 'over'
  const to = hasValue(needed) && hasValue(short) ? Math.ceil(needed.value + short.pm) : 0
  return {
    subjects: [piece.id],
    about: [piece.id, piece.wall],
    weight: isSure ? 'stop' : 'ask',
    said: [
      isSure ? 'short' : 'near',
      { panel: piece.name, wall: site.name(piece.wall), off, front, there: piece.front, needed, short },
    ],
    where: { wall: piece.wall, along: piece.left },
    ask: ['ask'],
    waysOut: [
      {
        said: ['deeper', { panel: piece.name, to }],
        cost: 'a part to buy',
        edits: [{ set: factId('finishing', piece.id, 'depth'), to }],
      },
    ],
  }
}

function tall(site: Site, piece: RunPiece): Found | null {
  const off = offTheWall(site, piece)
  if (off === null || overLimit(sum('mm', practice, [off], [SEALED])) !== 'over') return null
  return {
    subjects: [piece.id],
    about: [piece.id, piece.wall],
    weight: 'warn',
    said: ['tall', { unit: piece.name, wall: site.name(piece.wall), off }],
    where: { wall: piece.wall, along: piece.left },
    ask: ['ask.tall'],
  }
}

/** F48, F74: an end panel too narrow to be cut to a wall that leans or is hollow; a tall unit that stands off it. */
export const rule: Rule = {
  id: 'panel-short',
  heading: 'A panel that is too shallow',
  catches: ['F48', 'F74'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the lean over its height and the hollow behind it, added to what it has to cover',
  },
  why: 'A panel as deep as its unit leaves a wedge open at the wall, for as long as the kitchen stands.',
  words: {
    short:
      '{wall} stands off by {off} over the height of the {panel}, which has to reach {front} out from it. It is {there} deep and has to be {needed}: {short} is missing.',
    near: '{wall} stands off by {off} over the height of the {panel}, which is {there} deep and has to be {needed}. Readings this near cannot tell: hold the plumb line there again.',
    tall: 'Plumb, {unit} stands {off} off {wall} at its top or its foot. Pack it there, and cover the wedge.',
    ask: 'Hold the plumb line where the panel comes, over its whole height, before it is bought or cut.',
    'ask.tall': 'Plan a panel cut to the wall where its side shows. Never pull the unit to the wall.',
    deeper: 'Have the {panel} at least {to} mm deep.',
  },
  check: (site) => {
    const pieces = runPieces(site)
    const covered = new Set(site.parts.flatMap(({ part }) => (part.kind === 'end-panel' ? part.of : [])))
    return pieces.flatMap((piece) => {
      if (piece.part?.kind === 'end-panel') {
        const { of } = piece.part
        return (
          panel(
            site,
            piece,
            pieces.filter(({ id }) => of.includes(id)).map(({ front }) => front),
          ) ?? []
        )
      }
      return piece.unit?.kind === 'tall' && !covered.has(piece.id) ? (tall(site, piece) ?? []) : []
    })
  },
}
