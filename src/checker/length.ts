/**
 * Lengths as people write them, read token by token: "2400", "2 400 mm", "2,4 m", "34 1/2 in", `7' 6 1/2"`. Undefined when
 * the text is no length.
 */

type Token =
  | { readonly kind: 'number'; readonly digits: string }
  | { readonly kind: 'slash' }
  | { readonly kind: 'unit'; readonly mm: number; readonly feet: boolean }

const WORDS: readonly (readonly [string, number])[] = [
  ['mm', 1],
  ['cm', 10],
  ['m', 1000],
  ['inches', 25.4],
  ['inch', 25.4],
  ['in', 25.4],
  ['"', 25.4],
  ['″', 25.4],
  ['feet', 304.8],
  ['foot', 304.8],
  ['ft', 304.8],
  ["'", 304.8],
  ['′', 304.8],
]
const INCH = 25.4
const FOOT = 304.8

export function typedLength(text: string): number | undefined {
  const clean = text.trim().replace(/[\u2009\u202f\u00a0]/g, ' ')
  const negative = /^[-−]/.test(clean)
  const tokens = tokensOf(negative ? clean.slice(1).trim() : clean)
  if (tokens === undefined || tokens.length === 0) return undefined
  const value = lengthOf(tokens)
  return value === undefined ? undefined : negative ? -value : value
}

function tokensOf(text: string): readonly Token[] | undefined {
  const tokens: Token[] = []
  let rest = text
  while (rest !== '') {
    const number = /^\d+(?:[.,]\d+)?/.exec(rest)?.[0]
    const word = WORDS.find(([w]) => rest.startsWith(w))
    if (number !== undefined) tokens.push({ kind: 'number', digits: number })
    else if (rest.startsWith('/')) tokens.push({ kind: 'slash' })
    else if (word !== undefined) tokens.push({ kind: 'unit', mm: word[1], feet: word[1] === FOOT })
    else return undefined
    rest = rest.slice(number?.length ?? word?.[0].length ?? 1).trimStart()
  }
  return tokens
}

function lengthOf(tokens: readonly Token[]): number | undefined {
  const unitAt = tokens.findIndex((token) => token.kind === 'unit')
  const unit = tokens[unitAt]
  if (unit === undefined || unit.kind !== 'unit') return mixedNumber(tokens)
  const count = mixedNumber(tokens.slice(0, unitAt))
  if (count === undefined) return undefined
  const after = tokens.slice(unitAt + 1)
  if (after.length === 0) return count * unit.mm
  if (!unit.feet) return undefined
  // After feet come inches, with or without their mark.
  const last = after.at(-1)
  const inches = last?.kind === 'unit' ? after.slice(0, -1) : after
  if (last?.kind === 'unit' && last.mm !== INCH) return undefined
  const rest = mixedNumber(inches)
  return rest === undefined ? undefined : count * FOOT + rest * INCH
}

/** "34 1/2", "1/2", "2 400": the figures before a fraction are one whole number. */
function mixedNumber(tokens: readonly Token[]): number | undefined {
  const slashAt = tokens.findIndex((token) => token.kind === 'slash')
  const wholes = slashAt < 0 ? tokens : tokens.slice(0, Math.max(0, slashAt - 1))
  const digits = wholes.map((token) => (token.kind === 'number' ? token.digits : 'x')).join('')
  const whole = digits === '' ? 0 : Number(digits.replace(',', '.'))
  if (Number.isNaN(whole) || (slashAt < 0 && digits === '')) return undefined
  if (slashAt < 0) return whole
  const [top, , bottom, ...more] = tokens.slice(Math.max(0, slashAt - 1))
  if (top?.kind !== 'number' || bottom?.kind !== 'number' || more.length > 0) return undefined
  const divisor = Number(bottom.digits)
  return divisor === 0 ? undefined : whole + Number(top.digits) / divisor
}
