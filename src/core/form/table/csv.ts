/** What a spreadsheet would work out as a formula instead of showing it. */
const FORMULA = /^'*[=+\-@\t\r]/
const FIGURE = /^-?\d+(?:\.\d+)?$/

/**
 * A table as CSV (RFC 4180): cells in quotes where they need it, lines ended by CR LF. The mark at its beginning tells
 * spreadsheets that its letters are UTF-8. Text that a spreadsheet would take for a formula has an apostrophe put before
 * it; `fromCsv` takes it away again.
 */
export function csvOf(rows: readonly (readonly string[])[]): string {
  const lines = rows.map((row) => row.map((cell) => quoted(harmless(cell))).join(','))
  return `\ufeff${lines.map((line) => `${line}\r\n`).join('')}`
}

const harmless = (cell: string): string => (FORMULA.test(cell) && !FIGURE.test(cell) ? `'${cell}` : cell)

const quoted = (cell: string): string =>
  /[",;\t\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell

/** A cell as it was before it was made harmless. */
export const fromCsv = (cell: string): string => (/^'+[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell)
