import { usualSize } from '../kitchen/assume-defaults'
import { USUAL_PRECISION } from '../kitchen/default-precision'
import type { Region, Unit } from '../kitchen/schema'
import { type DefaultField, productDefaults } from '../region/product-defaults'
import { type Display, inches } from '../words/format'
import { listAt, thingAt } from './things'

/** What the planner takes where a field holds nothing: a usual figure, until somebody says what it is. */
export interface StandsIn {
  /** In mm. */
  readonly value: number
  readonly pm: number
  /** What it stands on. */
  readonly why: string
}

/** Sizes of a unit that have a usual one, by their field. */
const OF_UNITS: ReadonlyMap<string, DefaultField> = new Map([
  ['height', 'height'],
  ['depth', 'depth'],
  ['board', 'board'],
  ['back', 'back'],
  ['void', 'void'],
  ['front', 'front'],
  ['hanging.hookLift', 'hookLift'],
])

const PRECISIONS: Readonly<Record<string, StandsIn>> = {
  'survey.tapePrecision': { value: USUAL_PRECISION.tape.pm, pm: 0, why: USUAL_PRECISION.tape.why },
  'survey.levelPrecision': { value: USUAL_PRECISION.level.pm, pm: 0, why: USUAL_PRECISION.level.why },
}

/**
 * The figure that stands in for a fact of a kitchen file that is not there; undefined where nothing is taken, and it
 * stays unknown. The same value for the same file and path.
 *
 * @param path of the fact, by keys and ids
 */
export function standsInFor(file: unknown, path: string): StandsIn | undefined {
  const precision = PRECISIONS[path]
  if (precision !== undefined) return precision
  const [, list, mark, key = ''] = /^(units|finishing)\.([^.]+)\.(.+)$/.exec(path) ?? []
  if (list === undefined || (list === 'units' ? !OF_UNITS.has(key) : key !== 'height')) return undefined
  const defaults = usualIn(file)
  const kind = thingAt(file, `${list}.${mark}.kind`)
  if (list === 'finishing') {
    return kind === 'plinth' ? defaults.find(({ field }) => field === 'plinthHeight') : undefined
  }
  const field = OF_UNITS.get(key)
  return field === undefined ? undefined : usualOf(file, `${list}.${mark}`, field)
}

/** The same size for the same kind of unit, standing in the same way, in the same country. */
function usualOf(file: unknown, unit: string, field: DefaultField): StandsIn | undefined {
  const kind = thingAt(file, `${unit}.kind`)
  if (typeof kind !== 'string') return undefined
  const stands = thingAt(file, `${unit}.stands`) ?? null
  return usualSize({ kind, stands } as Pick<Unit, 'kind' | 'stands'>, field, usualIn(file))
}

function usualIn(file: unknown): ReturnType<typeof productDefaults> {
  const region = thingAt(file, 'region')
  return productDefaults(isRegion(region) ? region : null)
}

/**
 * Where the feet of a unit are taken to be that lists none, in a sentence; undefined where none are taken, and of every
 * other list.
 *
 * @param path of the list, by keys and ids
 */
export function feetStandingIn(file: unknown, path: string): string | undefined {
  const [, unit] = /^(units\.[^.]+)\.feet$/.exec(path) ?? []
  if (unit === undefined || listAt(file, path).length > 0) return undefined
  const isLShaped = ['returnLeft', 'returnRight'].some((arm) => isSaid(thingAt(file, `${unit}.${arm}`)))
  const [side, back, front] = (['footFromSide', 'footFromBack', 'footFromFront'] as const).map((field) =>
    usualOf(file, unit, field),
  )
  if (isLShaped || !side || !back || !front) return undefined
  return `assumed a foot at each corner, ${side.value} mm in from the side, ${back.value} mm from the back and ${front.value} mm from the front, each ± ${side.pm}: common practice. List your own to replace them.`
}

const isSaid = (value: unknown): boolean => value !== undefined && value !== null

const isRegion = (region: unknown): region is Region =>
  region === 'uk' || region === 'continental' || region === 'north-america'

/** The figure in words: `720 mm ± 2`, `34 1/2 in`. */
export function standsInWords({ value, pm }: StandsIn, display: Display): string {
  if (display === 'inch') return isSixteenths(value) ? `${inches(value)} in` : `${value} mm`
  return `${value} mm${pm === 0 ? '' : ` ± ${pm}`}`
}

/** What goes into the file when somebody says that it is so: the figure itself, no longer assumed. */
export const saidSo = ({ value }: StandsIn, display: Display): number | string =>
  display === 'inch' ? standsInWords({ value, pm: 0, why: '' }, display) : value

const isSixteenths = (mm: number): boolean => Math.abs((mm / 25.4) * 16 - Math.round((mm / 25.4) * 16)) < 1e-6
