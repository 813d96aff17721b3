const MM_IN_UNIT: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  inch: 25.4,
  '"': 25.4,
  ft: 304.8,
  "'": 304.8,
}
const INCHES_AND_FEET = new Set(['in', 'inch', '"', 'ft', "'"])

/** Longer than anything that is a length. */
const LONGEST_TEXT = 60

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** One spelling for what keyboards and drawings write in several: spaces, primes, minus signs, ready-made fractions. */
function oneSpelling(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[′’]/g, "'")
    .replace(/[″”]/g, '"')
    .replace(/\u2212/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase()
}

/**
 * "2400", "2 400", "2,4", ".5". A comma is a decimal comma. In mm, one to three figures, a mark and exactly three
 * figures may be either 2.4 or 2400 according to the reader's country, so it is refused rather than guessed.
 */
function readDecimal(text: string, perUnit: number): number | undefined {
  const isPlain = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)$/.test(text)
  const isGrouped = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/.test(text)
  if (!isPlain && !isGrouped) return undefined
  if (perUnit === 1 && /^[1-9]\d{0,2}[.,]\d{3}$/.test(text)) return undefined
  return Number(text.replace(/ /g, '').replace(',', '.'))
}

/** "1/2", "34 1/2", "34-1/2"; a proper fraction only. */
function readFraction(text: string): number | undefined {
  const parts = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text)
  if (!parts) return undefined
  const [top, bottom] = [Number(parts[2]), Number(parts[3])]
  if (top === 0 || top >= bottom) return undefined
  return Number(parts[1] ?? 0) + top / bottom
}

/** A number and its unit, in mm. Without a unit it is mm. Fractions are for inches and feet, with the unit written. */
function readOne(text: string): number | undefined {
  const parts = /^(.*?) ?(mm|cm|m|inch|in|"|ft|')?$/.exec(text)
  const number = parts?.[1] ?? ''
  const unit = parts?.[2] ?? 'mm'
  const perUnit = MM_IN_UNIT[unit] ?? 1
  const value = readDecimal(number, perUnit) ?? (INCHES_AND_FEET.has(unit) ? readFraction(number) : undefined)
  return value === undefined ? undefined : value * perUnit
}

/** `7' 6 1/2"`, "7 ft 6 in", `7' 6`: whole feet, then less than twelve inches. */
function readFeetAndInches(text: string): number | undefined {
  const parts = /^(\d+) ?(?:ft|') ?([\d.,/ -]+?) ?(?:inch|in|")?$/.exec(text)
  if (parts?.[2] === undefined) return undefined
  const inches = readDecimal(parts[2], 25.4) ?? readFraction(parts[2])
  return inches === undefined || inches >= 12 ? undefined : Number(parts[1]) * 304.8 + inches * 25.4
}

/**
 * Reads a length as people type it, in mm: "2400", "2 400 mm", "2,4 m", "34 1/2 in", `34 1/2"`, `7' 6 1/2"`.
 * Undefined when it is not a length, or could be read in two ways.
 */
export function readLength(text: string): number | undefined {
  if (text.length > LONGEST_TEXT) return undefined
  const spelled = oneSpelling(text)
  const signed = /^([-+]?) ?(.+)$/.exec(spelled)
  const size = signed?.[2]
  if (size === undefined) return undefined
  const value = readFeetAndInches(size) ?? readOne(size)
  if (value === undefined || !Number.isFinite(value)) return undefined
  return signed?.[1] === '-' && value !== 0 ? -value : value
}
