import type { Things } from '../field'
import { thingAt } from '../things'
import { cellWritten } from './cells'
import { type Column, columnsOf } from './columns'

/** A list of the survey as a table to be saved. */

type Thing = Readonly<Record<string, unknown>>

/** Whether such things can stand in a table: each is one line of facts. Of units, what lies within them is left out. */
export const hasTable = (things: Things): boolean =>
  things.mark === 'unit' || things.fields.every(({ kind }) => kind !== 'list')

/** Columns that are seldom needed stand in a table only where something is to be written in them. */
const SELDOM = /\.(?:from|face|line)$/

/** The table of a list, its head first: what `tableRead` makes the same things of again. */
export function tableOf(things: Things, list: readonly Thing[]): readonly (readonly string[])[] {
  const columns = columnsOf(things).filter(
    (column) =>
      (column.field.more !== true && !SELDOM.test(column.key)) ||
      list.some((thing) => written(column, thing) !== ''),
  )
  return [columns.map(headOf), ...list.map((thing) => columns.map((column) => written(column, thing)))]
}

const written = (column: Column, thing: Thing): string => cellWritten(column, thingAt(thing, column.key))

function headOf({ label, sort }: Column): string {
  if (sort.kind === 'length') return `${label} (mm)`
  return sort.kind === 'number' && sort.unit !== '' ? `${label} (${sort.unit})` : label
}
