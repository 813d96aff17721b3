/**
 * An address as a matrix code (QR code, ISO/IEC 18004), to be read with the camera of another device.
 *
 * How much one may carry is a matter of how small its dots become. On the screen of a phone the page is about 56 mm
 * wide, and 0.396 mm is the least width of a dot that is asked of codes at the counter of a shop (GS1 General
 * Specifications, section 5.12.3.1): 141 dots with the quiet zone of 4 dots on either side. That is version 29, which
 * holds 1628 letters at error correction level L.
 */

export const QUIET_ZONE = 4
const LARGEST_VERSION = 29
export const MOST_LETTERS = 1628

export interface Matrix {
  /** Dots on a side, with the quiet zone. */
  readonly size: number
  /** The dark dots, as the path of an SVG with one unit for a dot. */
  readonly path: string
}

/** @returns undefined for an address too long for a code that can be read off a phone */
export async function matrixOf(address: string): Promise<Matrix | undefined> {
  if (new TextEncoder().encode(address).length > MOST_LETTERS) return undefined
  // Fetched only where a code is drawn.
  const { encode } = await import('uqr')
  const { data, size } = encode(address, { ecc: 'L', maxVersion: LARGEST_VERSION, border: 0 })
  return { size: size + 2 * QUIET_ZONE, path: data.map(rowPath).join('') }
}

/** The dark dots of a row, those that touch in one stroke. */
function rowPath(row: readonly boolean[], y: number): string {
  const starts = row.flatMap((dark, x) => (dark && row[x - 1] !== true ? [x] : []))
  return starts
    .map((x) => {
      const end = row.indexOf(false, x)
      const length = (end < 0 ? row.length : end) - x
      return `M${x + QUIET_ZONE} ${y + QUIET_ZONE}h${length}v1h-${length}z`
    })
    .join('')
}
