/**
 * Reads a matrix code (ISO/IEC 18004) off its dots, written from the standard and sharing nothing with what draws it.
 * The picture is perfect, so nothing is corrected: a wrong dot gives a wrong text.
 */

/** Codewords of error correction in each block, and how many blocks, at level L by version (table 9). */
const CORRECTION = [
  7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28, 28, 28, 30, 30, 26, 28, 30,
  30, 30,
]
const BLOCKS = [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8, 8, 9, 9, 10, 12, 12, 12, 13, 14]

const MASKS: readonly ((row: number, column: number) => boolean)[] = [
  (r, c) => (r + c) % 2 === 0,
  (r) => r % 2 === 0,
  (_, c) => c % 3 === 0,
  (r, c) => (r + c) % 3 === 0,
  (r, c) => (Math.floor(r / 2) + Math.floor(c / 3)) % 2 === 0,
  (r, c) => ((r * c) % 2) + ((r * c) % 3) === 0,
  (r, c) => (((r * c) % 2) + ((r * c) % 3)) % 2 === 0,
  (r, c) => (((r + c) % 2) + ((r * c) % 3)) % 2 === 0,
]

/** The dots of a path of squares and strokes one unit high, without the quiet zone; true is dark. */
export function dotsOf(path: string, size: number, quietZone: number): readonly (readonly boolean[])[] {
  const dots = Array.from({ length: size }, () => Array.from({ length: size }, () => false))
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
    for (let i = 0; i < Number(length); i++) (dots[Number(y)] as boolean[])[Number(x) + i] = true
  }
  const isQuiet = (at: number) => at < quietZone || at >= size - quietZone
  dots.forEach((row, y) => {
    row.forEach((dark, x) => {
      if (dark && (isQuiet(x) || isQuiet(y))) throw new Error('there is a dot in the quiet zone')
    })
  })
  return dots.slice(quietZone, -quietZone).map((row) => row.slice(quietZone, -quietZone))
}

export function readMatrix(dots: readonly (readonly boolean[])[]): string {
  const size = dots.length
  const version = (size - 17) / 4
  if (!Number.isInteger(version) || version < 1 || version > 29) throw new Error(`no code has ${size} dots`)
  const at = (row: number, column: number): boolean => dots[row]?.[column] === true
  const format = Array.from({ length: 15 }, (_, bit) => {
    const row = bit < 6 ? bit : bit < 8 ? bit + 1 : 8
    const column = bit < 8 ? 8 : bit === 8 ? 7 : 14 - bit
    return Number(at(row, column)) << bit
  }).reduce((sum, bit) => sum | bit, 0)
  const plain = (format ^ 0b101010000010010) >> 10
  if (plain >> 3 !== 0b01) throw new Error('not of error correction level L')
  const mask = MASKS[plain & 0b111]
  if (mask === undefined) throw new Error('no mask')

  const isFixed = fixedOf(size, version)
  const bits: number[] = []
  let isUp = true
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5
    for (let i = 0; i < size; i++) {
      const row = isUp ? size - 1 - i : i
      for (const column of [right, right - 1]) {
        if (!isFixed(row, column)) bits.push(Number(at(row, column) !== mask(row, column)))
      }
    }
    isUp = !isUp
  }
  const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, i) =>
    bits.slice(i * 8, i * 8 + 8).reduce((sum, bit) => sum * 2 + bit, 0),
  )
  return textIn(dataOf(words, version), version)
}

/** Where no data can be: finders, timing, alignment, format and version. */
function fixedOf(size: number, version: number): (row: number, column: number) => boolean {
  const centres = alignmentAt(size, version)
  return (row, column) => {
    const isFinder = (row < 9 && (column < 9 || column >= size - 8)) || (row >= size - 8 && column < 9)
    if (isFinder || row === 6 || column === 6) return true
    const isVersion = (a: number, b: number) => version >= 7 && a < 6 && b >= size - 11
    if (isVersion(row, column) || isVersion(column, row)) return true
    return centres.some((r) =>
      centres.some((c) => {
        const isOnFinder = (r === 6 && (c === 6 || c === size - 7)) || (r === size - 7 && c === 6)
        return !isOnFinder && Math.abs(r - row) <= 2 && Math.abs(c - column) <= 2
      }),
    )
  }
}

function alignmentAt(size: number, version: number): readonly number[] {
  if (version === 1) return []
  const count = Math.floor(version / 7) + 2
  const step = Math.ceil((size - 13) / (2 * count - 2)) * 2
  return [6, ...Array.from({ length: count - 1 }, (_, i) => size - 7 - i * step).reverse()]
}

/** The codewords of the data, put back into their order: they are dealt out to the blocks one by one. */
function dataOf(words: readonly number[], version: number): readonly number[] {
  const blocks = BLOCKS[version - 1] as number
  const inAll = words.length - blocks * (CORRECTION[version - 1] as number)
  const short = Math.floor(inAll / blocks)
  const longer = inAll % blocks
  const dealt = Array.from({ length: blocks }, () => [] as number[])
  let next = 0
  for (let i = 0; i <= short; i++) {
    dealt.forEach((block, b) => {
      if (i < short || b >= blocks - longer) block.push(words[next++] as number)
    })
  }
  return dealt.flat()
}

function textIn(data: readonly number[], version: number): string {
  const bits = data.flatMap((word) => Array.from({ length: 8 }, (_, i) => (word >> (7 - i)) & 1))
  const number = (from: number, length: number) =>
    bits.slice(from, from + length).reduce((sum, bit) => sum * 2 + bit, 0)
  if (number(0, 4) !== 0b0100) throw new Error('not in bytes')
  const wide = version < 10 ? 8 : 16
  const bytes = Array.from({ length: number(4, wide) }, (_, i) => number(4 + wide + i * 8, 8))
  return new TextDecoder('utf-8', { fatal: true }).decode(new Uint8Array(bytes))
}
