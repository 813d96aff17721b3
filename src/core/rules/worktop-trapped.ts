import { type Figure, hasValue } from '../figure'
import { overLimit } from '../placing/over-limit'
import { type WorktopRun, worktopRuns } from '../placing/worktop-runs'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

/** A worktop whose units leave less than this at both sides together is cut from wall to wall, mm. Common practice. */
const WALL_TO_WALL = 120

const isAt = (a: Figure, b: Figure) => hasValue(a) && hasValue(b) && Math.abs(a.value - b.value) <= TOUCHES
/** Neighbours touch to within this, mm. */
const TOUCHES = 5

function judged(site: Site, { worktop, wall, left, right }: WorktopRun): Found | null {
  const widths = (site.wall(wall)?.widths ?? []).filter(
    ({ at, width }) => at === 'worktop' && hasValue(width),
  )
  const mouth = widths.find(({ depth }) => depth === 'front')?.width
  const behind = widths
    .filter(({ depth }) => depth !== 'front')
    .map(({ width }) => width)
    .sort((a, b) => (hasValue(a) && hasValue(b) ? b.value - a.value : 0))[0]
  if (mouth === undefined || behind === undefined) return null
  const besideTall = (end: Figure, side: 'left' | 'right') =>
    site.along(wall).some((unit) => unit.kind === 'tall' && isAt(unit[side], end))
  const [fromTall, toTall] = [besideTall(left, 'right'), besideTall(right, 'left')]
  if (fromTall && toTall) return null
  // Between a tall unit and a wall the wall alone decides; between two walls the whole length does.
  const taken = fromTall ? right : sum('mm', rule.basis, [right], [left])
  const spare = sum('mm', rule.basis, [mouth], [taken])
  const wider = sum('mm', rule.basis, [behind], [mouth])
  if (!hasValue(spare) || spare.value > WALL_TO_WALL || overLimit(wider) !== 'over') return null
  return {
    subjects: [worktop.id, wall],
    about: [worktop.id, wall],
    weight: 'warn',
    said: ['trapped', { worktop: worktop.name ?? 'worktop', wall: site.name(wall), mouth, behind, wider }],
    where: { wall, along: left },
    ask: ['ask'],
  }
}

/** F77: a worktop from wall to wall where the alcove is wider behind than at its mouth. */
export const rule: Rule = {
  id: 'worktop-trapped',
  heading: 'A worktop that cannot go in whole',
  catches: ['F77'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'widths of the alcove at worktop height, behind and at its mouth' },
  why: 'A board cut to the back of the alcove does not go in through its mouth.',
  words: {
    trapped:
      'The {worktop} on {wall} goes from wall to wall, {mouth} at the mouth and {behind} further in. Cut to fit behind, it is {wider} too long to slide in.',
    ask: 'Cut it to the mouth and cover what is open behind with an upstand, or drop it in from above at a slant before anything hangs over it.',
  },
  check: (site) => worktopRuns(site.kitchen, site.units).flatMap((run) => judged(site, run) ?? []),
}
