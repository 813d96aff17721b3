import { derive, type Figure, hasValue } from '../figure'
import { remembered } from '../remember'
import type { FittedUnit, Job } from './job'
import { cornerEnd, group, neighbourRound, runOf, wallRound } from './neighbours'

/** Why a run begins where it does. */
export type Start = 'corner' | 'tall' | 'high-point' | 'near-end'

/** One unit and the next one outward from where the run begins. */
export interface Outward {
  readonly from: FittedUnit
  readonly to: FittedUnit
  /** The first of them is the corner unit itself. */
  readonly corner: boolean
  readonly start: Start
  /** The unit it begins at or beside: the corner unit, the tall, the base over the highest floor. */
  readonly startAt: FittedUnit
  /** By what it is known where the run begins. */
  readonly by: readonly Figure[]
}

type Group = 'hung' | 'base'
type Side = 'left' | 'right'

/** Something that cannot give, at one end of a run. */
interface Anchor {
  readonly kind: 'corner' | 'tall'
  readonly unit: FittedUnit
  readonly by: readonly Figure[]
}

/** No further than this from a tall, mm, a run stands beside it: a panel or a filler goes between. Common practice. */
const BESIDE = 100
/** Heights no further apart than this are one line, mm. */
const ONE_LINE = 1

const lengthOf = (job: Job, wall: string): Figure | undefined =>
  job.context.survey.frames.find((frame) => frame.wall === wall)?.length

/** By what it is known in which corner a corner unit stands: its arm, else its place on its wall. */
export function cornerBy(job: Job, { unit, plan, wall }: FittedUnit): readonly Figure[] {
  const arm = [unit.returnLeft, unit.returnRight].find(hasValue)
  if (arm !== undefined) return [arm]
  const length = lengthOf(job, wall)
  return length === undefined ? [plan.left, plan.right] : [plan.left, plan.right, length]
}

/** The corner unit at one end of a wall: on the wall itself, or round the corner with an arm along it. */
function cornerAt(job: Job, wall: string, of: Group, end: Side): FittedUnit | undefined {
  const own = job.units.find((u) => u.wall === wall && group(u) === of && cornerEnd(job, u) === end)
  if (own !== undefined) return own
  const round = wallRound(job, wall, end)
  const facing = end === 'left' ? 'right' : 'left'
  return job.units.find(
    (u) =>
      u.wall === round &&
      group(u) === of &&
      cornerEnd(job, u) === facing &&
      neighbourRound(job, u)?.wall === wall,
  )
}

/** The talls of a wall whose places are known, from left to right. */
function tallsOn(job: Job, wall: string): readonly FittedUnit[] {
  return job.units
    .filter((u) => u.way === 'tall' && u.wall === wall && hasValue(u.plan.left))
    .sort((a, b) => valueAt(a.plan.left) - valueAt(b.plan.left))
}

const valueAt = (figure: Figure): number => (hasValue(figure) ? figure.value : Number.POSITIVE_INFINITY)

/** A wall's run of one group, cut where a tall stands between two of its units. */
function stretchesOf(job: Job, wall: string, of: Group): readonly (readonly FittedUnit[])[] {
  const talls = tallsOn(job, wall)
  const stretches = new Map<number, FittedUnit[]>()
  for (const unit of runOf(job, wall, of).filter((u) => hasValue(u.plan.left))) {
    const passed = talls.filter((tall) => valueAt(tall.plan.left) < valueAt(unit.plan.left)).length
    stretches.set(passed, [...(stretches.get(passed) ?? []), unit])
  }
  return [...stretches.values()]
}

/** How far apart a run and a tall at one of its ends are. */
function gapTo(end: FittedUnit, tall: FittedUnit, side: Side): Figure {
  const [near, far] = side === 'left' ? [tall.plan.right, end.plan.left] : [end.plan.right, tall.plan.left]
  return derive('mm', { kind: 'geometry', why: 'from side to side' }, [near, far], (a, b) => b - a)
}

/** The tall beside which a run of wall units begins: it stands at that end, and its top is their top. */
function tallAt(job: Job, run: readonly FittedUnit[], side: Side): Anchor | undefined {
  const end = side === 'left' ? run[0] : run.at(-1)
  if (end === undefined) return undefined
  for (const tall of tallsOn(job, end.wall)) {
    const gap = gapTo(end, tall, side)
    if (!hasValue(gap) || Math.abs(gap.value) > BESIDE) continue
    const { top } = tall.plan
    if (!hasValue(top) || !hasValue(end.plan.top) || Math.abs(top.value - end.plan.top.value) > ONE_LINE) {
      continue
    }
    return { kind: 'tall', unit: tall, by: [tall.plan.right, tall.plan.left, top, end.plan.top] }
  }
  return undefined
}

function anchorAt(job: Job, run: readonly FittedUnit[], of: Group, side: Side): Anchor | undefined {
  const end = side === 'left' ? run[0] : run.at(-1)
  if (end === undefined) return undefined
  const whole = runOf(job, end.wall, of).filter((u) => hasValue(u.plan.left))
  const isLast = (side === 'left' ? whole[0] : whole.at(-1))?.id === end.id
  const tall = of === 'hung' ? tallAt(job, run, side) : undefined
  if (tall !== undefined) return tall
  const corner = isLast ? cornerAt(job, end.wall, of, side) : undefined
  return corner === undefined ? undefined : { kind: 'corner', unit: corner, by: cornerBy(job, corner) }
}

type Beginning = Pick<Outward, 'start' | 'startAt' | 'by'>

function pairsAlong(chain: readonly FittedUnit[], begin: Beginning): readonly Outward[] {
  return chain.slice(1).flatMap((to, i): readonly Outward[] => {
    const from = chain[i]
    if (from === undefined) return []
    return [{ from, to, corner: begin.start === 'corner' && from.id === begin.startAt.id, ...begin }]
  })
}

const beginningAt = ({ kind, unit, by }: Anchor): Beginning => ({ start: kind, startAt: unit, by })

/** From something fixed outward; the corner unit itself comes first, a tall is no part of the run. */
function fromAnchor(anchor: Anchor, outward: readonly FittedUnit[]): readonly Outward[] {
  const chain = anchor.kind === 'corner' ? [anchor.unit, ...outward] : outward
  return pairsAlong(chain, beginningAt(anchor))
}

/** One stretch of a wall, pair by pair outward from where it begins. */
function pairsOf(job: Job, run: readonly FittedUnit[], of: Group): readonly Outward[] {
  const left = anchorAt(job, run, of, 'left')
  const right = anchorAt(job, run, of, 'right')
  const corners = new Set([left, right].flatMap((a) => (a?.kind === 'corner' ? [a.unit.id] : [])))
  const free = run.filter((unit) => !corners.has(unit.id))
  const back = [...free].reverse()
  if (left !== undefined && right !== undefined) return betweenTwo(left, right, free)
  if (left !== undefined) return fromAnchor(left, free)
  if (right !== undefined) return fromAnchor(right, back)
  return fromFreeStart(job, run, of)
}

/**
 * Between two things that cannot give. A run of wall units grows from the tall to the corner unit, which is up before
 * its neighbour; between two corner units each half grows from its own, and the last unit closes the run.
 */
function betweenTwo(left: Anchor, right: Anchor, free: readonly FittedUnit[]): readonly Outward[] {
  const back = [...free].reverse()
  const closing = (anchor: Anchor, last: FittedUnit | undefined): readonly Outward[] =>
    anchor.kind === 'corner' && last !== undefined ? fromAnchor(anchor, [last]) : []
  if (left.kind === 'tall') return [...fromAnchor(left, free), ...closing(right, free.at(-1))]
  if (right.kind === 'tall') return [...fromAnchor(right, back), ...closing(left, free[0])]
  const half = Math.ceil(free.length / 2)
  const own = back.slice(0, free.length - half)
  const [last, closes] = [free[half - 1], own.at(-1)]
  return [
    ...fromAnchor(left, free.slice(0, half)),
    ...(own.length === 0 ? closing(right, last) : fromAnchor(right, own)),
    ...(last === undefined || closes === undefined ? [] : pairsAlong([last, closes], beginningAt(left))),
  ]
}

/** The floor under a base where it is highest, by its leg or its shim there; undefined where one is not known. */
function highestFloor({ plan }: FittedUnit): Figure | undefined {
  let highest: Figure | undefined
  const legs = plan.legs.map(({ extension: length }) => ({ length, why: 'the underside less the leg' }))
  const shims = (plan.shims ?? []).map(({ height: length }) => ({
    length,
    why: 'the underside less the shim',
  }))
  for (const { length, why } of [...legs, ...shims]) {
    const floor = derive(
      'mm',
      { kind: 'geometry', why },
      [plan.underside, length],
      (underside, under) => underside - under,
    )
    if (!hasValue(floor)) return undefined
    if (highest === undefined || floor.value > valueAt(highest)) highest = floor
  }
  return highest
}

/** With nothing fixed at either end: bases from the one over the highest floor, others from the end nearer its corner. */
function fromFreeStart(job: Job, run: readonly FittedUnit[], of: Group): readonly Outward[] {
  const floors = of === 'base' ? run.map(highestFloor) : []
  const known = floors.flatMap((floor) => (floor === undefined ? [] : [floor]))
  if (known.length > 0 && known.length === run.length) {
    const top = Math.max(...known.map(valueAt))
    const at = known.findIndex((floor) => valueAt(floor) === top)
    const begin: Beginning = { start: 'high-point', startAt: run[at] as FittedUnit, by: known }
    return [...pairsAlong(run.slice(at), begin), ...pairsAlong(run.slice(0, at + 1).reverse(), begin)]
  }
  return fromNearEnd(job, run)
}

function fromNearEnd(job: Job, run: readonly FittedUnit[]): readonly Outward[] {
  const [first, last] = [run[0], run.at(-1)]
  if (first === undefined || last === undefined) return []
  const length = lengthOf(job, first.wall)
  const by = [first.plan.left, last.plan.right, ...(length === undefined ? [] : [length])]
  const toLeft = valueAt(first.plan.left)
  const toRight = length === undefined ? Number.POSITIVE_INFINITY : valueAt(length) - valueAt(last.plan.right)
  const fromRight = Number.isFinite(toRight) && toRight < toLeft
  const chain = fromRight ? [...run].reverse() : run
  return pairsAlong(chain, { start: 'near-end', startAt: chain[0] as FittedUnit, by })
}

/** Every pair of neighbours in the order in which runs grow, along each wall. */
export const outwardPairs: (job: Job) => readonly Outward[] = remembered((job: Job) =>
  (['hung', 'base'] as const).flatMap((of) =>
    job.walls.flatMap((wall) => stretchesOf(job, wall.id, of).flatMap((run) => pairsOf(job, run, of))),
  ),
)

/** The highest floor a base run begins over, as it is told. */
export function startFloor(pair: Outward): Figure | undefined {
  return pair.start === 'high-point' ? highestFloor(pair.startAt) : undefined
}

/** A unit over the same highest floor as the one a run begins with, and one further out that comes after both. */
export interface SharedStart {
  readonly shares: FittedUnit
  readonly to: FittedUnit
  readonly pair: Outward
}

/** Two boxes side by side can stand on one highest floor, where their sides meet: both come before the run goes on from there. */
export const sharedStarts: (job: Job) => readonly SharedStart[] = remembered((job: Job) => {
  const pairs = outwardPairs(job)
  const first = pairs.filter(({ start, startAt, from }) => start === 'high-point' && from.id === startAt.id)
  const isAsHigh = ({ startAt, to }: Outward): boolean => {
    const [own, other] = [highestFloor(startAt), highestFloor(to)]
    return own !== undefined && other !== undefined && valueAt(own) === valueAt(other)
  }
  return first
    .filter(isAsHigh)
    .flatMap(({ to: shares, startAt }) =>
      first
        .filter((pair) => pair.startAt.id === startAt.id && !isAsHigh(pair))
        .map((pair) => ({ shares, to: pair.to, pair })),
    )
})

/** The units that close a run: one comes before each on its own wall, and none after it. */
export const closingPairs: (job: Job) => readonly Outward[] = remembered((job: Job) => {
  const pairs = outwardPairs(job)
  const goesOn = new Set(pairs.map(({ from }) => from.id))
  return pairs.filter(({ from, to }) => from.wall === to.wall && !goesOn.has(to.id))
})
