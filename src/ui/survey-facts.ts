/** What a sheet's head says of the survey: taken from the kitchen file as typed. */
export interface SurveyFacts {
  readonly date: string | null
  readonly by: string | null
  readonly tape: number | null
  readonly level: number | null
}

type Loose = Readonly<Record<string, unknown>> | undefined

const asObject = (value: unknown): Loose =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : undefined

const text = (value: unknown): string | null => (typeof value === 'string' && value !== '' ? value : null)
const number = (value: unknown): number | null =>
  typeof value === 'number'
    ? value
    : typeof asObject(value)?.['value'] === 'number'
      ? (asObject(value)?.['value'] as number)
      : null

/** The survey's own head: when, by whom, how finely; null where the file does not say. */
export function surveyFacts(kitchen: unknown): SurveyFacts {
  const survey = asObject(asObject(kitchen)?.['survey'])
  return {
    date: text(survey?.['date']),
    by: text(survey?.['by']),
    tape: number(survey?.['tapePrecision']),
    level: number(survey?.['levelPrecision']),
  }
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** 2026-10-12 → 12 October 2026; anything else as it was typed. */
export function dateText(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? []
  const name = MONTHS[Number(month) - 1]
  return year === undefined || name === undefined ? date : `${Number(day)} ${name} ${year}`
}
