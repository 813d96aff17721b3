import type { Problem } from '../core/kitchen/problem'
import { LONGEST_FILE } from '../core/kitchen/read-json'

/**
 * A kitchen in an address: `#kitchen=` and then its file, deflated (RFC 1951) and written in the letters of base64url
 * (RFC 4648, section 5). What stands after # never leaves the device that opens it: it is not sent to the server.
 */

export const LINK_MARK = 'kitchen='

/** Longest address part that is looked at, in letters; a kitchen of a hundred units is about a tenth of it. */
export const LONGEST_LINK = 200_000

/** The part of an address that carries a kitchen, without its #. */
export async function linkOf(kitchen: unknown): Promise<string> {
  const text = new TextEncoder().encode(JSON.stringify(kitchen))
  const { readable, writable } = new CompressionStream('deflate-raw')
  const written = writeAll(writable, text)
  const parts: Uint8Array[] = []
  const reader = readable.getReader()
  for (let next = await reader.read(); !next.done; next = await reader.read()) parts.push(next.value)
  await written
  return LINK_MARK + lettersOf(joined(parts))
}

/** Whether an address part, without its #, says that it carries a kitchen. */
export const isLink = (part: string): boolean => part.startsWith(LINK_MARK)

/**
 * The text of the kitchen file that an address carries. It has been looked at only as far as the address goes: it is
 * still to be read and refused like the text of any file.
 *
 * @param part what stands after the # of the address
 */
export async function textOfLink(part: string): Promise<string | Problem> {
  const letters = part.slice(LINK_MARK.length)
  if (letters.length > LONGEST_LINK) return tooLarge
  const packed = bytesOf(letters)
  if (packed === undefined) return broken
  const bytes = await inflated(packed, LONGEST_FILE)
  if (bytes === 'too-large') return tooLarge
  if (bytes === 'broken') return broken
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return broken
  }
}

const broken: Problem = {
  kind: 'bad-text',
  path: 'the link',
  message: 'This link does not carry a whole kitchen: letters of it are missing or changed.',
  mend: 'Copy the whole link again, or ask for the kitchen file instead.',
}

const tooLarge: Problem = {
  kind: 'too-large',
  path: 'the link',
  message: 'This link carries more than any kitchen file is long.',
  mend: 'Ask for the kitchen file instead.',
}

/** Inflates no further than `most` bytes: a few letters can be made to stand for any amount of text. */
async function inflated(packed: Bytes, most: number): Promise<Uint8Array | 'too-large' | 'broken'> {
  const { readable, writable } = new DecompressionStream('deflate-raw')
  const written = writeAll(writable, packed).catch(() => undefined)
  const reader = readable.getReader()
  const parts: Uint8Array[] = []
  let length = 0
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      parts.push(next.value)
      length += next.value.length
      if (length <= most) continue
      // Nobody waits for this: what has stopped being wanted may end as it likes.
      reader.cancel().catch(() => undefined)
      return 'too-large'
    }
  } catch {
    return 'broken'
  }
  await written
  return joined(parts)
}

/** As the streams of the browser want it: bytes of their own, shared with nobody. */
type Bytes = Uint8Array<ArrayBuffer>

async function writeAll(into: WritableStream<BufferSource>, bytes: Bytes): Promise<void> {
  const writer = into.getWriter()
  // A stream that breaks says so to every promise it has given; only what is read of it counts.
  writer.closed.catch(() => undefined)
  await Promise.all([writer.write(bytes), writer.close()])
}

function joined(parts: readonly Uint8Array[]): Bytes {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

const lettersOf = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '')

function bytesOf(letters: string): Bytes | undefined {
  if (!/^[A-Za-z0-9_-]+$/.test(letters) || letters.length % 4 === 1) return undefined
  const plain = atob(letters.replaceAll('-', '+').replaceAll('_', '/'))
  return Uint8Array.from(plain, (letter) => letter.charCodeAt(0))
}
