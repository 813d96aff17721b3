import type { Things } from '../../../core/form/field'
import { columnsNamed } from '../../../core/form/table/read-rows'

/** Longer than any list of the survey is as a table. */
const LONGEST_TABLE = 1_000_000

const BETWEEN_CELLS = [',', ';', '\t'] as const

/**
 * The cells of a table that was pasted or opened as text. What stands between its cells is told by its head: the sign by
 * which most of its columns have names that are asked.
 */
export async function rowsOf(text: string, things: Things): Promise<readonly (readonly string[])[] | string> {
  if (text.length > LONGEST_TABLE) return 'It is too long: only the lines of this list are wanted.'
  // Fetched when a table is read, which most never do.
  const { default: Papa } = await import('papaparse')
  const plain = text.replace(/^\ufeff/, '').replace(/^(?:[ \t;,]*\r?\n)+/, '')
  const parsed = (delimiter: string, preview: number) =>
    Papa.parse<string[]>(plain, { delimiter, preview, skipEmptyLines: false }).data
  const found = BETWEEN_CELLS.map((delimiter) => {
    const head = parsed(delimiter, 1)[0] ?? []
    return { delimiter, named: columnsNamed(head, things), columns: head.length }
  })
  const [best] = found.sort((a, b) => b.named - a.named || b.columns - a.columns)
  return parsed(best?.delimiter ?? ',', 0)
}
