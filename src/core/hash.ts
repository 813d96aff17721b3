import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'

/**
 * One text for one value: object keys in code-unit order, no spaces. Arrays keep their order, so whoever hashes a set
 * sorts it first.
 */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value))
    return `[${value.map((v) => canonicalText(v === undefined ? null : v)).join(',')}]`
  if (value !== null && typeof value === 'object') {
    const entries = Object.entries(value as Record<string, unknown>)
      .filter(([, v]) => v !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    return `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${canonicalText(v)}`).join(',')}}`
  }
  return JSON.stringify(value) ?? 'null'
}

/** SHA-256 of the canonical text, in hex: the stamp of a plan and of every sheet printed from it. */
export function canonicalHash(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalText(value))))
}
