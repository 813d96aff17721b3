import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Accessory, FinishingPart } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { passes, type WorktopRun, worktopRuns } from '../placing/worktop-runs'
import { sum } from '../survey/sum'
import type { Found, Rule, Site, Way } from './rule'

/** mm from the worktop to the underside of a new outlet. Another guide asks for 100; the larger is taken, and only told. */
const OVER_WORKTOP = 150
const guide: Basis = {
  kind: 'standard',
  source: 'BS 8300, as secondary copies have it',
  where: 'socket outlets over a worktop',
}
const plate: Basis = { kind: 'geometry', why: 'the edges of its plate, half its size from its centre' }
const NOTHING = known(0, 0, 'mm', [], plate)
const half = (whole: Figure): Figure => derive('mm', plate, [whole], (w) => (w as number) / 2)

/** The upstand on a stretch of worktop, if one is listed. */
function upstandOn({ kitchen, unit }: Site, { wall, worktop }: WorktopRun): FinishingPart | undefined {
  return kitchen.finishing.find(
    (part) =>
      part.kind === 'upstand' &&
      (part.wall ?? wall) === wall &&
      (part.of.length === 0 || part.of.some((id) => unit(id)?.wall === wall && worktop.over.includes(id))),
  )
}

/** A plate on the wall behind a worktop, its edges from the line. */
interface Plate {
  readonly run: WorktopRun
  readonly accessory: Accessory
  readonly along: Figure
  readonly height: Figure
  readonly bottom: Figure
}

function platesAt(site: Site, run: WorktopRun): readonly Plate[] {
  const baseTop = heightNamed(site.heights, 'base-top')
  return (site.wall(run.wall)?.accessories ?? []).flatMap((accessory): readonly Plate[] => {
    const along = site.survey.along(run.wall, accessory.along)
    const height = site.onFace(run.wall, along, accessory.height)
    const top = sum('mm', plate, [height, half(accessory.tall)])
    const bottom = sum('mm', plate, [height], [half(accessory.tall)])
    // One that lies wholly under the worktop is in the back of a unit, and another rule's.
    const isUnder = overLimit(sum('mm', plate, [baseTop], [top])) === 'over'
    const halfWide = hasValue(accessory.width) ? half(accessory.width) : NOTHING
    const [left, right] = [sum('mm', plate, [along], [halfWide]), sum('mm', plate, [along, halfWide])]
    const isHere = accessory.face === 'room' && passes(run, left, right) && !isUnder
    return isHere ? [{ run, accessory, along, height, bottom }] : []
  })
}

/** Has it moved up past what covers it, a finger's breadth more than the readings leave open. */
function moved({ run, accessory, height }: Plate, over: Figure): readonly Way[] {
  if (!hasValue(over) || !hasValue(height)) return []
  const up = Math.ceil(height.value + over.value + over.pm) + 1
  const edits = [{ set: factId('walls', run.wall, 'accessories', accessory.id, 'height'), to: { up } }]
  return [{ said: ['move', { over }], cost: 'a day or more', edits }]
}

function judged(site: Site, one: Plate): Found | null {
  const { run, accessory, along, height, bottom } = one
  const top = heightNamed(site.heights, 'worktop-top')
  const behindWorktop = sum('mm', rule.basis, [top], [bottom])
  const inWorktop = overLimit(behindWorktop)
  const upstand = upstandOn(site, run)
  const behindUpstand = sum('mm', rule.basis, upstand === undefined ? [top] : [top, upstand.height], [bottom])
  const values = { what: accessory.kind.replaceAll('-', ' '), wall: site.name(run.wall), along }
  const common = {
    subjects: [`${run.wall}.${accessory.id}`],
    about: [run.wall, run.worktop.id],
    where: { wall: run.wall, along, height },
    ask: ['ask'] as const,
  }
  if (inWorktop === 'over' || inWorktop === 'near') {
    const said = inWorktop === 'over' ? 'behind-worktop' : 'near-worktop'
    const waysOut = moved(one, behindUpstand)
    const weight = inWorktop === 'over' ? 'stop' : 'ask'
    return { ...common, weight, said: [said, { ...values, over: behindWorktop }], waysOut }
  }
  const gap = sum('mm', guide, [bottom], [top])
  const isLow = hasValue(gap) && gap.value + gap.pm < OVER_WORKTOP
  if (upstand !== undefined && overLimit(behindUpstand) !== 'within') {
    if (!hasValue(behindUpstand)) {
      const from = [factId('finishing', upstand.id, 'height')]
      return isLow
        ? { ...common, weight: 'ask', said: ['upstand-not-known', { ...values, gap }], from }
        : null
    }
    const said = overLimit(behindUpstand) === 'over' ? 'behind-upstand' : 'near-upstand'
    const off: Way = { said: ['off'], cost: 'minutes', edits: [{ remove: factId('finishing', upstand.id) }] }
    const waysOut = [off, ...moved(one, behindUpstand)]
    return { ...common, weight: 'ask', said: [said, { ...values, over: behindUpstand }], waysOut }
  }
  return null
}

/** Those that are nearer over the worktop than a guide has it for new ones, told together. */
function nearOver(site: Site, plates: readonly Plate[]): readonly Found[] {
  const top = heightNamed(site.heights, 'worktop-top')
  const near = plates.flatMap((one) => {
    const gap = sum('mm', guide, [one.bottom], [top])
    return hasValue(gap) && gap.value >= 0 && gap.value + gap.pm < OVER_WORKTOP ? [{ ...one, gap }] : []
  })
  const [lowest] = [...near].sort((a, b) => a.gap.value - b.gap.value)
  if (lowest === undefined) return []
  const { run, along, height, gap } = lowest
  const asked = known(OVER_WORKTOP, 0, 'mm', [], guide)
  const values = { count: near.length, wall: site.name(run.wall), along, gap, asked }
  return [
    {
      subjects: ['worktop'],
      about: [...new Set(near.map((one) => one.run.wall))],
      weight: 'note',
      said: [near.length === 1 ? 'one-near' : 'near', values],
      where: { wall: run.wall, along, height },
      figures: near.map((one) => one.gap),
      basis: guide,
    },
  ]
}

/** F34: sockets and switches that come to lie behind the worktop or its upstand. */
export const rule: Rule = {
  id: 'socket-too-low',
  heading: 'Sockets close over the worktop',
  catches: ['F34'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the lower edge of the plate against the top of the worktop and of its upstand',
  },
  why: 'Sockets are set out from the showroom plan, and then worktop or upstand comes up over their plates.',
  words: {
    'behind-worktop':
      'The {what} on {wall}, {along} from its left end, ends up behind the worktop: its plate begins {over} below the top of the worktop.',
    'near-worktop':
      'The {what} on {wall}, {along} from its left end, may touch the worktop. Readings this near cannot tell: measure the lower edge of its plate again.',
    'behind-upstand':
      'The {what} on {wall}, {along} from its left end, ends up behind the upstand: its plate begins {over} below the top of the upstand.',
    'near-upstand':
      'The {what} on {wall}, {along} from its left end, may touch the upstand. Readings this near cannot tell: measure the lower edge of its plate again.',
    'upstand-not-known':
      'The {what} on {wall}, {along} from its left end, is {gap} over the worktop. It is not known how high the upstand is.',
    'one-near':
      'The socket or switch on {wall}, {along} from its left end, is {gap} over the worktop. A guide for new ones asks for {asked}.',
    near: '{count} sockets and switches are nearer over the worktop than a guide for new ones asks for, {asked}. The lowest is on {wall}, {along} from its left end, {gap} over it.',
    ask: 'Ask an electrician to move it before the wall is closed.',
    off: 'Leave the upstand off, or cut it round the plate.',
    move: 'Have it moved up by {over}, and a little more for the readings.',
  },
  check: (site) => {
    const plates = worktopRuns(site.kitchen, site.units).flatMap((run) => platesAt(site, run))
    return [...plates.flatMap((one) => judged(site, one) ?? []), ...nearOver(site, plates)]
  },
}
