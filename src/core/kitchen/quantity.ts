import { z } from 'zod'
import type { Figure, FigureUnit } from '../figure'
import { readLength } from './read-length'

/**
 * How a figure is typed in the kitchen file:
 *   2400                                  known, with the usual precision of its class
 *   "34 1/2 in"  "2.4 m"  "2,4 m"         known, kept as typed
 *   { "value": 2400, "pm": 3 }            known, with its own precision (±)
 *   { "value": 720, "assumed": true, "because": "usual height of a base carcass" }
 *   null, or left out                     unknown
 */

/** Which usual precision a bare number gets: the survey's own, or the stated one in `default-precision.ts`. */
export type PrecisionClass = 'tape' | 'level' | 'angle' | 'sheet' | 'exact'

/** A typed figure before the walk that gives it its id and precision. The `quantity` tag is what the walk looks for. */
export interface Quantity {
  readonly quantity: FigureUnit
  readonly cls: PrecisionClass
  readonly value: number | null
  readonly pm: number | null
  readonly assumed: boolean
  readonly because: string | null
}

/** The kitchen as the rest of the core sees it: every quantity has become a figure that knows its id. */
export type Stamped<T> = T extends Quantity
  ? Figure
  : T extends readonly (infer U)[]
    ? readonly Stamped<U>[]
    : T extends object
      ? { readonly [K in keyof T]: Stamped<T[K]> }
      : T

interface Bounds {
  readonly min?: number
  readonly max?: number
}

const UNIT_WORDS: Readonly<Record<FigureUnit, string>> = {
  mm: ' mm',
  deg: ' degrees',
  kg: ' kg',
  N: ' N',
  min: ' minutes',
  turn: ' turns',
  'mm/turn': ' mm a turn',
  count: '',
  ratio: '',
  'kg/m³': ' kg/m³',
}
const LARGEST_PRECISION = 1000

function boundedNumber(unit: FigureUnit, min: number, max: number) {
  const error = `must be from ${min} to ${max}${UNIT_WORDS[unit]}`
  return z.number().min(min, { error }).max(max, { error })
}

function boundedText(min: number, max: number) {
  return z
    .string()
    .max(40)
    .superRefine((typed, context) => {
      const value = readLength(typed)
      const fault =
        value === undefined
          ? 'is not a length that can be read in one way only: write 2400, "34 1/2 in" or "2.4 m"'
          : value < min || value > max
            ? `must be from ${min} to ${max} mm`
            : undefined
      if (fault !== undefined) context.addIssue({ code: 'custom', message: fault })
    })
    .describe('A length with its unit: "34 1/2 in", "7 ft 6 in", "2.4 m"; without a unit it is mm.')
}

function figureObject<T extends z.ZodType>(value: T, pm: T) {
  return z.strictObject({
    value,
    pm: pm.optional(),
    assumed: z.literal(true).optional(),
    because: z.string().max(400).optional(),
  })
}

type TypedNumber = number | string | null
type TypedQuantity =
  | TypedNumber
  | {
      readonly value: TypedNumber
      readonly pm?: TypedNumber
      readonly assumed?: true
      readonly because?: string
    }

function numberOf(typed: TypedNumber | undefined): number | null {
  return typeof typed === 'string' ? (readLength(typed) ?? null) : (typed ?? null)
}

function tagged(unit: FigureUnit, cls: PrecisionClass, typed: TypedQuantity): Quantity {
  const full = typed !== null && typeof typed === 'object' ? typed : { value: typed }
  return {
    quantity: unit,
    cls,
    value: numberOf(full.value),
    pm: numberOf(full.pm),
    assumed: full.assumed === true,
    because: full.because ?? null,
  }
}

/** What a union says when nothing in it fits; `issues.ts` prefers the fault of the part that nearly fits. */
function wanted(unit: FigureUnit): string {
  const text = unit === 'mm' ? ' text such as "34 1/2 in",' : ''
  const number = UNIT_WORDS[unit] === '' ? 'a number' : `a number of${UNIT_WORDS[unit]}`
  return `must be ${number},${text} an object such as { "value": 1 }, or null if it is not known`
}

/** Inputs with the same bounds are made once: the JSON Schema then names them once, too. */
function once<T>(make: (unit: FigureUnit, min: number, max: number) => T): typeof make {
  const made = new Map<string, T>()
  return (unit, min, max) => {
    const key = `${unit} ${min} ${max}`
    const input = made.get(key) ?? make(unit, min, max)
    made.set(key, input)
    return input
  }
}

const lengthParts = once((_, min, max) => [boundedNumber('mm', min, max), boundedText(min, max)] as const)

const lengthInput = once((_, min, max) => {
  const [number, text] = lengthParts('mm', min, max)
  const [pmNumber, pmText] = lengthParts('mm', 0, LARGEST_PRECISION)
  const error = wanted('mm')
  const full = figureObject(
    z.union([number, text, z.null()], { error }),
    z.union([pmNumber, pmText, z.null()], { error }),
  )
  return z.union([number, text, full, z.null()], { error })
})

const numberInput = once((unit, min, max) => numberOrFull(unit, boundedNumber(unit, min, max)))

/** Of things that there are no halves of. */
const wholeInput = once((unit, min, max) => {
  const error = `must be a whole number from ${min} to ${max}`
  return numberOrFull(
    unit,
    z.number().multipleOf(1, { error, abort: true }).min(min, { error }).max(max, { error }),
  )
})

function numberOrFull(unit: FigureUnit, number: z.ZodNumber) {
  const error = wanted(unit)
  const full = figureObject(
    z.union([number, z.null()], { error }),
    z.union([boundedNumber(unit, 0, LARGEST_PRECISION), z.null()], { error }),
  )
  return z.union([number, full, z.null()], { error })
}

function length(cls: PrecisionClass, { min = 0, max = 100_000 }: Bounds = {}) {
  return lengthInput('mm', min, max)
    .default(null)
    .transform((typed) => tagged('mm', cls, typed))
}

function quantity(unit: FigureUnit, cls: PrecisionClass, { min = 0, max = 100_000 }: Bounds = {}) {
  return numberInput(unit, min, max)
    .default(null)
    .transform((typed) => tagged(unit, cls, typed))
}

/** A length taken with a tape. */
export const tape = (bounds?: Bounds) => length('tape', bounds)
/** A reading off a level line or laser. May be negative. */
export const level = (bounds: Bounds = { min: -10_000, max: 10_000 }) => length('level', bounds)
/** A size printed on a maker's sheet or measured on the unit itself. */
export const sheet = (bounds?: Bounds) => length('sheet', bounds)
/** A length that is meant as it stands, such as a precision itself. */
export const exactLength = (bounds?: Bounds) => length('exact', bounds)
export const degrees = (bounds: Bounds = { min: 0, max: 360 }) => quantity('deg', 'angle', bounds)
export const mass = () => quantity('kg', 'exact', { max: 5000 })
export const force = () => quantity('N', 'exact', { max: 1_000_000 })
export const minutes = () => quantity('min', 'exact', { min: 0, max: 1_000_000 })
export const count = () => quantity('count', 'exact', { max: 1000 })
/** How many there are of something that is never halved. */
export const whole = ({ min, max }: Required<Bounds>) =>
  wholeInput('count', min, max)
    .default(null)
    .transform((typed) => tagged('count', 'exact', typed))
/** A density as it stands in a standard or a stamp: exact. */
export const density = (bounds: Bounds) => quantity('kg/m³', 'exact', bounds)
/** A share of one, such as a specific gravity: exact. */
export const ratio = (bounds: Bounds) => quantity('ratio', 'exact', bounds)
/** Finer than a tenth of a millimetre a turn no leg or hanger is threaded; nought would never change its length. */
export const perTurn = () => quantity('mm/turn', 'exact', { min: 0.1, max: 20 })
