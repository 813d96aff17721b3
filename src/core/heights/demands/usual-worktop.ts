import { type Basis, derive, type Figure, hasValue, known } from '../../figure'
import { factId } from '../../kitchen/fact-id'
import type { HeightName } from '../../kitchen/kinds'
import type { Region } from '../../kitchen/schema'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { rangeOf } from '../../survey/extremes'
import { citing, sum } from '../../survey/sum'
import { type HeightsContext, unitsIn } from '../context'
import { type DemandRule, demand } from './demand'

/**
 * Usual heights over the finished floor, mm. Common practice: worktops 890 to 910 with a plinth of 150 in the UK; 870 and a
 * top of 40 on the continent (as EN 1116 has its sizes, seen in secondary copies only); 36 inches in North America.
 */
const WORKTOP: Readonly<Record<Region, number>> = { uk: 900, continental: 910, 'north-america': 914 }
const PLINTH: Readonly<Record<Region, number>> = { uk: 150, continental: 150, 'north-america': 114 }
/** Either side of it. */
const ABOUT = 10

const usual: Basis = {
  kind: 'common-practice',
  why: 'a worktop, and the plinth under it, at the height that is usual where nothing else was wished',
}

/**
 * Where no height of the base units or the worktop is wished, the worktop about the usual height over the finished floor;
 * without a worktop, the plinth about its usual height. Counted from half-way between the highest and the lowest floor
 * under the base units, a finish still to come included. Preferred, and the first of all to be given up: it never narrows
 * the room where what must be leaves none at the usual height itself, and asks for nothing that is not known.
 */
export const usualWorktop: DemandRule = (context) => {
  const { kitchen, region, achieved } = context
  const isDecided = achieved.struck.size + achieved.undersides.size > 0
  if (region === null || isDecided || unitsIn(context, 'base').length === 0 || isWished(context)) return []
  const floor = finishedFloor(context)
  if (floor === null || !hasValue(floor)) return []
  const over = (height: number): Figure => citing(sum('mm', usual, [floor, mm(height)]), ['region'])
  const make = (rule: string, of: HeightName, height: number): readonly Demand[] => [
    demand(rule, {
      subject: 'base',
      of,
      min: over(height - ABOUT),
      max: over(height + ABOUT),
      because: message(`heights.${rule}`, { from: mm(height - ABOUT), to: mm(height + ABOUT) }),
      basis: usual,
      about: unitsIn(context, 'base').map(({ id }) => id),
      hard: false,
    }),
  ]
  return kitchen.worktops.length > 0
    ? make('usual-worktop', 'worktop-top', WORKTOP[region.id])
    : make('usual-plinth', 'base-underside', PLINTH[region.id])
}

/** Rules that ask only for what is usual. */
export const USUAL_RULES: ReadonlySet<string> = new Set(['usual-worktop', 'usual-plinth'])

const mm = (value: number): Figure => known(value, 0, 'mm', [], usual)

const BASE_HEIGHTS: readonly HeightName[] = ['base-underside', 'base-top', 'worktop-top']

function isWished({ kitchen }: HeightsContext): boolean {
  return kitchen.wishes.heights.some(({ of, equals }) =>
    [of, equals].some((height) => height !== undefined && BASE_HEIGHTS.includes(height)),
  )
}

/** Half-way between the highest and the lowest floor under the base units, as it will be walked on; null: not known. */
function finishedFloor({ kitchen: { floor }, standing }: HeightsContext): Figure | null {
  const floors = standing
    .filter(({ group }) => group === 'base')
    .flatMap(({ footings }) => footings.map((foot) => foot.floor))
  if (floors.length === 0 || floor.finishWhere === null) return null
  const { highest, lowest } = rangeOf('mm', usual, floors)
  const middle = derive('mm', usual, [highest, lowest], (a, b) => (a + b) / 2)
  const where = [factId('floor', 'finishWhere')]
  // A finish laid everywhere is in what the feet stand on already.
  const isCounted = floor.finishWhere === 'none' || floor.finishWhere === 'everywhere'
  return citing(isCounted ? middle : sum('mm', usual, [middle, floor.finishToCome]), where)
}
