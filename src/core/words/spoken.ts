/** Figures and signs of a sentence as they are said, so that a voice need not guess what "mm" or "−" is. */

const UNITS: readonly (readonly [sign: string, one: string, many: string])[] = [
  ['kg/m³', 'kilogram per cubic metre', 'kilograms per cubic metre'],
  ['mm', 'millimetre', 'millimetres'],
  ['kg', 'kilogram', 'kilograms'],
  ['min', 'minute', 'minutes'],
  ['m', 'metre', 'metres'],
  ['N', 'newton', 'newtons'],
  ['A', 'amp', 'amps'],
  ['°', 'degree', 'degrees'],
]

/** What a length is only the size of: "5 by 50 millimetre wood screws". */
const SIZED =
  /(\d) millimetres (?=(?:wood |masonry |machine |stand-off |joining )?(?:screws?|pilots?|plugs?|bits?|fixings?|bolts?|panels?|boards?)\b)/g

const QUARTERS: Readonly<Record<string, string>> = {
  '¼': 'a quarter',
  '½': 'a half',
  '¾': 'three quarters',
}

const PART_TURNS: Readonly<Record<string, string>> = {
  '¼': 'a quarter turn',
  '½': 'half a turn',
  '¾': 'three quarters of a turn',
}

const number = String.raw`\d+(?:\.\d+)?`

function unitsSaid(text: string): string {
  return UNITS.reduce((said, [sign, one, many]) => {
    const found = new RegExp(String.raw`(${number})\s?${sign}(?![\p{L}\p{N}/²³])`, 'gu')
    return said.replace(found, (_, figure: string) => `${figure} ${Number(figure) === 1 ? one : many}`)
  }, text)
}

/** A height that is said to be from the line goes up or down from it; any other sign is said as a sign. */
function signsSaid(text: string): string {
  // What begins with its sign is the answer to how high.
  const fromLine = new RegExp(
    `([+−])(${number} millimetres?) from the line|^([+−])(${number} millimetres?)`,
    'g',
  )
  return text
    .replace(fromLine, (...found: readonly string[]) => {
      const [, sign = found[3], length = found[4]] = found
      return `${length} ${sign === '+' ? 'above' : 'below'} the line`
    })
    .replaceAll('(+)', ', plus,')
    .replaceAll('(−)', ', minus,')
    .replace(/,(?=[.,])/g, '')
    .replace(/\+\s?/g, 'plus ')
    .replace(/−\s?/g, 'minus ')
    .replace(/\s*±\s*/g, ' give or take ')
    .replace(/\s*×\s*/g, ' by ')
}

/**
 * A sentence as it is read out: units and signs in words, the thousands of a figure together, a quarter of a turn as one
 * says it. "−858 mm from the line" is "858 millimetres below the line".
 */
export function spoken(sentence: string): string {
  const plain = sentence
    .replace(/(\d)[\u2009\u202f\u00a0](?=\d{3})/g, '$1')
    .replace(/[\u2009\u202f\u00a0]/g, ' ')
    .replace(/ \(assumed\)(?= \p{L})/gu, ', assumed,')
    .replaceAll(' (assumed)', ', assumed')
    .replace(/(\d)([¼½¾])/g, (_, whole: string, part: string) => `${whole} and ${QUARTERS[part]}`)
    .replace(/([¼½¾]) turn\b/g, (_, part: string) => PART_TURNS[part] ?? part)
    .replace(/[¼½¾]/g, (part) => QUARTERS[part] ?? part)
    .replace(/[“”]/g, '')
  return signsSaid(unitsSaid(plain))
    .replace(SIZED, '$1 millimetre ')
    .replaceAll(' ,', ',')
    .replace(/ {2,}/g, ' ')
    .trim()
}
