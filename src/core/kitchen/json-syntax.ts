import type { ProblemKind } from './problem'

/**
 * Checks that a text is JSON, and says where and why when it is not. Browsers word and place their own errors
 * differently or not at all, take the last of two equal keys in silence, and may run out of stack on deep nesting; this
 * is one pass over the text with none of that.
 */

/** Lists and objects within each other, at most. The kitchen file needs about ten. */
export const DEEPEST = 64

export interface JsonFault {
  readonly kind: Extract<ProblemKind, 'not-json' | 'ends-early' | 'too-deep' | 'repeated-key'>
  /** Where in the text, counted from 0. */
  readonly at: number
  readonly message: string
  readonly mend: string
}

interface Scan {
  readonly text: string
  at: number
  /** Where the lists and objects now open began. */
  readonly open: number[]
  fault: JsonFault | undefined
}

/** Line and column of a place in a text, both counted from 1. */
export function lineAndColumn(text: string, at: number): string {
  const lines = text.slice(0, at).split(/\r\n|\r|\n/)
  return `line ${lines.length}, column ${(lines.at(-1) ?? '').length + 1}`
}

function refuse(
  scan: Scan,
  message: string,
  mend: string,
  at = scan.at,
  kind: JsonFault['kind'] = 'not-json',
): false {
  scan.fault ??= { kind, at, message, mend }
  return false
}

function endsEarly(scan: Scan): false {
  const opened = scan.open.at(-1)
  const message =
    opened === undefined
      ? 'The file ends early.'
      : `The file ends early: the ${scan.text[opened]} of ${lineAndColumn(scan.text, opened)} is never closed.`
  const mend =
    'It may have been cut off while it was saved or copied: take a whole copy, or write what is missing.'
  return refuse(scan, message, mend, scan.text.length, 'ends-early')
}

function skipSpace(scan: Scan): void {
  for (; scan.at < scan.text.length; scan.at++) {
    const code = scan.text.charCodeAt(scan.at)
    if (code !== 32 && code !== 10 && code !== 13 && code !== 9) return
  }
}

function unexpected(scan: Scan, wanted: string): false {
  const { text, at } = scan
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0)
  if (text.startsWith('//', at) || text.startsWith('/*', at) || sign === '#')
    return refuse(scan, 'Here stands a comment; JSON has none.', 'Take the comment out.')
  if ("'’‘“”".includes(sign))
    return refuse(scan, `Here stands ${sign}, which does not open a text.`, 'Use straight double quotes: ".')
  const word = /[A-Za-z_$][\w$]*/y
  word.lastIndex = at
  const found = word.exec(text)?.[0].slice(0, 40)
  if (found !== undefined && /^(nan|infinity|undefined|none|nil|null)$/i.test(found))
    return refuse(scan, `${found} is not a value.`, 'Write null for a figure that is not known.')
  if (found !== undefined)
    return refuse(scan, `Here stands ${found}, where ${wanted} should be.`, 'Put words in double quotes.')
  return refuse(
    scan,
    `Here stands ${JSON.stringify(sign)}, where ${wanted} should be.`,
    'Look just before this place for a sign too many or too few.',
  )
}

function scanEscape(scan: Scan): boolean {
  const sign = scan.text[scan.at + 1]
  if (sign === undefined) return endsEarly(scan)
  if ('"\\/bfnrt'.includes(sign)) {
    scan.at += 2
    return true
  }
  const four = scan.text.slice(scan.at + 2, scan.at + 6)
  if (sign === 'u' && /^[\da-f]{4}$/i.test(four)) {
    scan.at += 6
    return true
  }
  if (sign === 'u' && scan.at + 6 > scan.text.length && /^[\da-f]*$/i.test(four)) return endsEarly(scan)
  return refuse(
    scan,
    'A backslash here starts nothing that JSON knows.',
    'Write two backslashes to mean one.',
  )
}

function scanText(scan: Scan): boolean {
  const start = scan.at
  scan.at++
  while (scan.at < scan.text.length) {
    const code = scan.text.charCodeAt(scan.at)
    if (code === 34) {
      scan.at++
      return true
    }
    if (code === 10 || code === 13)
      return refuse(
        scan,
        'The text that starts here runs past the end of its line.',
        'Close it with ".',
        start,
      )
    if (code < 32)
      return refuse(scan, 'A tab or other control sign stands inside a text.', 'Take it out, or write \\t.')
    if (code === 92) {
      if (!scanEscape(scan)) return false
    } else scan.at++
  }
  return endsEarly(scan)
}

function scanNumber(scan: Scan): boolean {
  const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y
  number.lastIndex = scan.at
  const start = scan.at
  const length = number.exec(scan.text)?.[0].length ?? 0
  const tail = /[\w.+-]*/y
  tail.lastIndex = start + length
  const over = tail.exec(scan.text)?.[0] ?? ''
  const end = start + length + over.length
  if (length > 0 && over === '') {
    scan.at = end
    return true
  }
  if (end === scan.text.length && /^(?:-|[.eE]|[eE][+-])$/.test(over)) return endsEarly(scan)
  const typed = scan.text.slice(start, Math.min(end, start + 40))
  return refuse(
    scan,
    `${typed} is not a number.`,
    'Write figures with a point, no other signs: 12.5; lengths with units go in quotes: "34 1/2 in".',
  )
}

function scanWord(scan: Scan): boolean {
  const { text, at } = scan
  for (const word of ['true', 'false', 'null']) {
    if (text.startsWith(word, at) && !/[\w$]/.test(text[at + word.length] ?? ' ')) {
      scan.at += word.length
      return true
    }
    if (at + word.length > text.length && word.startsWith(text.slice(at))) return endsEarly(scan)
  }
  return unexpected(scan, 'a value')
}

function open(scan: Scan): boolean {
  if (scan.open.length >= DEEPEST) {
    const message = `Lists and objects stand within each other more than ${DEEPEST} deep here.`
    return refuse(scan, message, 'A kitchen file never needs this: take a sound copy.', scan.at, 'too-deep')
  }
  scan.open.push(scan.at)
  scan.at++
  return true
}

function close(scan: Scan): true {
  scan.open.pop()
  scan.at++
  return true
}

/** After a part of a list or object: true at a comma or the closing sign (which is then next), false with a fault. */
function scanJoint(scan: Scan, closing: ']' | '}'): boolean {
  skipSpace(scan)
  const sign = scan.text[scan.at]
  if (sign === undefined) return endsEarly(scan)
  if (sign === closing) return true
  if (sign !== ',') {
    if ('"{[-0123456789tfn'.includes(sign))
      return refuse(scan, 'A comma is missing before this.', 'Put a comma between the two.')
    return unexpected(scan, `a comma or ${closing}`)
  }
  const comma = scan.at
  scan.at++
  skipSpace(scan)
  if (scan.text[scan.at] === closing)
    return refuse(
      scan,
      `This comma has nothing after it before the ${closing}.`,
      'Take the comma out.',
      comma,
    )
  return true
}

function scanList(scan: Scan): boolean {
  if (!open(scan)) return false
  skipSpace(scan)
  while (scan.text[scan.at] !== ']') if (!scanValue(scan) || !scanJoint(scan, ']')) return false
  return close(scan)
}

function scanKey(scan: Scan, seen: Set<string>): boolean {
  const start = scan.at
  if (start >= scan.text.length) return endsEarly(scan)
  if (scan.text[start] !== '"') return unexpected(scan, 'a key in double quotes')
  if (!scanText(scan)) return false
  const typed = scan.text.slice(start, scan.at)
  const key = typed.includes('\\') ? String(JSON.parse(typed)) : typed.slice(1, -1)
  if (seen.has(key)) {
    const message = `The key ${typed.slice(0, 42)} stands twice in the same object.`
    return refuse(scan, message, 'Keep the one that is meant and take the other out.', start, 'repeated-key')
  }
  seen.add(key)
  skipSpace(scan)
  if (scan.at >= scan.text.length) return endsEarly(scan)
  if (scan.text[scan.at] !== ':') return unexpected(scan, 'a colon')
  scan.at++
  return true
}

function scanObject(scan: Scan): boolean {
  if (!open(scan)) return false
  const seen = new Set<string>()
  skipSpace(scan)
  while (scan.text[scan.at] !== '}')
    if (!scanKey(scan, seen) || !scanValue(scan) || !scanJoint(scan, '}')) return false
  return close(scan)
}

function scanValue(scan: Scan): boolean {
  skipSpace(scan)
  const sign = scan.text[scan.at]
  if (sign === undefined) return endsEarly(scan)
  if (sign === '{') return scanObject(scan)
  if (sign === '[') return scanList(scan)
  if (sign === '"') return scanText(scan)
  return /[-+.\d]/.test(sign) ? scanNumber(scan) : scanWord(scan)
}

/** The first fault of a text as JSON, or undefined when it is sound. */
export function jsonFault(text: string): JsonFault | undefined {
  const scan: Scan = { text, at: 0, open: [], fault: undefined }
  if (!scanValue(scan)) return scan.fault
  skipSpace(scan)
  if (scan.at < text.length)
    refuse(
      scan,
      'The file goes on after its end.',
      'Take out what stands from here on, or a closing sign too many before it.',
    )
  return scan.fault
}
