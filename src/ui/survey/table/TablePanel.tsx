import { useEffect, useId, useRef, useState } from 'react'
import type { Things } from '../../../core/form/field'
import { csvOf } from '../../../core/form/table/csv'
import { type TableRead, type TableTrouble, tableRead } from '../../../core/form/table/read-rows'
import { tableOf } from '../../../core/form/table/write-rows'
import { listAt } from '../../../core/form/things'
import { upperFirst } from '../../../core/words/upper-first'
import { useActions, useApp } from '../../app-context'
import { OpenFile } from '../../OpenFile'
import { saveText } from '../../save-file'
import { rowsOf } from './rows-of'
import { textOf } from './text-of'

interface Props {
  readonly things: Things
  /** The list, by keys and ids. */
  readonly path: string
}

/** A list out to a spreadsheet and in from one: pasted or opened, looked through, and added in one go. */
export function TablePanel({ things, path }: Props) {
  const kitchen = useApp((s) => s.kitchen)
  const actions = useActions()
  const [text, setText] = useState('')
  const [done, setDone] = useState('')
  const read = useTable(text, things, path)
  const id = useId()
  const panel = useRef<HTMLTextAreaElement>(null)
  const list = listAt(kitchen, path)

  useEffect(() => panel.current?.focus(), [])
  const add = ({ edits, ...table }: TableRead) => {
    actions.settle()
    actions.edit(edits)
    setDone(`${inAll(table, 'Added', 'changed')}. Take back takes all of it back.`)
    setText('')
    panel.current?.focus()
  }
  const save = () => saveText(`${path.replaceAll('.', '-')}.csv`, csvOf(tableOf(things, list)), 'text/csv')
  return (
    <section className="table-panel" aria-label={`${things.many}: spreadsheet`}>
      <label htmlFor={id}>
        Copy the lines in your spreadsheet and paste them here, or type them with commas between. The first
        line names the columns; any of them may be left out:
      </label>
      <p className="columns-named">{tableOf(things, []).flat().join(', ')}</p>
      <textarea
        id={id}
        ref={panel}
        rows={5}
        spellCheck={false}
        autoComplete="off"
        value={text}
        onChange={({ target }) => {
          setText(target.value)
          setDone('')
        }}
      />
      <div className="choices">
        <OpenFile label="Open a CSV file" accept=".csv,.tsv,.txt,text/csv" read={textOf} onText={setText} />
        <button type="button" className="button" onClick={save}>
          {list.length === 0 ? 'Save an empty table to fill in' : 'Save this list as CSV'}
        </button>
      </div>
      {read !== null && <Preview read={read} onAdd={() => add(read)} />}
      <p role="status">{done}</p>
    </section>
  )
}

/** What the text holds; null while nothing is pasted, or it is still being read. */
function useTable(text: string, things: Things, path: string): TableRead | null {
  const kitchen = useApp((s) => s.kitchen)
  const [rows, setRows] = useState<{ readonly of: string; readonly rows: Rows | string } | null>(null)
  useEffect(() => {
    let isWanted = text.trim() !== ''
    if (isWanted) {
      rowsOf(text, things)
        .catch(() => 'The reader of tables could not be fetched. Try again when there is a line.')
        .then((read) => isWanted && setRows({ of: text, rows: read }))
    }
    return () => {
      isWanted = false
    }
  }, [text, things])
  if (rows === null || rows.of !== text || text.trim() === '') return null
  if (typeof rows.rows === 'string') return { ...nothing, refused: rows.rows }
  return tableRead(rows.rows, things, kitchen, path)
}

type Rows = readonly (readonly string[])[]
const nothing = { added: [], changed: [], notUnderstood: [], cells: [], lines: [], edits: [] }

/** How many of what is not understood is told one by one. */
const MOST_TOLD = 20

function Preview({ read, onAdd }: { readonly read: TableRead; readonly onAdd: () => void }) {
  const { refused, added, changed, notUnderstood, cells, lines, edits } = read
  return (
    <div className="preview">
      {refused !== null && <p className="stop">{refused}</p>}
      {added.length > 0 && (
        <p>
          {added.length} to be added: <Marks marks={added} />
        </p>
      )}
      {changed.length > 0 && (
        <p>
          {changed.length} there already, to be changed: <Marks marks={changed} />
        </p>
      )}
      <Troubles title="Columns not understood, left out" troubles={notUnderstood} />
      <Troubles title="Cells that cannot be read, left open" troubles={cells} />
      <Troubles title="Lines left out" troubles={lines} />
      {edits.length > 0 && (
        <button type="button" className="button main" onClick={onAdd}>
          {inAll(read)}
        </button>
      )}
    </div>
  )
}

/** `Add 3 and change 1`. */
function inAll(
  { added, changed }: Pick<TableRead, 'added' | 'changed'>,
  add = 'Add',
  change = 'change',
): string {
  const adds = added.length === 0 ? [] : [`${add} ${added.length}`]
  const changes = changed.length === 0 ? [] : [`${change} ${changed.length}`]
  return upperFirst([...adds, ...changes].join(' and '))
}

function Marks({ marks }: { readonly marks: readonly string[] }) {
  const first = marks.slice(0, MOST_TOLD).join(', ')
  return (
    <span className="figure">
      {marks.length > MOST_TOLD ? `${first} and ${marks.length - MOST_TOLD} more` : first}
    </span>
  )
}

function Troubles({
  title,
  troubles,
}: {
  readonly title: string
  readonly troubles: readonly TableTrouble[]
}) {
  if (troubles.length === 0) return null
  return (
    <>
      <h4>
        {title}: {troubles.length}
      </h4>
      <ul>
        {troubles.slice(0, MOST_TOLD).map((trouble) => (
          <li key={`${trouble.row} ${trouble.column}`}>
            <span className="figure">{placeOf(trouble)}</span>
            {trouble.typed !== undefined && `: ${trouble.typed}`}. {trouble.why}
          </li>
        ))}
      </ul>
      {troubles.length > MOST_TOLD && <p>and {troubles.length - MOST_TOLD} more.</p>}
    </>
  )
}

/** `line 3, column B (Width)`, as a spreadsheet counts them. */
function placeOf({ row, column, head }: TableTrouble): string {
  const line = `line ${row}`
  if (column === undefined) return line
  return `${line}, column ${letterOf(column)}${head === undefined ? '' : ` (${head})`}`
}

function letterOf(column: number): string {
  const last = String.fromCharCode(65 + ((column - 1) % 26))
  const before = Math.floor((column - 1) / 26)
  return before === 0 ? last : letterOf(before) + last
}
