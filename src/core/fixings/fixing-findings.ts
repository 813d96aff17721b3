import { type Basis, hasValue, sortedIds } from '../figure'
import { finding } from '../holes/finding'
import { holesSaid } from '../holes/holes-said'
import { isOtherFaceUnseen } from '../holes/other-face'
import { factId } from '../kitchen/fact-id'
import { followedBy, type Message, message } from '../message'
import type { Finding } from '../plan/types'
import type { UnitPosition } from '../units/positions'
import type { Drilled, Trouble } from './drill'
import { isHung } from './hung'
import { knockDoubt } from './wall-kind'
import type { WallWork } from './wall-work'

const practice = (why: string): Basis => ({ kind: 'common-practice', why })

/** What has to be settled about a wall before the first hole in it, whichever hole that is. */
export function wallFindings(
  work: WallWork,
  holes: readonly Drilled[],
  isFixedTo: boolean,
): readonly Finding[] {
  if (!isFixedTo) return []
  return [
    ...notKnown(work),
    ...knocked(work),
    ...(holes.length === 0 ? [] : [...traceFirst(work), ...otherFace(work), ...chimney(work)]),
    ...past(work, holes, 'pastDepth'),
    ...past(work, holes, 'pastSetback'),
    ...doubtfulStuds(work),
  ]
}

function ofWall(
  work: WallWork,
  rule: string,
  say: Message,
  rest: Pick<Parameters<typeof finding>[0], 'weight' | 'basis'> & Partial<Parameters<typeof finding>[0]>,
): Finding {
  return finding({ rule, subjects: [work.wall.id], where: { wall: work.wall.id }, say, ...rest })
}

function notKnown(work: WallWork): readonly Finding[] {
  if (work.kind !== null) return []
  const basis = practice('what a wall is made of is never found out by drilling before it has been traced')
  const from = [factId('walls', work.wall.id, 'construction')]
  const say = message('fixings.wall-not-known', { wall: work.name })
  return [ofWall(work, 'wall-not-known', say, { weight: 'ask', dangerous: true, basis, from })]
}

function knocked(work: WallWork): readonly Finding[] {
  const doubt = knockDoubt(work.wall)
  if (doubt === null) return []
  const basis = practice('blown or hollow plaster takes no fixing until it has been tested')
  const from = ['knock', 'construction'].map((key) => factId('walls', work.wall.id, key))
  const say = message(`fixings.knock-${doubt}`, { wall: work.name })
  return [ofWall(work, 'knock-does-not-match', say, { weight: 'ask', basis, from })]
}

function traceFirst(work: WallWork): readonly Finding[] {
  if (work.wall.traced === 'whole') return []
  const basis = practice('bands show where cables should be; the detector decides, and can be fooled')
  const from = [factId('walls', work.wall.id, 'traced')]
  const say = message('holes.trace-first', { wall: work.name })
  return [ofWall(work, 'trace-first', say, { weight: 'ask', dangerous: true, basis, from })]
}

function otherFace(work: WallWork): readonly Finding[] {
  const rules = work.site.region?.bands ?? null
  if (rules === null || !isOtherFaceUnseen(work.wall, rules)) return []
  const facts = ['otherFaceChecked', 'behind'].map((key) => factId('walls', work.wall.id, key))
  const say = message('holes.other-face-not-looked-at', { wall: work.name })
  return [
    ofWall(work, 'other-face-not-looked-at', say, {
      weight: 'ask',
      dangerous: true,
      basis: rules.basis,
      from: [...facts, ...work.wall.thickness.from],
    }),
  ]
}

function chimney(work: WallWork): readonly Finding[] {
  if (work.wall.construction !== 'chimney-breast') return []
  const basis = practice(
    'short fixings only in a chimney breast: a longer one goes through the flue or its liner',
  )
  const say = message('fixings.flue-behind', { wall: work.name })
  return [ofWall(work, 'flue-behind', say, { weight: 'warn', basis })]
}

function past(
  work: WallWork,
  holes: readonly Drilled[],
  which: 'pastDepth' | 'pastSetback',
): readonly Finding[] {
  // A refused place is not drilled, so nothing is to be settled for it.
  const deep = holes.filter((d) => d[which] && d.hole.verdict !== 'refused')
  if (deep.length === 0) return []
  const { region } = work.site
  const depths = deep.map((d) => d.hole.depth).filter(hasValue)
  const deepest = [...depths].sort((a, b) => b.value - a.value)[0]
  if (deepest === undefined) return []
  const isDepth = which === 'pastDepth'
  const basis =
    (isDepth ? region?.bands?.basis : region?.setback?.basis) ?? practice('deep holes are traced first')
  const facts = ['traced', 'tracedDepth', 'provedDead'].map((key) => factId('walls', work.wall.id, key))
  const values = {
    wall: work.name,
    holes: holesSaid(deep.map((d) => d.hole)),
    deepest,
    limit: limitOf(work, isDepth),
  }
  const rule = isDepth ? 'hole-past-50' : 'hole-past-setback'
  return [
    ofWall(work, rule, message(`holes.${rule}`, values), {
      weight: 'ask',
      dangerous: true,
      about: [work.wall.id, ...deep.map((d) => d.hole.id)],
      figures: depths,
      from: facts,
      settledBy: facts,
      basis,
    }),
  ]
}

function limitOf({ site }: WallWork, isDepth: boolean): number {
  return isDepth ? (site.region?.bands?.depth ?? 50) : Math.round(site.region?.setback?.depth ?? 32)
}

function doubtfulStuds(work: WallWork): readonly Finding[] {
  if (work.kind !== 'studs') return []
  return work.studs.doubtful.map((stud) =>
    finding({
      rule: 'stud-not-confirmed',
      subjects: [`${work.wall.id}.${stud.id}`],
      weight: 'ask',
      dangerous: true,
      about: [work.wall.id, stud.id],
      where: { wall: work.wall.id, along: stud.centre },
      say: hasValue(stud.centre)
        ? message(`fixings.stud-${stud.why}`, { at: stud.centre, wall: work.name })
        : message(`fixings.stud-${stud.why}.no-place`, { wall: work.name }),
      figures: [stud.centre],
      from: stud.missing,
      settledBy: stud.missing,
      basis: practice('one beep of a detector is not a stud: both edges are found, and the middle taken'),
      ask: message('fixings.find-the-studs', { wall: work.name }),
    }),
  )
}

const TROUBLE: Readonly<Record<Trouble, Pick<Finding, 'rule' | 'weight'>>> = {
  'too-short': { rule: 'screw-too-short', weight: 'stop' },
  'maybe-short': { rule: 'screw-length-marginal', weight: 'note' },
  'out-of-back': { rule: 'screw-out-of-back', weight: 'stop' },
  'none-entered': { rule: 'fixing-not-entered', weight: 'ask' },
  'no-stand-off': { rule: 'fixing-not-entered', weight: 'ask' },
  'base-not-known': { rule: 'base-not-known', weight: 'ask' },
  'hold-not-known': { rule: 'screw-hold-not-known', weight: 'ask' },
}

/** What is wrong with the screws: one finding for each trouble, use and wall, at the hole where it is worst. */
export function screwFindings(work: WallWork, holes: readonly Drilled[]): readonly Finding[] {
  const wanted = holes.filter((d) => d.hole.verdict !== 'refused')
  const purposes = sortedIds(wanted.map((d) => d.hole.purpose))
  return purposes.flatMap((purpose) => {
    const its = wanted.filter((d) => d.hole.purpose === purpose)
    const troubles = sortedIds(its.flatMap((d) => d.troubles)) as readonly Trouble[]
    const told = troubles.filter((t) => !(t === 'maybe-short' && troubles.includes('too-short')))
    return told.map((trouble) => screwFinding(work, purpose, trouble, its))
  })
}

function screwFinding(work: WallWork, purpose: string, trouble: Trouble, its: readonly Drilled[]): Finding {
  const troubled = its.filter((d) => d.troubles.includes(trouble))
  const worst = [...troubled].sort((a, b) => spareOf(a) - spareOf(b))[0] as Drilled
  const figures =
    trouble === 'out-of-back' ? [worst.hole.depth, worst.behind] : [worst.needed, worst.hole.screwLength]
  return finding({
    ...TROUBLE[trouble],
    subjects: [`${work.wall.id}.${purpose}`],
    about: [...new Set(troubled.flatMap((d) => d.hole.for))],
    where: { wall: work.wall.id, along: worst.hole.along, height: worst.hole.height },
    say: message(`fixings.${trouble}.${purpose}`, {
      wall: work.name,
      needed: worst.needed,
      length: worst.hole.screwLength,
      left: worst.behind,
      into: (worst.hole.into ?? '').replaceAll('-', ' '),
    }),
    figures: trouble === 'none-entered' || trouble === 'no-stand-off' ? [] : figures,
    from: trouble === 'none-entered' || trouble === 'no-stand-off' ? ['fixings'] : [],
    basis: worst.needed.basis,
    ...(trouble === 'maybe-short' ? {} : { ask: message('fixings.maker-or-pull-test') }),
  })
}

const spareOf = ({ spare }: Drilled): number => (hasValue(spare) ? spare.value : 0)

/**
 * Holes that may not be drilled where they are wanted. A plate cannot be moved, so one refused hole of it is a stop; of
 * a pair of brackets one may be lost; what is refused among the fixings of a rail is told with the rail.
 */
export function refusedFindings(
  holes: readonly Drilled[],
  positions: ReadonlyMap<string, UnitPosition>,
): readonly Finding[] {
  const refused = holes.filter((d) => d.hole.verdict === 'refused')
  return refused.map(({ hole }) => {
    const depends = dependsOn(hole.purpose, holes, hole.for)
    // Passed over with too little left to hold by, it has not been moved: it is missing.
    if (hole.id.endsWith('.refused') && !depends) return movedFinding(hole, positions)
    const unit = positions.get(hole.for[0] ?? '')?.name ?? hole.for.join(' ')
    return finding({
      rule: 'hole-refused',
      subjects: [hole.id],
      weight: depends ? 'stop' : 'warn',
      dangerous: depends,
      about: [hole.id, ...hole.for, ...hole.hitBands],
      where: { wall: hole.wall, along: hole.along, height: hole.height },
      say: withReason(
        message(depends ? 'holes.hole-refused' : 'holes.hole-refused-others-hold', {
          unit,
          along: hole.along,
          height: hole.height,
        }),
        hole,
      ),
      figures: [hole.along, hole.height],
      basis: practice('no hole in a band, an opening, a lintel or where nothing holds'),
    })
  })
}

/**
 * Holes so near a band that the readings of both cannot tell whether they are in it: nobody drills one before it is
 * measured again. Those that can be moved have been.
 */
export function nearBandFindings(
  holes: readonly Drilled[],
  positions: ReadonlyMap<string, UnitPosition>,
): readonly Finding[] {
  const near = holes.filter((d) => d.hole.verdict !== 'refused' && d.nearBands.length > 0)
  return near.map(({ hole, nearBands }) =>
    finding({
      rule: 'hole-near-band',
      subjects: [hole.id],
      weight: 'ask',
      dangerous: true,
      about: [hole.id, ...hole.for, ...nearBands.map((band) => band.id)],
      where: { wall: hole.wall, along: hole.along, height: hole.height },
      say: message('holes.hole-near-band', {
        unit: positions.get(hole.for[0] ?? '')?.name ?? hole.for.join(' '),
        along: hole.along,
        height: hole.height,
      }),
      figures: [hole.along, hole.height],
      from: nearBands.flatMap((band) => band.from),
      basis: practice('a hole nearer a band than its readings are good to is not outside it'),
      ask: message('holes.measure-hole-and-band'),
    }),
  )
}

/** What was said of a hole, and what speaks against it. */
function withReason(said: Message, { against: [why] }: Drilled['hole']): Message {
  return why === undefined ? said : followedBy(said, why)
}

/** The place first wanted is not drilled; another is used. */
function movedFinding(hole: Drilled['hole'], positions: ReadonlyMap<string, UnitPosition>): Finding {
  const unit = positions.get(hole.for[0] ?? '')?.name ?? hole.for.join(' ')
  return finding({
    rule: 'hole-refused',
    subjects: [hole.id],
    weight: 'note',
    about: [hole.id, ...hole.for, ...hole.hitBands],
    where: { wall: hole.wall, along: hole.along, height: hole.height },
    say: withReason(message('holes.hole-moved', { unit, along: hole.along, height: hole.height }), hole),
    figures: [hole.along, hole.height],
    basis: practice('no hole in a band, an opening, a lintel or where nothing holds'),
  })
}

function dependsOn(
  purpose: Drilled['hole']['purpose'],
  holes: readonly Drilled[],
  units: readonly string[],
): boolean {
  if (purpose === 'plate') return true
  const others = holes.filter(
    (d) =>
      d.hole.purpose === purpose && d.hole.verdict !== 'refused' && units.some((u) => d.hole.for.includes(u)),
  )
  return others.length < (purpose === 'base-bracket' || purpose === 'tall-restraint' ? 1 : 2)
}

/** Hardware of a hung unit that only its maker can say, and without which its holes have no place. */
export function hardwareFindings(position: UnitPosition): readonly Finding[] {
  const { unit, name } = position
  if (!isHung(unit) || unit.stands === 'back-rail-screws') return []
  const wanted = [
    'plateBelowTop',
    'plateHoleBelow',
    ...(unit.stands === 'plates' ? ['hangerIn' as const] : []),
  ] as const
  const open = wanted.filter((key) => unit.hanging[key].state === 'unknown')
  if (open.length === 0) return []
  const missing = open.flatMap((key) => {
    const figure = unit.hanging[key]
    return figure.state === 'unknown' ? figure.missing : []
  })
  // Only what nobody has said: what is typed is not asked for again.
  const say = open.reduce(
    (said, key) => followedBy(said, message(`fixings.hardware-open.${key}`)),
    message('fixings.hardware-not-known', { unit: name }),
  )
  return [hardware(position, missing, say)]
}

export function hardware({ unit }: UnitPosition, from: readonly string[], say: Message): Finding {
  return finding({
    rule: 'hardware-not-known',
    subjects: [unit.id],
    weight: 'ask',
    say,
    from,
    basis: { kind: 'maker' },
    ask: message('fixings.read-the-sheet'),
  })
}
