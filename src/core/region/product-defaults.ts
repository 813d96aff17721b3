import type { UNIT_KINDS } from '../kitchen/kinds'
import type { Region, STANDS } from '../kitchen/schema'

/**
 * Sizes that may stand in for what a unit's own sheet would say, until somebody reads the sheet. Every one of them is
 * common practice, without a published source, and whatever rests on it stays marked as assumed. Sizes that differ too
 * much to guess are left out on purpose, and so are unknown: heights of wall and tall units, the reach of legs, where a
 * hanger or its plate sits, what a screw does in one turn and which way.
 */

export type DefaultField =
  | 'height'
  | 'depth'
  | 'board'
  | 'back'
  | 'void'
  | 'front'
  | 'hookLift'
  | 'footFromSide'
  | 'footFromFront'
  | 'footFromBack'
  | 'plinthHeight'

type Kind = (typeof UNIT_KINDS)[number]
type Stand = (typeof STANDS)[number]

export interface ProductDefault {
  readonly field: DefaultField
  /** Kinds of unit it is usual for; left out: every kind but an appliance's space. */
  readonly kinds?: readonly Kind[]
  /** Ways of standing or hanging it goes with; left out: any. */
  readonly stands?: readonly Stand[]
  /** In mm. */
  readonly value: number
  /** How far what is usual spreads about the value, in mm. */
  readonly pm: number
  /** What it stands on, as it is to be read on the first sheet. */
  readonly why: string
}

const BASES = ['base', 'corner-base', 'island'] as const
const DEEP = ['base', 'corner-base', 'tall'] as const
const HUNG = ['wall', 'corner-wall'] as const

/** What does not differ from country to country. */
const EVERYWHERE: readonly ProductDefault[] = [
  {
    field: 'hookLift',
    stands: ['plates', 'rail'],
    value: 25,
    pm: 0,
    why: 'common practice: 10 to 20 mm of lift is usual to hook on; 25 is allowed for',
  },
  {
    field: 'footFromSide',
    stands: ['legs'],
    value: 50,
    pm: 25,
    why: 'common practice: a foot at each corner, about 50 mm in from the side',
  },
  {
    field: 'footFromFront',
    stands: ['legs'],
    value: 75,
    pm: 25,
    why: 'common practice: front feet about 75 mm back, behind the plinth',
  },
  {
    field: 'footFromBack',
    stands: ['legs'],
    value: 50,
    pm: 25,
    why: 'common practice: back feet about 50 mm in from the back',
  },
]

const UK: readonly ProductDefault[] = [
  {
    field: 'height',
    kinds: BASES,
    value: 720,
    pm: 2,
    why: 'common practice in Britain: base carcass 720 mm; 870 mm on a 150 mm plinth',
  },
  {
    field: 'depth',
    kinds: DEEP,
    value: 560,
    pm: 15,
    why: 'common practice in Britain: base and tall carcasses 560 to 575 mm deep',
  },
  {
    field: 'depth',
    kinds: ['appliance-space'],
    value: 560,
    pm: 15,
    why: 'common practice in Britain: a space is kept as deep as the carcasses beside it, 560 to 575 mm',
  },
  {
    field: 'depth',
    kinds: HUNG,
    value: 300,
    pm: 30,
    why: 'common practice in Britain: wall carcasses 300 to 330 mm deep',
  },
  { field: 'board', value: 18, pm: 2, why: 'common practice in Britain: carcass panels 18 mm' },
  {
    field: 'back',
    value: 8,
    pm: 5,
    why: 'common practice in Britain: backs of rigid carcasses about 8 mm, thin ones 3 mm',
  },
  {
    field: 'void',
    kinds: DEEP,
    value: 50,
    pm: 25,
    why: 'common practice in Britain: about 50 mm for services behind the back of a standing carcass',
  },
  {
    field: 'front',
    value: 18,
    pm: 4,
    why: 'common practice in Britain: doors and drawer fronts 18 to 22 mm',
  },
  {
    field: 'plinthHeight',
    value: 150,
    pm: 2,
    why: 'common practice in Britain: plinth boards 150 mm, cut down where the floor is high',
  },
]

/** Metric carcass heights and depths vary from maker to maker; nothing more can be said of all of them. */
const CONTINENTAL: readonly ProductDefault[] = []

const NORTH_AMERICA: readonly ProductDefault[] = [
  {
    field: 'height',
    kinds: ['base', 'corner-base'],
    stands: ['shims'],
    value: 876.3,
    pm: 2,
    why: 'common practice in North America: base box 34 1/2 in high with its toe space, shimmed',
  },
  {
    field: 'depth',
    kinds: HUNG,
    value: 304.8,
    pm: 2,
    why: 'common practice in North America: wall units 12 in deep',
  },
]

const DEFAULTS: Readonly<Record<Region, readonly ProductDefault[]>> = {
  uk: [...UK, ...EVERYWHERE],
  continental: [...CONTINENTAL, ...EVERYWHERE],
  'north-america': [...NORTH_AMERICA, ...EVERYWHERE],
}

/** The usual sizes of a region. None at all where the region is not known: it is never guessed. */
export function productDefaults(region: Region | null): readonly ProductDefault[] {
  return region === null ? [] : DEFAULTS[region]
}
