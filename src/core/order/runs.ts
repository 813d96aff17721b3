import { type Figure, hasValue } from '../figure'
import type { FittedUnit, Job } from '../operations/job'
import { cornerEnd, group, neighbourRound, runOf, wallRound } from '../operations/neighbours'

/** One unit and the next one outward from the corner that the run grows from. */
export interface Outward {
  readonly from: FittedUnit
  readonly to: FittedUnit
  /** The first of them is the corner unit itself. */
  readonly corner: boolean
  /** By what it is known from which end the run grows. */
  readonly by: readonly Figure[]
}

type Group = 'hung' | 'base'

interface End {
  readonly end: 'left' | 'right'
  readonly by: readonly Figure[]
}

/** From which ends a run grows: those with a corner unit, else the end that is nearer to its corner. */
function growsFrom(job: Job, wall: string, of: Group, run: readonly FittedUnit[]): readonly End[] {
  const ends = (['left', 'right'] as const).flatMap((end): readonly End[] => {
    const corner = cornerAt(job, wall, of, end)
    return corner === undefined ? [] : [{ end, by: cornerBy(job, corner) }]
  })
  if (ends.length > 0) return ends
  const first = run[0]?.plan.left
  const last = run.at(-1)?.plan.right
  const length = lengthOf(job, wall)
  if (first === undefined || last === undefined || length === undefined) return [{ end: 'left', by: [] }]
  const by = [first, last, length]
  if (!hasValue(first) || !hasValue(last) || !hasValue(length)) return [{ end: 'left', by }]
  return [{ end: first.value <= length.value - last.value ? 'left' : 'right', by }]
}

const lengthOf = (job: Job, wall: string): Figure | undefined =>
  job.context.survey.frames.find((frame) => frame.wall === wall)?.length

/** By what it is known in which corner a corner unit stands: its arm, else its place on its wall. */
function cornerBy(job: Job, { unit, plan, wall }: FittedUnit): readonly Figure[] {
  const arm = [unit.returnLeft, unit.returnRight].find(hasValue)
  if (arm !== undefined) return [arm]
  const length = lengthOf(job, wall)
  return length === undefined ? [plan.left, plan.right] : [plan.left, plan.right, length]
}

/** The corner unit at one end of a wall: on the wall itself, or round the corner with an arm along it. */
function cornerAt(job: Job, wall: string, of: Group, end: 'left' | 'right'): FittedUnit | undefined {
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

/** One wall's run of one group, pair by pair outward. Between two corners it is shared: each half grows from its own. */
function pairsOn(job: Job, wall: string, of: Group): readonly Outward[] {
  const run = runOf(job, wall, of).filter((unit) => hasValue(unit.plan.left))
  if (run.length === 0) return []
  const ends = growsFrom(job, wall, of, run)
  const half = ends.length === 2 ? Math.ceil(run.length / 2) : run.length
  return ends.flatMap(({ end, by }) => {
    const outward = end === 'left' ? run : [...run].reverse()
    const part = outward.slice(0, ends.length === 2 && end === 'right' ? run.length - half : half)
    const corner = cornerAt(job, wall, of, end)
    const chain = corner === undefined || part[0]?.id === corner.id ? part : [corner, ...part]
    return chain.slice(1).flatMap((to, i): readonly Outward[] => {
      const from = chain[i]
      return from === undefined ? [] : [{ from, to, corner: from.id === corner?.id, by }]
    })
  })
}

/** Every pair of neighbours in the order in which runs grow: from the corner units outwards, along each wall. */
export function outwardPairs(job: Job): readonly Outward[] {
  return (['hung', 'base'] as const).flatMap((of) => job.walls.flatMap((wall) => pairsOn(job, wall.id, of)))
}
