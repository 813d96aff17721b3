import { readLength } from '../kitchen/read-length'

/**
 * What is typed into a field, and what of it goes into the kitchen file: lengths are kept as typed, with their unit.
 *
 *   2400      34 1/2 in      2,4 m      12.5 ± 0.5      (empty: not known)
 */

/** Nothing yet that can be kept, and whether it could still become something as typing goes on. */
export interface Unread {
  readonly unread: true
  readonly why: string
}

export type Entered =
  | number
  | string
  | null
  | { readonly value: number | string; readonly pm: number | string }

export const isUnread = (entered: unknown): entered is Unread =>
  typeof entered === 'object' && entered !== null && 'unread' in entered

const unread = (why: string): Unread => ({ unread: true, why })

const PLAIN = /^[-+−]?\s*(?:\d+(?:[.,]\d*)?|[.,]\d+)$/
const PM = /\s*(?:±|\+\/?-)\s*/

function plainNumber(text: string): number | undefined {
  if (!PLAIN.test(text)) return undefined
  const value = Number(text.replace(/\s/g, '').replace('−', '-').replace(',', '.'))
  return Number.isFinite(value) ? value : undefined
}

/** A length as it goes into the file; a bare one is in the unit the kitchen shows lengths in. */
function lengthAlone(text: string, unit: 'mm' | 'inch'): number | string | Unread {
  const isBare = /^[-+−]?[\d\s.,/]+$/.test(text)
  const whole = unit === 'inch' && isBare ? `${text} in` : text
  const value = readLength(whole)
  if (value === undefined) {
    return unread(
      /^[-+−]?\d{1,3}[.,]\d{3}$/.test(text)
        ? `${text} may be read in two ways: write 2400 or 2.4 m.`
        : 'Not a length yet: write 2400, 2.4 m, 34 1/2 in or 7 ft 6 in.',
    )
  }
  const plain = unit === 'mm' ? plainNumber(text) : undefined
  return plain ?? whole.trim()
}

/**
 * Reads what is typed for a length.
 *
 * @returns what goes into the file, null for an empty field (not known), or why it cannot be kept yet
 */
export function lengthTyped(text: string, unit: 'mm' | 'inch' = 'mm'): Entered | Unread {
  const [first = '', second, ...further] = text.trim().split(PM)
  if (first === '' && second === undefined) return null
  const value = lengthAlone(first, unit)
  if (isUnread(value) || second === undefined) return value
  const pm = lengthAlone(second, unit)
  return isUnread(pm) || further.length > 0 ? unread('After ± goes one length, such as 3.') : { value, pm }
}

/** Reads what is typed for a number that is no length: kg, N, degrees, turns, a count, a year. */
export function numberTyped(text: string): Entered | Unread {
  const [first = '', second] = text.trim().split(PM)
  if (first === '' && second === undefined) return null
  const value = plainNumber(first)
  if (value === undefined) return unread('Not a number yet: write 12 or 12.5.')
  if (second === undefined) return value
  const pm = plainNumber(second)
  return pm === undefined ? unread('After ± goes one number, such as 0.5.') : { value, pm }
}

/** What stands in the file, as it is shown in its field. */
export function shownTyped(value: unknown): string {
  if (typeof value === 'number' || typeof value === 'string') return String(value)
  if (typeof value !== 'object' || value === null || !('value' in value)) return ''
  const { value: inner, pm } = value as { readonly value: unknown; readonly pm?: unknown }
  const first = shownTyped(inner)
  return pm === undefined || pm === null ? first : `${first} ± ${shownTyped(pm)}`
}

/** A length as it stands in the file, mm; undefined where none can be read. */
export function mmTyped(value: unknown): number | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? value : undefined
  if (typeof value === 'string') return readLength(value)
  if (typeof value === 'object' && value !== null && 'value' in value) return mmTyped(value.value)
  return undefined
}

/** Why it was assumed; undefined where somebody has measured or confirmed it. */
export function assumedBecause(value: unknown): string | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  const { assumed, because } = value as { readonly assumed?: unknown; readonly because?: unknown }
  return assumed === true ? (typeof because === 'string' ? because : '') : undefined
}
