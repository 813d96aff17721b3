import { isRecord } from './json'

/**
 * A small language for what plain data must look like: each shape gives the first place where it does not, as the way
 * there from the data itself and what is wrong (`.units[2].width is no number`), or null.
 */
export type Shape = (data: unknown) => string | null

export const text: Shape = (d) => (typeof d === 'string' ? null : ' is no text')
export const flag: Shape = (d) => (typeof d === 'boolean' ? null : ' is neither true nor false')
export const number: Shape = (d) => (typeof d === 'number' && Number.isFinite(d) ? null : ' is no number')
export const anything: Shape = () => null

export function maybe(shape: Shape): Shape {
  return (d) => (d === null ? null : shape(d))
}

/** May be left out altogether. */
export function leftOut(shape: Shape): Shape {
  return (d) => (d === undefined ? null : shape(d))
}

export function list(shape: Shape): Shape {
  return (d) => {
    if (!Array.isArray(d)) return ' is no list'
    for (let i = 0; i < d.length; i++) {
      const fault = shape(d[i])
      if (fault !== null) return `[${i}]${fault}`
    }
    return null
  }
}

export function record(fields: Readonly<Record<string, Shape>>): Shape {
  const shapes = Object.entries(fields)
  return (d) => {
    if (!isRecord(d)) return ' is no record'
    for (const [key, shape] of shapes) {
      const fault = shape(d[key])
      if (fault !== null) return `.${key}${fault}`
    }
    return null
  }
}

export function oneOf(...words: readonly string[]): Shape {
  return (d) => (typeof d === 'string' && words.includes(d) ? null : ` is none of ${words.join(', ')}`)
}

/** The shape that goes with the word under a key. */
export function byWord(key: string, shapes: Readonly<Record<string, Shape>>): Shape {
  return (d) => {
    const word = isRecord(d) ? d[key] : undefined
    const shape = typeof word === 'string' && Object.hasOwn(shapes, word) ? shapes[word] : undefined
    return shape === undefined ? `.${key} is none of ${Object.keys(shapes).join(', ')}` : shape(d)
  }
}
