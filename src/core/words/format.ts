import type { Figure, FigureUnit, ValueFigure } from '../figure'

/** How lengths are shown: millimetres, or inches to the sixteenth. */
export type Display = 'mm' | 'inch'

const NARROW = '\u202f'
const MINUS = '\u2212'

/** 1812 → "1 812" with a narrow space that no line is broken at; only from four figures on. */
function grouped(digits: string): string {
  const [whole = '', rest] = digits.split('.')
  const parts: string[] = []
  for (let end = whole.length; end > 0; end -= 3) parts.unshift(whole.slice(Math.max(0, end - 3), end))
  return parts.join(NARROW) + (rest === undefined ? '' : `.${rest}`)
}

/** Decimals that the precision bears out: tenths only when it is known better than half a unit. */
function decimals(value: number, pm: number): number {
  if (pm >= 0.5) return 0
  return Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1
}

function signOf(value: number, signed: boolean): string {
  if (value < 0) return MINUS
  return signed && value > 0 ? '+' : ''
}

/** A bare length in whole millimetres, its thousands apart: 2 540. */
export const groupedNumber = (mm: number): string =>
  signOf(Math.round(mm), false) + grouped(String(Math.abs(Math.round(mm))))

/** A bare height from the line with its sign, to the tenth: +391.2, −1 011, 0. */
export function signedNumber(mm: number): string {
  const tenths = Math.round(mm * 10) / 10
  return signOf(tenths, true) + grouped(String(Math.abs(tenths)))
}

/** A length in inches to the nearest sixteenth, written 34 1/2. */
export function inches(mm: number): string {
  const sixteenths = Math.round((Math.abs(mm) / 25.4) * 16)
  const whole = Math.floor(sixteenths / 16)
  let top = sixteenths % 16
  let bottom = 16
  while (top > 0 && top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  const fraction = top === 0 ? '' : `${top}/${bottom}`
  if (fraction === '') return String(whole)
  return whole === 0 ? fraction : `${whole} ${fraction}`
}

export interface NumberStyle {
  readonly signed?: boolean
  readonly withUnit?: boolean
  readonly withPm?: boolean
  readonly display?: Display
}

const UNIT_WORD: Readonly<Record<FigureUnit, string>> = {
  mm: 'mm',
  deg: '°',
  kg: 'kg',
  N: 'N',
  min: 'min',
  turn: 'turns',
  'mm/turn': 'mm a turn',
  count: '',
  ratio: '',
  'kg/m³': 'kg/m³',
}

/** Labels of figures that are heights from the line, and so always carry their sign. */
const FROM_LINE = /^label\.(height\..+|high-point|hole-height|timber-height|underside|top|rail-edge)$/

export const isFromLine = (label: string): boolean => FROM_LINE.test(label)

/** Checks that ask for a height from the line. */
const ASKS_HEIGHT = /^check\.(.*-to-line.*|worktop-height)$/
/** Checks that somebody's name answers. */
const ASKS_WHO = ['check.proved-dead', 'check.gas-booked', 'check.supply-tested']

export const asksForHeight = (check: string): boolean => ASKS_HEIGHT.test(check)
export const asksForName = (check: string): boolean => ASKS_WHO.includes(check)

/** The unit as it is said after its number; empty for a count. */
export function unitText({ unit, value }: Pick<ValueFigure, 'unit' | 'value'>): string {
  return unit === 'turn' && Math.abs(value) < 1.125 ? 'turn' : UNIT_WORD[unit]
}

/** Whole, half and quarter turns as a fitter says them: 1, 1¼, ½. Nearest quarter. */
export function turnsText(value: number): string {
  const quarters = Math.round(Math.abs(value) * 4)
  const whole = Math.floor(quarters / 4)
  const part = ['', '¼', '½', '¾'][quarters % 4] as string
  return whole === 0 && part !== '' ? part : `${whole}${part}`
}

/** The number of a figure, without its unit; undefined when unknown. */
export function numberText(figure: Figure, style: NumberStyle = {}): string | undefined {
  if (figure.state === 'unknown') return undefined
  const { value, pm, unit } = figure
  const sign = signOf(value, style.signed === true)
  if (unit === 'turn') return turnsText(value)
  if (unit === 'mm' && style.display === 'inch') return sign + inches(value)
  if (unit === 'ratio' && pm < 0.01) return sign + grouped(Math.abs(value).toFixed(2))
  const d =
    unit === 'kg' || unit === 'deg' || unit === 'mm/turn'
      ? Number.isInteger(value)
        ? 0
        : unit === 'mm/turn'
          ? 2
          : 1
      : decimals(value, pm)
  const digits = Math.abs(value).toFixed(d)
  return (Number(digits) === 0 ? '' : sign) + grouped(digits)
}

/** A figure in words: number, unit, precision if asked, and "assumed" when it rests on a default nobody confirmed. */
export function figureText(figure: Figure, style: NumberStyle = {}): string {
  const number = numberText(figure, style)
  if (number === undefined || figure.state === 'unknown') return 'not known yet'
  const inch = figure.unit === 'mm' && style.display === 'inch'
  const unit = inch ? 'in' : unitText(figure)
  const space = unit === '' || unit === '°' ? '' : ' '
  const pm =
    style.withPm === true && figure.pm > 0 ? ` ± ${grouped(String(Math.ceil(figure.pm * 10) / 10))}` : ''
  const tail = style.withUnit === false ? '' : `${space}${unit}`
  return `${number}${pm}${tail}${figure.state === 'assumed' ? ' (assumed)' : ''}`
}
