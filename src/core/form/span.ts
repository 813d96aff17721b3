import { USUAL_PRECISION } from '../kitchen/default-precision'
import { readLength } from '../kitchen/read-length'
import type { Edit } from '../plan/types'
import { inches } from '../words/format'
import type { Field, Span } from './field'
import { thingAt } from './things'
import { type Entered, mmTyped } from './typed'

/**
 * Two edges of one thing, typed as they are measured: one edge and how far it is to the other, or the middle and how wide
 * it is. The kitchen file holds the edges and nothing else; the width is always reckoned from them.
 */

type Position = Readonly<Record<string, unknown>>

/** Where a position is measured from: two positions can be taken from each other where it is the same. */
interface Placed {
  readonly frame: string
  /** mm, growing from the near edge to the far one. */
  readonly at: number
}

/** A length as it is typed: mm and its ±. */
interface Sized {
  readonly mm: number
  readonly pm: number
  /** Whether it was written in inches or feet. */
  readonly isInch: boolean
}

/** Both edges of a thing as they stand in the file, and what is between them. */
export interface Across {
  readonly isNearKnown: boolean
  /** As a field shows it; empty where it cannot be reckoned. */
  readonly width: string
  readonly middle: string
  /** The near edge's way of being measured: `left`, `right`; `up`, `down`, `aboveFloor`. */
  readonly way: string
}

const INCHES = /in|ft|["'″′]/i

const positionOf = (value: unknown): Position =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Position) : {}

const WAYS = ['up', 'down', 'aboveFloor'] as const

/** How a position is measured: which of its keys holds the figure, and which way that figure grows. */
function wayOf(position: Position, kind: Field['kind']): string {
  if (kind === 'along') return position['from'] === 'right' ? 'right' : 'left'
  return (
    WAYS.find((way) => position[way] !== undefined && position[way] !== null) ??
    WAYS.find((way) => way in position) ??
    'up'
  )
}

const keyOf = (kind: Field['kind'], way: string): string => (kind === 'along' ? 'at' : way)

/** Whether a figure measured that way grows from the near edge, left or lower, to the far one. */
function grows(position: Position, kind: Field['kind'], way: string): boolean {
  if (kind !== 'along') return way !== 'down'
  return (way === 'left') === (position['face'] !== 'other')
}

function frameOf(position: Position, kind: Field['kind'], way: string, firstLine: string): string {
  if (kind === 'along') return `${way} ${position['face'] === 'other' ? 'other' : 'room'}`
  return way === 'aboveFloor' ? 'floor' : `line ${String(position['line'] ?? firstLine)}`
}

/** The ± of a reading whose own is not typed. */
function usualPm(file: unknown, kind: Field['kind'], way: string): number {
  const isTape = kind === 'along' || way === 'aboveFloor'
  const [key, usual] = isTape
    ? (['tape', USUAL_PRECISION.tape] as const)
    : (['level', USUAL_PRECISION.level] as const)
  return mmTyped(thingAt(file, `survey.${key}Precision`)) ?? usual.pm
}

function sizedOf(value: unknown, usual: number): Sized | undefined {
  const mm = mmTyped(value)
  if (mm === undefined) return undefined
  const inner = thingAt(value, 'value') ?? value
  return {
    mm,
    pm: mmTyped(thingAt(value, 'pm')) ?? usual,
    isInch: typeof inner === 'string' && INCHES.test(inner),
  }
}

/** A length as it goes into the file: in millimetres, or in inches where one of its parts was. */
function written(mm: number, isInch: boolean): number | string {
  const round = Math.round(mm * 1000) / 1000
  if (!isInch) return round
  const sixteenths = `${mm < 0 ? '-' : ''}${inches(mm)} in`
  const isExact = Math.abs((readLength(sixteenths) ?? Number.NaN) - mm) < 0.01
  return isExact ? sixteenths : `${Math.round((mm / 25.4) * 1000) / 1000} in`
}

/** Whether such a thing is measured at its middle. */
export function hasMiddle(span: Span, thing: unknown): boolean {
  const kind = thingAt(thing, 'kind')
  return span.middle?.of.includes(typeof kind === 'string' ? kind : '') === true
}

interface Edges {
  readonly near: Position
  readonly far: Position
  readonly kind: Field['kind']
  readonly firstLine: string
}

function edgesOf(file: unknown, under: string, near: Field, span: Span): Edges {
  const lines = thingAt(file, 'lines')
  const first: unknown = Array.isArray(lines) ? lines[0] : undefined
  return {
    near: positionOf(thingAt(file, `${under}.${near.key}`)),
    far: positionOf(thingAt(file, `${under}.${span.to}`)),
    kind: near.kind,
    firstLine: String(thingAt(first, 'id') ?? 'line'),
  }
}

function placedAt(position: Position, kind: Field['kind'], firstLine: string): Placed | undefined {
  const way = wayOf(position, kind)
  const value = mmTyped(position[keyOf(kind, way)])
  if (value === undefined) return undefined
  const at = grows(position, kind, way) ? value : -value
  return { frame: frameOf(position, kind, way, firstLine), at }
}

/** One frame for both ends of a wall, where its length is known. */
function fromOneEnd(placed: Placed, wallLength: number | undefined): Placed {
  if (placed.frame !== 'right room' || wallLength === undefined) return placed
  return { ...placed, frame: 'left room', at: wallLength + placed.at }
}

/** The length of the wall a thing is on, mm: its own wall's, or that of the wall it names. */
function wallLength(file: unknown, under: string): number | undefined {
  const [, own] = /^walls\.([^.]+)\./.exec(under) ?? []
  const wall = own ?? thingAt(file, `${under}.wall`)
  return typeof wall === 'string' ? mmTyped(thingAt(file, `walls.${wall}.length`)) : undefined
}

/** What is known between the two edges. */
export function across(file: unknown, under: string, field: Field, span: Span): Across {
  const { near, far, kind, firstLine } = edgesOf(file, under, field, span)
  const way = wayOf(near, kind)
  const length = wallLength(file, under)
  const [ownNear, ownFar] = [placedAt(near, kind, firstLine), placedAt(far, kind, firstLine)]
  const known = { isNearKnown: ownNear !== undefined, way }
  const open = { ...known, width: '', middle: '' }
  if (ownNear === undefined || ownFar === undefined) return open
  const isSame = ownNear.frame === ownFar.frame
  const [a, b] = isSame ? [ownNear, ownFar] : [ownNear, ownFar].map((placed) => fromOneEnd(placed, length))
  if (a === undefined || b === undefined || a.frame !== b.frame) return open
  const isInch = [near, far].some((p) => sizedOf(p[keyOf(kind, wayOf(p, kind))], 0)?.isInch === true)
  const shown = (mm: number): string => String(written(mm, isInch))
  const middle = ((a.at + b.at) / 2) * (grows(near, kind, way) ? 1 : -1)
  // Measured from two ends, its middle is measured from neither.
  return { ...known, width: shown(b.at - a.at), middle: isSame ? shown(middle) : '' }
}

/** A position with its figure at another place of the same frame. */
function moved(like: Position, kind: Field['kind'], way: string, at: Sized): Position {
  if (kind === 'along') {
    const rest = Object.fromEntries(Object.entries(like).filter(([key]) => key !== 'at' && key !== 'from'))
    return { ...rest, ...(way === 'right' ? { from: 'right' } : {}), at: figure(at) }
  }
  if (way === 'aboveFloor') return { aboveFloor: figure(at) }
  // What lies on the other side of the line is measured the other way from it.
  const to = at.mm >= 0 ? way : way === 'up' ? 'down' : 'up'
  const line = typeof like['line'] === 'string' ? { line: like['line'] } : {}
  return { ...line, [to]: figure({ ...at, mm: Math.abs(at.mm) }) }
}

/** What goes into the file, with the ± of both readings it comes of. */
function figure({ mm, pm, isInch }: Sized): Entered {
  const value = written(mm, isInch)
  return { value, pm: isInch ? `${Math.round(pm * 100) / 100} mm` : Math.round(pm * 100) / 100 }
}

/**
 * The far edge, from the near one and the width between them.
 *
 * @param width as it was typed
 * @returns undefined while the near edge is open
 */
export function edgeFromWidth(
  file: unknown,
  under: string,
  field: Field,
  span: Span,
  width: Entered,
): readonly Edit[] | undefined {
  const { near, kind } = edgesOf(file, under, field, span)
  const way = wayOf(near, kind)
  const from = sizedOf(near[keyOf(kind, way)], usualPm(file, kind, way))
  const size = sizedOf(width, usualPm(file, 'along', 'left'))
  if (from === undefined || size === undefined) return undefined
  const mm = grows(near, kind, way) ? from.mm + size.mm : from.mm - size.mm
  const at = { mm, pm: from.pm + size.pm, isInch: from.isInch || size.isInch }
  return [{ set: `${under}.${span.to}`, to: moved(near, kind, way, at) }]
}

/**
 * Both edges, from the middle and the width about it.
 *
 * @param way how the middle was measured
 * @returns undefined while one of the two is open
 */
export function edgesFromMiddle(
  file: unknown,
  under: string,
  field: Field,
  span: Span,
  middle: Entered,
  width: Entered,
  way: string,
): readonly Edit[] | undefined {
  const { near, kind } = edgesOf(file, under, field, span)
  const at = sizedOf(middle, usualPm(file, kind, way))
  const size = sizedOf(width, usualPm(file, 'along', 'left'))
  if (at === undefined || size === undefined) return undefined
  const half = grows(near, kind, way) ? size.mm / 2 : -size.mm / 2
  const pm = at.pm + size.pm / 2
  const isInch = at.isInch || size.isInch
  return [
    { set: `${under}.${field.key}`, to: moved(near, kind, way, { mm: at.mm - half, pm, isInch }) },
    { set: `${under}.${span.to}`, to: moved(near, kind, way, { mm: at.mm + half, pm, isInch }) },
  ]
}
