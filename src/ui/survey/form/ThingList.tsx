import { Fragment, lazy, Suspense, useEffect, useRef, useState } from 'react'
import { copiedDown } from '../../../core/form/copied-down'
import type { Things } from '../../../core/form/field'
import { feetStandingIn } from '../../../core/form/stands-in'
import { hasTable } from '../../../core/form/table/write-rows'
import {
  calledIn,
  furtherThing,
  listAt,
  neededFirst,
  putBack,
  type TakenOut,
  takenOut,
} from '../../../core/form/things'
import { useActions, useApp, useNow } from '../../app-context'
import { FieldNumber } from './FieldNumber'
import { Fields } from './FieldOf'
import { MarkInput } from './MarkInput'
import { useWords } from './use-fact'

interface Props {
  readonly things: Things
  /** The list, by keys and ids. */
  readonly path: string
}

interface ListProps extends Props {
  readonly number: string | undefined
}

/** Fetched by who has a spreadsheet. */
const TablePanel = lazy(() => import('../table/TablePanel').then((m) => ({ default: m.TablePanel })))

/** Lists of the room, of a wall and of the delivery stand in spreadsheets; the few feet and doors of one unit do not. */
const mayBeTable = (things: Things, path: string): boolean =>
  hasTable(things) && (path.split('.').length <= 2 || path.startsWith('walls.'))

/** More fields than this and a thing is shown by itself, chosen by its mark; fewer and all stand one under the other. */
const MOST_AT_ONCE = 9

/** Few fields, and none that need room: a line on the pad. */
function isShort({ fields }: Things): boolean {
  return (
    fields.length <= 5 && fields.every(({ kind }) => kind !== 'list' && kind !== 'refs' && kind !== 'order')
  )
}

/** The things of a list: all of them, or the one that is chosen; and a further one. */
export function ThingList({ things, path, number }: ListProps) {
  const now = useNow()
  const actions = useActions()
  // Nothing of what is typed into its things, lest the whole of it were drawn anew at every letter.
  const marks = useWords(({ kitchen }) => listAt(kitchen, path).map((thing) => String(thing['id'])))
  const chosen = useApp((s) => s.chosen[path] ?? '')
  const setChosen = (mark: string) => actions.choose(path, mark)
  const [fresh, setFresh] = useState<string | null>(null)
  const [isTableOpen, setTableOpen] = useState(false)
  const isOneAtATime = things.fields.length > MOST_AT_ONCE
  const shown = marks.includes(chosen) ? chosen : (marks[0] ?? null)
  const needed = useApp(({ kitchen }) => neededFirst(things, kitchen))
  const feet = useApp(({ kitchen }) => feetStandingIn(kitchen, path))

  const add = () => {
    const thing = furtherThing(things, now().kitchen, path)
    actions.edit([{ add: path, item: thing }])
    setChosen(thing.id)
    setFresh(thing.id)
  }
  const section = useRef<HTMLElement>(null)
  const [out, setOut] = useState<TakenOut | null>(null)
  // The form goes on with another list where what it is in was taken out; and what was taken back is there again.
  const gone = out !== null && out.list === path && !marks.includes(out.thing.id) ? out : null
  const goneCalled = gone === null ? '' : calledIn(things, gone.thing.id)
  const remove = (mark: string) => {
    const at = marks.indexOf(mark)
    actions.settle()
    setOut(takenOut(now().kitchen, path, mark) ?? null)
    actions.edit([{ remove: `${path}.${mark}` }])
    setChosen(marks[at + 1] ?? marks[at - 1] ?? '')
  }
  const back = (what: TakenOut) => {
    actions.edit(putBack(now().kitchen, what))
    setChosen(what.thing.id)
    setOut(null)
    setReturned(what.thing.id)
  }
  const [returned, setReturned] = useState<string | null>(null)
  // The keyboard goes on with the thing that stands there now; what was taken out is said in sight of it.
  useEffect(() => {
    const here = section.current
    if (out === null || here === null) return
    here.querySelector('.gone')?.scrollIntoView?.({ block: 'nearest' })
    const forms = formsIn(here)
    const next = forms[isOneAtATime ? 0 : Math.min(out.at, forms.length)]
    const add = [...here.children].find((child) => child.hasAttribute('data-add'))
    const to = next ?? add
    if (to instanceof HTMLElement) to.focus({ preventScroll: next !== undefined })
  }, [out, isOneAtATime])
  useEffect(() => {
    const form =
      returned === null ? undefined : formsIn(section.current).find((f) => f.dataset['thing'] === returned)
    form?.focus()
  }, [returned])
  const open = isOneAtATime ? marks.filter((mark) => mark === shown) : marks
  const goneLine = gone !== null && (
    <p className="gone">
      <span aria-hidden="true">{goneCalled} taken out.</span>
      <button type="button" className="button" data-put-back={path} onClick={() => back(gone)}>
        Put it back<span className="visually-hidden">: {goneCalled}</span>
      </button>
    </p>
  )
  return (
    <section className="things" data-list={path} ref={section}>
      <p className="visually-hidden" role="status">
        {gone !== null && `${goneCalled} taken out.`}
      </p>
      <h3>
        <FieldNumber number={number} />
        {things.many}
      </h3>
      {things.how !== undefined && <p className="quiet">{things.how}</p>}
      {feet !== undefined && <p className="quiet assumed">{feet}</p>}
      {isOneAtATime && marks.length > 0 && (
        <ul className="marks" aria-label={things.many}>
          {marks.map((mark) => (
            <li key={mark}>
              <button
                type="button"
                className="button"
                data-mark={mark}
                aria-pressed={mark === shown}
                onClick={() => setChosen(mark)}
              >
                {mark}
              </button>
            </li>
          ))}
        </ul>
      )}
      {open.map((mark, i) => (
        // By its number: called by another mark it stays the same form, and typing goes on in it.
        <Fragment key={marks.indexOf(mark)}>
          {(isOneAtATime || i === gone?.at) && goneLine}
          <ThingForm
            things={things}
            path={path}
            mark={mark}
            isFresh={mark === fresh}
            onMark={(to) => setChosen(to)}
            onRemove={() => remove(mark)}
          />
        </Fragment>
      ))}
      {(isOneAtATime ? open.length === 0 : open.length <= (gone?.at ?? 0)) && goneLine}
      <button
        type="button"
        className="button add"
        data-add={path}
        aria-disabled={needed !== undefined}
        onClick={needed === undefined ? add : undefined}
      >
        {marks.length === 0 ? `Add a ${things.one}` : `Add a further ${things.one}`}
      </button>
      {mayBeTable(things, path) && needed === undefined && (
        <button
          type="button"
          className="link to-table"
          aria-expanded={isTableOpen}
          aria-label={`Spreadsheet: ${things.many}`}
          onClick={() => setTableOpen(!isTableOpen)}
        >
          Spreadsheet
        </button>
      )}
      {isTableOpen && (
        <Suspense fallback={null}>
          <TablePanel things={things} path={path} />
        </Suspense>
      )}
      {needed !== undefined && <p className="quiet">First the {needed} have to be listed.</p>}
    </section>
  )
}

const formsIn = (section: HTMLElement | null): readonly HTMLElement[] =>
  [...(section?.children ?? [])].filter((child): child is HTMLElement => child.tagName === 'FIELDSET')

interface FormProps extends Props {
  readonly mark: string
  /** Just added: its mark is where typing goes on. */
  readonly isFresh: boolean
  readonly onMark: (to: string) => void
  readonly onRemove: () => void
}

function ThingForm({ things, path, mark, isFresh, onMark, onRemove }: FormProps) {
  const form = useRef<HTMLFieldSetElement>(null)
  useEffect(() => {
    if (!isFresh) return
    const mark = form.current?.querySelector<HTMLInputElement>('[data-mark-of]')
    mark?.focus()
    mark?.select()
  }, [isFresh])
  return (
    <fieldset className={isShort(things) ? 'thing row' : 'thing'} ref={form} data-thing={mark} tabIndex={-1}>
      <legend>{calledIn(things, mark)}</legend>
      <div className="thing-head">
        <MarkInput things={things} path={path} mark={mark} onMark={onMark} />
        {!isShort(things) && <CopyDown things={things} path={path} mark={mark} />}
      </div>
      <Fields fields={things.fields} under={`${path}.${mark}`} />
      <button type="button" className="link take-out" data-remove={`${path}.${mark}`} onClick={onRemove}>
        Take out<span className="visually-hidden">: {calledIn(things, mark)}</span>
      </button>
    </fieldset>
  )
}

/** Takes over from the thing before it whatever is still open here and is mostly the same. */
function CopyDown({ things, path, mark }: Props & { readonly mark: string }) {
  const now = useNow()
  const actions = useActions()
  const from = useApp(({ kitchen }) => copiedDown(things, kitchen, path, mark)?.from)
  if (from === undefined) return null
  return (
    <button
      type="button"
      className="link copy-down"
      onClick={() => {
        actions.settle()
        actions.edit(copiedDown(things, now().kitchen, path, mark)?.edits ?? [])
      }}
    >
      Fill what is open as at {from}
    </button>
  )
}
