import { type Figure, hasValue, type InputId, quantise, restingOn, unknown } from '../figure'
import { leftBehind } from '../holes/depth'
import { judgeHole, type Objection } from '../holes/judge'
import { factId } from '../kitchen/fact-id'
import type { Fixing } from '../kitchen/schema'
import { message } from '../message'
import type { Band, Hole, UnitId } from '../plan/types'
import { type Backing, masonryBacking, noBacking } from './base-material'
import { type Choice, chooseFixing, type FixingPurpose, spareLength } from './choose-fixing'
import { isPlainScrew } from './pilot'
import { depthOfHole, lengthNeeded, pilotDepth } from './screw-length'
import { type Timber, timberAt } from './timber'
import type { WallWork } from './wall-work'

/** A hole wanted at a place, before it is judged. */
export interface WantedHole {
  readonly id: string
  readonly purpose: FixingPurpose
  readonly for: readonly UnitId[]
  readonly along: Figure
  readonly height: Figure
  /** What the screw goes through before the finished face. */
  readonly standOff: Figure
  /** What it is aimed at in a stud wall; left out: whatever stands behind its place. */
  readonly timber?: Timber
}

export type Trouble =
  | 'too-short'
  | 'maybe-short'
  | 'out-of-back'
  | 'none-entered'
  | 'no-stand-off'
  | 'base-not-known'
  | 'hold-not-known'

/** A hole as judged, with what its findings are made of. */
export interface Drilled {
  readonly hole: Hole
  readonly troubles: readonly Trouble[]
  /** Length the screw needs, and what it has over. */
  readonly needed: Figure
  readonly spare: Figure
  /** Left of the wall behind its tip. */
  readonly behind: Figure
  readonly screw: Fixing | null
  /** What the screw goes through before the finished face, and behind it before what holds. */
  readonly standOff: Figure
  readonly inFront: Figure
  /** Bands nearer to it than the readings of both can tell. */
  readonly nearBands: readonly Band[]
  /** What speaks against it would go away if it were moved. */
  readonly wouldMove: boolean
  readonly pastDepth: boolean
  readonly pastSetback: boolean
}

/** A screw may not come nearer the other face than this. Common practice. */
const LEAST_LEFT = 10

/**
 * Chooses the screw for a hole, works out how deep it goes, and judges it: against what it holds in, the length of the
 * screw, the thickness of the wall, and everything known about its place.
 */
export function drilled(work: WallWork, want: WantedHole): Drilled {
  const { wall, kitchen } = work
  const target = targetOf(work, want)
  const backing = target.backing
  const choice = restingAlso(chooseFixing(kitchen, want.purpose, backing, want.standOff), target.from)
  const screw = choice.fixing
  const depth = depthOf(screw, choice, backing, want.standOff)
  const spare = spareLength(screw, backing, want.standOff)
  const behind = leftBehind(depth, wall)
  const troubles = [
    ...choiceTroubles(choice, work),
    ...holdTroubles(screw, depth),
    ...lengthTroubles(spare, behind),
  ]
  const judgement = judgeHole(
    {
      purpose: want.purpose,
      along: want.along,
      height: want.height,
      depth,
      beforeStud: work.kind === 'studs' ? backing.inFront : null,
      objections: [...target.objections, ...troubles.filter((t) => t !== 'maybe-short').map(objectionTo)],
    },
    work.site,
  )
  return {
    hole: {
      id: want.id,
      wall: wall.id,
      purpose: want.purpose,
      for: want.for,
      along: want.along,
      height: want.height,
      bit: chosen(screw?.bit, choice),
      depth,
      screwLength: chosen(screw?.length, choice),
      fixing: screw?.id ?? null,
      into: backing.material,
      stud: target.stud,
      verdict: judgement.verdict,
      against: judgement.against,
      hitBands: judgement.hitBands,
      number: null,
    },
    troubles,
    needed: lengthNeeded(want.standOff, backing.inFront, chosen(screw?.embedment, choice)),
    spare,
    behind,
    screw,
    standOff: want.standOff,
    inFront: backing.inFront,
    nearBands: judgement.nearBands,
    wouldMove: judgement.wouldMove,
    pastDepth: judgement.pastDepth,
    pastSetback: judgement.pastSetback,
  }
}

function restingAlso(choice: Choice, from: readonly InputId[]): Choice {
  return { ...choice, from: [...choice.from, ...from] }
}

interface Target {
  readonly backing: Backing
  /** Facts that decide what is behind this place. */
  readonly from: readonly InputId[]
  readonly stud: string | null
  readonly objections: readonly Objection[]
}

function targetOf(work: WallWork, want: WantedHole): Target {
  const { wall } = work
  if (work.kind === 'masonry') return { backing: masonryBacking(wall), from: [], stud: null, objections: [] }
  if (work.kind === null) {
    const say = message('holes.wall-not-known')
    const backing = noBacking([factId('walls', wall.id, 'construction')])
    return { backing, from: [], stud: null, objections: [{ verdict: 'ask', say }] }
  }
  const timber = want.timber ?? timberAt(wall, work.studs.usable, work.letIns, want.along, want.height)
  if (timber === 'place-unknown') {
    return {
      backing: noBacking([...missingOf(want.along), ...missingOf(want.height)]),
      from: [...want.along.from, ...want.height.from],
      stud: null,
      objections: [],
    }
  }
  return { backing: timber.backing, from: timber.from, stud: timber.stud, objections: againstTimber(timber) }
}

const missingOf = (figure: Figure) => (figure.state === 'unknown' ? figure.missing : [])

function againstTimber({ id, sure }: Timber): readonly Objection[] {
  if (id === null) return [{ verdict: 'refused', say: message('holes.nothing-behind'), moves: true }]
  return sure ? [] : [{ verdict: 'ask', say: message('holes.timber-not-sure', { about: id }) }]
}

/** A plug or anchor has a hole of its own, which its maker must state; a screw into timber has a pilot. */
function depthOf(screw: Fixing | null, choice: Choice, backing: Backing, standOff: Figure): Figure {
  if (screw === null) return unknown('mm', choice.missing, [...choice.from, ...backing.inFront.from])
  const isPlain = isPlainScrew(screw.kind)
  const depth = depthOfHole({
    standOff,
    inFront: backing.inFront,
    holeDepth: isPlain ? pilotDepth(screw.holeDepth) : screw.holeDepth,
    length: screw.length,
  })
  return restingOn(depth, choice.from)
}

/** A figure of the screw that goes in: it also rests on what decided between several. */
function chosen(figure: Figure | undefined, choice: Choice): Figure {
  return figure === undefined ? unknown('mm', choice.missing, choice.from) : restingOn(figure, choice.from)
}

function choiceTroubles({ because }: Choice, work: WallWork): readonly Trouble[] {
  if (because === 'none-entered' || because === 'no-stand-off') return [because]
  return because === 'base-not-known' && work.kind === 'masonry' ? [because] : []
}

/** How deep it goes is known, and not whether enough of it holds: its maker says how much that is. */
function holdTroubles(screw: Fixing | null, depth: Figure): readonly Trouble[] {
  return screw !== null && hasValue(depth) && !hasValue(screw.embedment) ? ['hold-not-known'] : []
}

function lengthTroubles(spare: Figure, behind: Figure): readonly Trouble[] {
  const short: readonly Trouble[] = !hasValue(spare)
    ? []
    : spare.value < 0
      ? ['too-short']
      : quantise(spare.value - spare.pm) < 0
        ? ['maybe-short']
        : []
  const out = hasValue(behind) && quantise(behind.value - behind.pm) <= LEAST_LEFT
  return out ? [...short, 'out-of-back'] : short
}

function objectionTo(trouble: Trouble): Objection {
  return { verdict: 'ask', say: message(`holes.${trouble}`) }
}
