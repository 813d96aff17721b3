import { z } from 'zod'
import type { Figure, FigureUnit } from '../figure'

/**
 * How a figure is typed in the kitchen file:
 *   2400                                  known, with the usual precision of its class
 *   "34 1/2 in"  "2.4 m"  "2,4 m"         known, kept as typed
 *   { "value": 2400, "pm": 3 }            known, with its own precision (±)
 *   { "value": 720, "assumed": true, "because": "usual height of a base carcass" }
 *   null, or left out                     unknown
 */

/** Which usual precision a bare number gets: see `kitchen.precision`, or the stated default in `default-precision.ts`. */
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

const MM: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  '"': 25.4,
  ft: 304.8,
  "'": 304.8,
}

/**
 * Reads a length as people type it, in mm: "2400", "2 400 mm", "2,4 m", "34 1/2 in", `34 1/2"`, `7' 6 1/2"`.
 * Undefined when it is not a length.
 */
export function readLength(text: string): number | undefined {
  const t = text.trim().replace(/[\u2009\u202f\u00a0]/g, ' ')
  const feet = /^(\d+)\s*(?:'|ft)\s*(.+)$/.exec(t)
  if (feet?.[1] !== undefined && feet[2] !== undefined) {
    const rest = readLength(/["n]$/.test(feet[2].trim()) ? feet[2] : `${feet[2]} in`)
    return rest === undefined ? undefined : Number(feet[1]) * 304.8 + rest
  }
  const m = /^(-?)(\d[\d ]*(?:[.,]\d+)?)?(?:\s*(\d+)\s*\/\s*(\d+))?\s*(mm|cm|m|in|ft|"|')?$/.exec(t)
  if (!m) return undefined
  let whole = m[2]?.trim()
  let top = m[3]
  if (whole !== undefined && top !== undefined) {
    // "1/2" alone: the greedy whole number has eaten nothing of it; "34 1/2": whole is "34".
    whole = whole.trim()
  }
  if (whole === undefined && top === undefined) return undefined
  // A bare "3/8" is read by the first group as "3" only when a slash follows; repair that case.
  if (top === undefined && m[4] !== undefined) top = '0'
  const bottom = m[4] === undefined ? 1 : Number(m[4])
  if (bottom === 0) return undefined
  const number =
    (whole === undefined ? 0 : Number(whole.replace(/ /g, '').replace(',', '.'))) +
    (top === undefined ? 0 : Number(top) / bottom)
  const scale = MM[m[5] ?? 'mm']
  return scale === undefined ? undefined : (m[1] === '-' ? -1 : 1) * number * scale
}

const finite = z.number()
const typedLength = z
  .string()
  .max(40)
  .refine((s) => readLength(s) !== undefined, 'is not a length: write 2400, "34 1/2 in" or "2.4 m"')

interface Bounds {
  readonly min?: number
  readonly max?: number
}

function quantity(unit: FigureUnit, cls: PrecisionClass, { min = 0, max = 100_000 }: Bounds = {}) {
  const number = finite.min(min).max(max)
  const length =
    unit === 'mm'
      ? z.union([
          number,
          typedLength.refine((s) => {
            const v = readLength(s)
            return v === undefined || (v >= min && v <= max)
          }, `must be between ${min} and ${max} mm`),
        ])
      : number
  const full = z.strictObject({
    value: length.nullable(),
    pm: (unit === 'mm'
      ? z.union([finite.min(0).max(1000), typedLength])
      : finite.min(0).max(1000)
    ).optional(),
    assumed: z.literal(true).optional(),
    because: z.string().max(400).optional(),
  })
  return z
    .union([length, full])
    .nullable()
    .default(null)
    .transform((typed): Quantity => {
      const toNumber = (v: number | string | null | undefined): number | null =>
        v === null || v === undefined ? null : typeof v === 'string' ? (readLength(v) ?? null) : v
      const base = { quantity: unit, cls, value: null, pm: null, assumed: false, because: null }
      if (typed === null || typeof typed !== 'object') return { ...base, value: toNumber(typed) }
      return {
        ...base,
        value: toNumber(typed.value),
        pm: toNumber(typed.pm),
        assumed: typed.assumed === true,
        because: typed.because ?? null,
      }
    })
}

/** A length taken with a tape. */
export const tape = (bounds?: Bounds) => quantity('mm', 'tape', bounds)
/** A reading off a level line or laser. May be negative. */
export const level = (bounds: Bounds = { min: -10_000, max: 10_000 }) => quantity('mm', 'level', bounds)
/** A size printed on a maker's sheet or measured on the unit itself. */
export const sheet = (bounds?: Bounds) => quantity('mm', 'sheet', bounds)
export const degrees = (bounds: Bounds = { min: 0, max: 360 }) => quantity('deg', 'angle', bounds)
export const mass = () => quantity('kg', 'exact', { max: 5000 })
export const force = () => quantity('N', 'exact', { max: 1_000_000 })
export const minutes = () => quantity('min', 'exact', { min: 0, max: 1_000_000 })
export const count = () => quantity('count', 'exact', { max: 1000 })
export const perTurn = () => quantity('mm/turn', 'exact', { max: 20 })
