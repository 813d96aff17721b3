import { isRecord } from './json'

/** A small language for what plain data must look like: each shape gives the first place where it does not. */
export type Shape = (data: unknown, where: string) => string | null

export const text: Shape = (d, at) => (typeof d === 'string' ? null : `${at} is no text`)
export const flag: Shape = (d, at) => (typeof d === 'boolean' ? null : `${at} is neither true nor false`)
export const number: Shape = (d, at) =>
  typeof d === 'number' && Number.isFinite(d) ? null : `${at} is no number`
export const anything: Shape = () => null

export function maybe(shape: Shape): Shape {
  return (d, at) => (d === null ? null : shape(d, at))
}

export function list(shape: Shape): Shape {
  return (d, at) => {
    if (!Array.isArray(d)) return `${at} is no list`
    for (const [i, item] of d.entries()) {
      const fault = shape(item, `${at}[${i}]`)
      if (fault !== null) return fault
    }
    return null
  }
}

export function record(fields: Readonly<Record<string, Shape>>): Shape {
  return (d, at) => {
    if (!isRecord(d)) return `${at} is no record`
    for (const [key, shape] of Object.entries(fields)) {
      const fault = shape(d[key], `${at}.${key}`)
      if (fault !== null) return fault
    }
    return null
  }
}

export function oneOf(...words: readonly string[]): Shape {
  return (d, at) =>
    typeof d === 'string' && words.includes(d) ? null : `${at} is none of ${words.join(', ')}`
}

/** The shape that goes with the word under a key. */
export function byWord(key: string, shapes: Readonly<Record<string, Shape>>): Shape {
  return (d, at) => {
    const word = isRecord(d) ? d[key] : undefined
    const shape = typeof word === 'string' && Object.hasOwn(shapes, word) ? shapes[word] : undefined
    return shape === undefined ? `${at}.${key} is none of ${Object.keys(shapes).join(', ')}` : shape(d, at)
  }
}
