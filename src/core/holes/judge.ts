import { type Figure, hasValue, quantise, type ValueFigure } from '../figure'
import type { Wall } from '../kitchen/schema'
import { type Message, message } from '../message'
import type { Band, Hole, HolePurpose } from '../plan/types'
import type { RegionPack } from '../region/region'
import { isNearOtherFace, isPastDepth, isPastSetback, isTracedThrough } from './depth'
import { lintelVerdict, type Rectangle } from './lintels'
import { nameOnWall } from './name-on-wall'
import { isOtherFaceUnseen } from './other-face'

/** What a hole is judged against: all of it on the hole's own wall. */
export interface HoleSite {
  readonly wall: Wall
  readonly region: RegionPack | null
  readonly bands: readonly Band[]
  /** Bands that count only for tips near the other face. */
  readonly deep: readonly Band[]
  readonly openings: readonly Rectangle[]
  /** Where a lintel must be though none was entered. */
  readonly likelyLintels: readonly Rectangle[]
}

/** Something that speaks against a hole. */
export interface Objection {
  readonly verdict: 'refused' | 'ask'
  readonly say: Message
  readonly band?: string
  /** The band it is too near to be told from being in it. */
  readonly near?: Band
  /** It goes away when the hole is moved. */
  readonly moves?: boolean
}

export interface HoleToJudge {
  readonly purpose: HolePurpose
  readonly along: Figure
  readonly height: Figure
  /** From the finished face to the deeper of bit and tip. */
  readonly depth: Figure
  /** What lies before the stud; null where the hole does not go into one. */
  readonly beforeStud: Figure | null
  /** What whoever chose the fixing already holds against it. */
  readonly objections: readonly Objection[]
}

export interface Judgement {
  readonly verdict: Hole['verdict']
  readonly against: readonly Message[]
  readonly hitBands: readonly string[]
  /** Bands nearer to it than the readings of both can tell. */
  readonly nearBands: readonly Band[]
  /** Something against it would go away if the hole were moved. */
  readonly wouldMove: boolean
  readonly pastDepth: boolean
  readonly pastSetback: boolean
}

/**
 * What is known against a hole. `refused` when it lies past the end of its wall, in a band, an opening, a lintel that may not be drilled, or has
 * nothing behind it to hold; `ask` when something must be settled first; else `trace first`. There is no better verdict
 * than that: bands are where cables should be, and the detector decides.
 */
export function judgeHole(hole: HoleToJudge, site: HoleSite): Judgement {
  const tooDeep = depthObjections(hole, site)
  const objections = [
    ...hole.objections,
    ...placeObjections(hole, site),
    ...tooDeep.objections,
    ...wallObjections(site),
  ]
  const refused = objections.some((o) => o.verdict === 'refused')
  return {
    verdict: refused ? 'refused' : objections.length > 0 ? 'ask' : 'trace first',
    against: [...objections.filter(isRefusal), ...objections.filter((o) => !isRefusal(o))].map((o) => o.say),
    hitBands: objections.flatMap((o) => (o.band === undefined ? [] : [o.band])),
    nearBands: objections.flatMap((o) => o.near ?? []),
    wouldMove: objections.some((o) => o.moves === true),
    pastDepth: tooDeep.pastDepth,
    pastSetback: tooDeep.pastSetback,
  }
}

const isRefusal = (objection: Objection): boolean => objection.verdict === 'refused'

function placeObjections(hole: HoleToJudge, site: HoleSite): readonly Objection[] {
  const { along, height } = hole
  const counting = [...site.bands, ...deepBands(hole, site)]
  if (!hasValue(along) || !hasValue(height)) {
    const open: Objection = { verdict: 'ask', say: message('holes.place-unknown'), moves: false }
    return [
      open,
      ...(hasValue(along) && isOffWall(along, site.wall) ? [pastTheEnd] : []),
      ...counting.filter((b) => isInWherever(b, along, height)).map((b) => inBand(b, site.wall)),
    ]
  }
  return [
    ...(isOffWall(along, site.wall) ? [pastTheEnd] : []),
    ...counting.flatMap((b) => againstBand(b, along, height, hole.purpose, site.wall)),
    ...site.openings
      .filter((o) => isWithin(o, along.value, height.value))
      .map((o) => inOpening(o, site.wall)),
    ...site.likelyLintels
      .filter((l) => isWithin(l, along.value, height.value))
      .map((l) => overOpening(l, site.wall)),
  ]
}

/**
 * Whether a hole of which only one position is known lies in a band wherever the other comes: a strip from floor to ceiling
 * over a socket, whatever the height; a strip along the whole wall, however far along.
 */
function isInWherever(band: Band, along: Figure, height: Figure): boolean {
  const { left, right, bottom, top } = band
  const isUpright = bottom === null && top === null
  const isLevel = left === null && right === null
  if (!isDrawn(band) || isUpright === isLevel) return false
  if (isUpright) return hasValue(along) && distanceTo(band, along.value, 0) === 0
  return hasValue(height) && distanceTo(band, 0, height.value) === 0
}

const pastTheEnd: Objection = { verdict: 'refused', say: message('holes.off-the-wall'), moves: true }

/** Nothing is there to be drilled, whatever hangs over the end of the wall. */
function isOffWall(along: ValueFigure, { length }: Wall): boolean {
  return along.value < 0 || (hasValue(length) && along.value > length.value)
}

function deepBands(hole: HoleToJudge, site: HoleSite): readonly Band[] {
  const rules = site.region?.bands ?? null
  return rules !== null && isNearOtherFace(hole.depth, site.wall, rules) ? site.deep : []
}

const inOpening = (opening: Rectangle, wall: Wall): Objection => ({
  verdict: opening.isUnsure === true ? 'ask' : 'refused',
  say: message(opening.isUnsure === true ? 'holes.perhaps-in-opening' : 'holes.in-opening', {
    about: nameOnWall(wall, opening.id),
  }),
  moves: true,
})

const overOpening = (opening: Rectangle, wall: Wall): Objection => ({
  verdict: 'ask',
  say: message('holes.over-opening', { about: nameOnWall(wall, opening.id) }),
  moves: true,
})

function isWithin(r: Rectangle, along: number, height: number): boolean {
  return along >= r.left && along <= r.right && height >= r.bottom && height <= r.top
}

/** A base unit stands under a worktop: its bracket is never within reach of the strip under a ceiling. */
function isBeneathNotice(band: Band, purpose: HolePurpose): boolean {
  return band.kind === 'ceiling' && band.unknownBecause.length > 0 && purpose === 'base-bracket'
}

function againstBand(
  band: Band,
  along: ValueFigure,
  height: ValueFigure,
  purpose: HolePurpose,
  wall: Wall,
): readonly Objection[] {
  if (isBeneathNotice(band, purpose)) return []
  const unknown: readonly Objection[] =
    band.unknownBecause.length === 0 ? [] : [{ verdict: 'ask', say: notPlaced(band, wall) }]
  if (!isDrawn(band)) return unknown
  const outside = quantise(distanceTo(band, along.value, height.value))
  if (outside === 0) return [inBand(band, wall), ...unknown]
  const slack = quantise(band.pm + Math.max(along.pm, height.pm))
  return outside > slack ? unknown : [nearBand(band, wall, outside), ...unknown]
}

function notPlaced(band: Band, wall: Wall): Message {
  if (band.kind === 'ceiling') return message('holes.ceiling-not-read')
  return message('holes.band-not-placed', { about: aboutOf(band, wall) })
}

function aboutOf(band: Band, wall: Wall): string {
  return band.about.map((id) => nameOnWall(wall, id)).join(', ')
}

function inBand(band: Band, wall: Wall): Objection {
  const lintel = band.kind === 'lintel' ? wall.lintels.find((l) => band.about.includes(l.id)) : undefined
  return {
    verdict: lintel === undefined ? 'refused' : lintelVerdict(lintel.kind),
    say: message(`holes.in-${band.kind}`, { about: aboutOf(band, wall) }),
    band: band.id,
    moves: true,
  }
}

function nearBand(band: Band, wall: Wall, by: number): Objection {
  return {
    verdict: 'ask',
    say: message('holes.near-band', { about: aboutOf(band, wall), by: Math.round(by * 10) / 10 }),
    near: band,
    moves: true,
  }
}

/** Whether enough of a band's edges is known to draw it: an upright one needs left and right, a level one bottom or top. */
function isDrawn(band: Band): boolean {
  if (band.unknownBecause.length === 0) return true
  switch (band.kind) {
    case 'accessory-vertical':
    case 'corner':
      return band.left !== null && band.right !== null
    case 'accessory-horizontal':
      return band.bottom !== null && band.top !== null
    case 'ceiling':
      return band.bottom !== null
    case 'service':
    case 'lintel':
      return [band.left, band.right, band.bottom, band.top].every((edge) => edge !== null)
  }
}

/** How far a point lies outside a band, in the worse of the two directions; 0 within it or on its edge. */
export function distanceTo(
  band: Pick<Band, 'left' | 'right' | 'bottom' | 'top'>,
  along: number,
  height: number,
): number {
  const sideways = Math.max(
    band.left === null ? 0 : band.left - along,
    band.right === null ? 0 : along - band.right,
    0,
  )
  const upright = Math.max(
    band.bottom === null ? 0 : band.bottom - height,
    band.top === null ? 0 : height - band.top,
    0,
  )
  return Math.max(sideways, upright)
}

interface Deep {
  readonly objections: readonly Objection[]
  readonly pastDepth: boolean
  readonly pastSetback: boolean
}

function depthObjections(hole: HoleToJudge, { region, wall }: HoleSite): Deep {
  const { depth, beforeStud } = hole
  if (!hasValue(depth)) {
    const say = message('holes.depth-unknown')
    return { objections: [{ verdict: 'ask', say }], pastDepth: false, pastSetback: false }
  }
  const settled = isTracedThrough(wall, depth)
  const rules = region?.bands ?? null
  const setback = region?.setback ?? null
  const pastDepth = !settled && rules !== null && isPastDepth(depth, rules)
  const pastSetback =
    !settled && setback !== null && beforeStud !== null && isPastSetback(depth, beforeStud, setback)
  const deep = (key: string, limit: number): Objection => ({
    verdict: 'ask',
    say: message(key, { depth, limit }),
  })
  return {
    objections: [
      ...(pastDepth ? [deep('holes.past-depth', rules.depth)] : []),
      ...(pastSetback ? [deep('holes.past-setback', Math.round(setback.depth))] : []),
    ],
    pastDepth,
    pastSetback,
  }
}

function wallObjections({ region, wall }: HoleSite): readonly Objection[] {
  if (region === null) return [{ verdict: 'ask', say: message('holes.region-not-chosen') }]
  if (region.bands === null || !isOtherFaceUnseen(wall, region.bands)) return []
  return [{ verdict: 'ask', say: message('holes.other-face-unseen') }]
}
