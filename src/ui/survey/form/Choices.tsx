import { useId, useMemo } from 'react'
import type { Option } from '../../../core/form/field'
import { markGoneAlong, thingsAt } from '../../../core/form/rename'
import { droppedBy, listAt, thingAt } from '../../../core/form/things'
import type { Edit } from '../../../core/plan/types'
import { useActions, useNow } from '../../app-context'
import { useFact, useWords } from './use-fact'

interface Props {
  readonly id: string
  readonly path: string
  readonly describedBy?: string | undefined
  readonly label?: string
}

const NOT_KNOWN: Option = ['', 'not known yet']

/** One of several words, or not known yet. */
export function ChoiceInput({
  options,
  always = false,
  ...props
}: Props & { readonly options: readonly Option[]; readonly always?: boolean }) {
  const { value } = useFact(props.path)
  const now = useNow()
  const actions = useActions()
  const all = always ? options : [NOT_KNOWN, ...options]
  const choose = (to: string) => {
    const { kitchen } = now()
    const edits = chosen(kitchen, props.path, to)
    const along = markGoneAlong(kitchen, props.path, edits)
    if (along === undefined) return actions.edit(edits)
    actions.choose(along.list, along.mark)
    actions.replace(along.file)
  }
  return (
    <Select
      {...props}
      options={all}
      value={typeof value === 'string' ? value : (all[0]?.[0] ?? '')}
      onChoose={choose}
    />
  )
}

/** A choice, and what goes with it: what is then asked no more, and the side of the wall a place was measured on. */
function chosen(kitchen: unknown, path: string, to: string): readonly Edit[] {
  const edit: Edit = { set: path, to: to === '' ? undefined : to }
  const [, thing = '', list = '', key = ''] = /^((.+)\.[^.]+)\.([^.]+)$/.exec(path) ?? []
  const things = thingsAt(list)
  if (things !== undefined) {
    const dropped = droppedBy(things.fields, thingAt(kitchen, thing), key, to)
    if (dropped.length > 0) {
      return [edit, ...dropped.map((top): Edit => ({ set: `${thing}.${top}`, to: undefined }))]
    }
  }
  const outlet = /^(walls\.[^.]+\.accessories\.[^.]+)\.face$/.exec(path)?.[1]
  if (outlet === undefined) return [edit]
  // This side is what holds where nothing is said.
  const face = to === 'room' ? undefined : to
  return [
    { set: path, to: face },
    { set: `${outlet}.along.face`, to: face },
  ]
}

export function YesNoInput(props: Props) {
  const { value, set } = useFact(props.path)
  return (
    <Select
      {...props}
      options={[NOT_KNOWN, ['yes', 'yes'], ['no', 'no']]}
      value={value === true ? 'yes' : value === false ? 'no' : ''}
      onChoose={(to) => set(to === '' ? null : to === 'yes')}
    />
  )
}

/** Points at one listed thing. */
export function RefInput({ to, ...props }: Props & { readonly to: readonly string[] }) {
  const { value, set } = useFact(props.path)
  const options = useThings(to)
  return (
    <Select
      {...props}
      options={[['', 'none named'], ...options]}
      value={typeof value === 'string' ? value : ''}
      onChoose={(chosen) => set(chosen === '' ? null : chosen)}
    />
  )
}

/** Points at several listed things. */
export function RefsInput({ to, ...props }: Props & { readonly to: readonly string[] }) {
  return <Ticks {...props} options={useThings(to)} />
}

/** Several of some words, or of some things: each with a tick. */
export function Ticks({ id, path, options, label }: Props & { readonly options: readonly Option[] }) {
  const { value, set } = useFact(path)
  const chosen = Array.isArray(value) ? (value as readonly string[]) : []
  const group = useId()
  if (options.length === 0) return <span className="quiet">none listed yet</span>
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would put a second label where the field's own one stands
    <span className="ticks" role="group" id={id} aria-label={label}>
      {options.map(([word, words]) => (
        <label key={word} htmlFor={`${group}-${word}`}>
          <input
            id={`${group}-${word}`}
            type="checkbox"
            data-fact={path}
            data-word={word}
            checked={chosen.includes(word)}
            onChange={({ target }) =>
              set(target.checked ? [...chosen, word] : chosen.filter((one) => one !== word))
            }
          />
          {words}
        </label>
      ))}
    </span>
  )
}

export function Select({
  id,
  path,
  part,
  options,
  value,
  describedBy,
  label,
  onChoose,
}: Omit<Props, 'path'> & {
  /** The fact it is; none where what is chosen is not kept by itself. */
  readonly path?: string
  readonly part?: string
  readonly options: readonly Option[]
  readonly value: string
  readonly onChoose: (value: string) => void
}) {
  return (
    <select
      id={id}
      data-fact={path}
      data-part={part}
      aria-label={label}
      aria-describedby={describedBy}
      data-open={value === '' ? '' : undefined}
      value={value}
      onChange={({ target }) => onChoose(target.value)}
    >
      {options.map(([word, words]) => (
        <option key={word} value={word}>
          {words}
        </option>
      ))}
    </select>
  )
}

/** The things of some lists, by their marks and what the user calls them. */
export function useThings(lists: readonly string[]): readonly Option[] {
  const words = useWords(({ kitchen }) =>
    lists.flatMap((name) =>
      listAt(kitchen, name).flatMap((thing) => {
        const [mark, called] = [String(thing['id']), thing['name']]
        return [mark, typeof called === 'string' && called !== '' ? `${mark} · ${called}` : mark]
      }),
    ),
  )
  return useMemo(
    () => words.flatMap((mark, i): readonly Option[] => (i % 2 === 0 ? [[mark, words[i + 1] ?? mark]] : [])),
    [words],
  )
}
