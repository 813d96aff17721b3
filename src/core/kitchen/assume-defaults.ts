import { assumed, type Basis, derive, type Figure } from '../figure'
import { type DefaultField, type ProductDefault, productDefaults } from '../region/product-defaults'
import type { RegionPack } from '../region/region'
import { factId } from './fact-id'
import type { FinishingPart, Kitchen, Unit } from './schema'

type Foot = Unit['feet'][number]
type Defaults = readonly ProductDefault[]

/** The usual size of such a unit; undefined where none is usual enough to be taken. */
export function usualSize(
  unit: Pick<Unit, 'kind' | 'stands'>,
  field: DefaultField,
  defaults: Defaults,
): ProductDefault | undefined {
  return defaults.find(
    ({ field: named, kinds, stands }) =>
      named === field &&
      (kinds === undefined ? unit.kind !== 'appliance-space' : kinds.includes(unit.kind)) &&
      (stands === undefined || (unit.stands !== null && stands.includes(unit.stands))),
  )
}

const basisOf = ({ why }: ProductDefault): Basis => ({ kind: 'common-practice', why })

/** The figure itself where it has a value; else the usual one, marked as assumed and still naming what would settle it. */
function orUsual(figure: Figure, usual: ProductDefault | undefined): Figure {
  if (figure.state !== 'unknown' || usual === undefined) return figure
  return assumed(usual.value, usual.pm, figure.unit, figure.from, basisOf(usual))
}

type Measure = (id: string) => Figure

/** A foot's distance from the left side or the back: the usual inset itself. */
function inset(usual: ProductDefault): Measure {
  return (id) => assumed(usual.value, usual.pm, 'mm', [id], basisOf(usual))
}

/** The same from the other side: the size of the carcass less the usual inset. */
function sizeLess(size: Figure, usual: ProductDefault): Measure {
  return (id) =>
    derive('mm', basisOf(usual), [size, inset(usual)(id)], (whole, less) => (whole ?? 0) - (less ?? 0))
}

/**
 * Four feet, one at each corner, for a unit on legs that lists none; in the order of their ids. An L-shaped unit's
 * feet are not guessed.
 */
function usualFeet(unit: Unit, defaults: Defaults): readonly Foot[] {
  const side = usualSize(unit, 'footFromSide', defaults)
  const front = usualSize(unit, 'footFromFront', defaults)
  const back = usualSize(unit, 'footFromBack', defaults)
  const isLShaped = unit.returnLeft.state !== 'unknown' || unit.returnRight.state !== 'unknown'
  if (unit.feet.length > 0 || isLShaped || !side || !front || !back) return unit.feet
  const foot = (id: string, x: Measure, y: Measure): Foot => ({
    id,
    x: x(factId('units', unit.id, 'feet', id, 'x')),
    y: y(factId('units', unit.id, 'feet', id, 'y')),
  })
  const [left, right] = [inset(side), sizeLess(unit.width, side)]
  const [atBack, atFront] = [inset(back), sizeLess(unit.depth, front)]
  return [
    foot('bl', left, atBack),
    foot('br', right, atBack),
    foot('fl', left, atFront),
    foot('fr', right, atFront),
  ]
}

function withUsualSizes(unit: Unit, defaults: Defaults): Unit {
  const usual = (field: DefaultField) => usualSize(unit, field, defaults)
  const hookLift = orUsual(unit.hanging.hookLift, usual('hookLift'))
  return {
    ...unit,
    height: orUsual(unit.height, usual('height')),
    depth: orUsual(unit.depth, usual('depth')),
    board: orUsual(unit.board, usual('board')),
    back: orUsual(unit.back, usual('back')),
    void: orUsual(unit.void, usual('void')),
    front: orUsual(unit.front, usual('front')),
    hanging: { ...unit.hanging, hookLift },
  }
}

function withUsualPlinth(part: FinishingPart, defaults: Defaults): FinishingPart {
  if (part.kind !== 'plinth') return part
  return {
    ...part,
    height: orUsual(
      part.height,
      defaults.find(({ field }) => field === 'plinthHeight'),
    ),
  }
}

/**
 * The kitchen with sizes of products that nobody has given filled in from what is usual, each marked as assumed. What
 * was measured in the room is never filled in, nor what only the maker can say: where plates and hangers sit, the reach
 * of legs, what a turn of a screw does. Where the region is not known, nothing is.
 */
export function assumeProductDefaults(kitchen: Kitchen, region: Pick<RegionPack, 'id'> | null): Kitchen {
  const defaults = productDefaults(region?.id ?? null)
  const units = kitchen.units.map((unit) => {
    const sized = withUsualSizes(unit, defaults)
    return { ...sized, feet: usualFeet(sized, defaults) }
  })
  return { ...kitchen, units, finishing: kitchen.finishing.map((part) => withUsualPlinth(part, defaults)) }
}
