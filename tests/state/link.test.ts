import { deflateRawSync } from 'node:zlib'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { LONGEST_FILE } from '../../src/core/kitchen/read-json'
import { isLink, LONGEST_LINK, linkOf, textOfLink } from '../../src/state/link'
import { sceneFile } from '../support/kitchens'

const base64url = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64url')
const linkTo = (text: string): string => `kitchen=${base64url(deflateRawSync(text))}`

afterEach(() => vi.unstubAllGlobals())

describe('a kitchen in an address', () => {
  test('comes out of it as it went in', async () => {
    const kitchen = { ...(sceneFile('l-shape') as object), name: 'Küche №1 “½” 🍳 <b>' }
    const part = await linkOf(kitchen)
    expect(part).toMatch(/^kitchen=[A-Za-z0-9_-]+$/)
    expect(isLink(part)).toBe(true)
    expect(JSON.parse((await textOfLink(part)) as string)).toEqual(kitchen)
  })

  test('is deflated as RFC 1951 has it, and read whoever deflated it', async () => {
    const text = JSON.stringify(sceneFile('l-shape'))
    expect(await textOfLink(linkTo(text))).toBe(text)
    const { inflateRawSync } = await import('node:zlib')
    const bytes = Buffer.from((await linkOf(sceneFile('l-shape'))).slice('kitchen='.length), 'base64url')
    expect(inflateRawSync(bytes).toString()).toBe(text)
  })

  test('no other address is taken for one', () => {
    for (const part of ['', 'rehearse/hang:wall-2', 'survey/walls', 'kitchen'])
      expect(isLink(part)).toBe(false)
  })
})

describe('a link that is refused', () => {
  const whole = linkTo(JSON.stringify(sceneFile('one-wall')))
  test.each([
    ['nothing in it', 'kitchen='],
    ['letters no link has', 'kitchen=ab cd'],
    ['letters of ordinary base64', 'kitchen=a+/='],
    ['one letter too many', 'kitchen=abcde'],
    ['cut short', whole.slice(0, -9)],
    ['a letter changed at its beginning', `kitchen=_${whole.slice('kitchen='.length + 1)}`],
    ['not text', `kitchen=${base64url(deflateRawSync(Buffer.from([0xff, 0xfe, 0x80])))}`],
  ])('%s: says where, what and how to mend it', async (_, part) => {
    expect(await textOfLink(part)).toMatchObject({
      kind: 'bad-text',
      path: 'the link',
      mend: expect.stringContaining('Copy the whole link'),
    })
  })

  test('longer than any link is not even unpacked', async () => {
    const unpack = vi.fn()
    vi.stubGlobal('DecompressionStream', unpack)
    expect(await textOfLink(`kitchen=${'A'.repeat(LONGEST_LINK + 1)}`)).toMatchObject({ kind: 'too-large' })
    expect(unpack).not.toHaveBeenCalled()
  })

  test('a bomb is stopped while it is inflated, long before its end', async () => {
    const part = linkTo('0'.repeat(100_000_000))
    expect(part.length).toBeLessThan(LONGEST_LINK)
    let out = 0
    const Real = DecompressionStream
    vi.stubGlobal(
      'DecompressionStream',
      class {
        readonly writable: WritableStream<BufferSource>
        readonly readable: ReadableStream<Uint8Array>
        constructor(format: CompressionFormat) {
          const { readable, writable } = new Real(format)
          this.writable = writable
          this.readable = readable.pipeThrough(
            new TransformStream<Uint8Array, Uint8Array>({
              transform(chunk, controller) {
                out += chunk.length
                controller.enqueue(chunk)
              },
            }),
          )
        }
      },
    )
    expect(await textOfLink(part)).toMatchObject({ kind: 'too-large', path: 'the link' })
    await new Promise((resolve) => setTimeout(resolve, 50))
    expect(out).toBeGreaterThan(LONGEST_FILE)
    expect(out).toBeLessThan(LONGEST_FILE + 1_000_000)
  })
})
