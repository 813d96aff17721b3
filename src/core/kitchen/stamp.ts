import type { z } from 'zod'
import { assumed, type Basis, type Figure, type InputId, known, unknown } from '../figure'
import { USUAL_PRECISION } from './default-precision'
import { factId } from './fact-id'
import { isRecord } from './problem'
import type { PrecisionClass, Quantity, Stamped } from './quantity'
import type { Kitchen, kitchenSchema } from './schema'

/** The kitchen as the schema leaves it: checked, filled out with nulls, its figures not yet stamped. */
export type TypedKitchen = z.output<typeof kitchenSchema>

/** The precision (±) of a figure that does not state its own, by its class. */
type Usual = Readonly<Record<PrecisionClass, number>>

const survey: Basis = { kind: 'survey' }
const maker: Basis = { kind: 'maker' }
const wish: Basis = { kind: 'wish' }

/** What the figures under each part of the file stand on; whatever is not named here was measured. */
const BASIS_OF_PART: Readonly<Record<string, Basis>> = {
  units: maker,
  appliances: maker,
  finishing: maker,
  worktops: maker,
  rails: maker,
  fixings: maker,
  wishes: wish,
  crew: wish,
  staging: wish,
}

/** Keys under which a product carries the plan its owner made for it, and no longer what its maker printed. */
const PLANNED = new Set(['order', 'standOff', 'contents', 'joints', 'left'])
/** Keys in the other parts that hold a maker's figure. */
const MAKERS = new Set(['lifter'])

function basisUnder(key: string, basis: Basis): Basis {
  if (basis.kind === 'maker' && PLANNED.has(key)) return wish
  return MAKERS.has(key) ? maker : basis
}

function isQuantity(value: Readonly<Record<string, unknown>>): boolean {
  return 'quantity' in value
}

function stampQuantity(typed: Quantity, id: InputId, basis: Basis, usual: Usual): Figure {
  const { value, quantity: unit } = typed
  if (value === null) return unknown(unit, [id], [id], basis)
  const pm = typed.pm ?? usual[typed.cls]
  if (!typed.assumed) return known(value, pm, unit, [id], basis)
  const why = typed.because ?? 'assumed in the kitchen file, with no reason given'
  return assumed(value, pm, unit, [id], { kind: 'common-practice', why })
}

function stampList(list: readonly unknown[], id: InputId, basis: Basis, usual: Usual): readonly unknown[] {
  return list.map((item, index) => {
    const name = isRecord(item) && typeof item['id'] === 'string' ? item['id'] : String(index + 1)
    return stampValue(item, factId(id, name), basis, usual)
  })
}

function stampValue(value: unknown, id: InputId, basis: Basis, usual: Usual): unknown {
  if (Array.isArray(value)) return stampList(value, id, basis, usual)
  if (!isRecord(value)) return value
  if (isQuantity(value)) return stampQuantity(value as unknown as Quantity, id, basis, usual)
  const stamped: Record<string, unknown> = {}
  for (const key of Object.keys(value)) {
    const inner = value[key]
    const isWithin = typeof inner === 'object' && inner !== null
    stamped[key] = isWithin ? stampValue(inner, factId(id, key), basisUnder(key, basis), usual) : inner
  }
  return stamped
}

const USUAL: Usual = {
  tape: USUAL_PRECISION.tape.pm,
  level: USUAL_PRECISION.level.pm,
  angle: USUAL_PRECISION.angle.pm,
  sheet: USUAL_PRECISION.sheet.pm,
  exact: USUAL_PRECISION.exact.pm,
}

function usualOf({ survey }: TypedKitchen): Usual {
  const tape = survey.tapePrecision.value ?? USUAL.tape
  const level = survey.levelPrecision.value ?? USUAL.level
  return { ...USUAL, tape, level }
}

/** Gives every figure within a value its id (the way to it from `id` on), its precision and what it stands on. */
export function stampFigures<T>(typed: T, id: InputId, basis: Basis, usual: Usual = USUAL): Stamped<T> {
  return stampValue(typed, id, basis, usual) as Stamped<T>
}

/**
 * Gives every figure of the kitchen its id, its precision and what it stands on: the survey's own usual precision where
 * it states one, else the stated usual one of the figure's class. A figure left out names itself as what is missing.
 */
export function stampKitchen(typed: TypedKitchen): Kitchen {
  const usual = usualOf(typed)
  const stamped: Record<string, unknown> = {}
  for (const [part, value] of Object.entries(typed))
    stamped[part] = stampValue(value, part, BASIS_OF_PART[part] ?? survey, usual)
  return stamped as unknown as Kitchen
}
