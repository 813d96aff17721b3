import { useId, useState } from 'react'
import type { Things } from '../../../core/form/field'
import { MARK, renamed } from '../../../core/form/rename'
import { useActions, useNow } from '../../app-context'

interface Props {
  readonly things: Things
  readonly path: string
  readonly mark: string
  readonly onMark: (to: string) => void
}

/** The mark of a listed thing, as it is pencilled on the wall and on the sketch; changed when the field is left. */
export function MarkInput({ things, path, mark, onMark }: Props) {
  const id = useId()
  const actions = useActions()
  const now = useNow()
  const [draft, setDraft] = useState<string | null>(null)
  const [refused, setRefused] = useState<string | null>(null)
  const leave = () => {
    const to = (draft ?? mark).trim().toLowerCase().replace(/\s+/g, '-')
    setDraft(null)
    if (to === mark || to === '') return setRefused(null)
    const next = renamed(now().kitchen, path, mark, to)
    if (next === undefined) {
      return setRefused(
        MARK.test(to)
          ? `${to} is the mark of another.`
          : 'Small letters, figures and hyphens, such as socket-2.',
      )
    }
    setRefused(null)
    onMark(to)
    actions.replace(next)
  }
  return (
    <span className="mark-of">
      <label htmlFor={id}>Mark</label>
      <input
        id={id}
        data-mark-of={`${path}.${mark}`}
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        maxLength={40}
        value={draft ?? mark}
        aria-label={`Mark of this ${things.one}`}
        aria-invalid={refused === null ? undefined : true}
        aria-describedby={refused === null ? undefined : `${id}-wrong`}
        onChange={({ target }) => setDraft(target.value)}
        onBlur={leave}
      />
      {refused !== null && (
        <span className="wrong" id={`${id}-wrong`}>
          {refused}
        </span>
      )}
    </span>
  )
}
