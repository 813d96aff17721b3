import { type ChangeEvent, useId } from 'react'

interface Props {
  readonly label: string
  readonly onText: (text: string) => void
}

/** Chooses one file and hands on its text; the same file can be chosen again. */
export function OpenFile({ label, onText }: Props) {
  const id = useId()
  const onChange = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0]
    if (file === undefined) return
    const text = await file.text()
    target.value = ''
    onText(text)
  }
  return (
    <div className="open-file">
      <input
        id={id}
        className="visually-hidden"
        type="file"
        accept=".json,application/json"
        onChange={onChange}
      />
      <label htmlFor={id} className="button">
        {label}
      </label>
    </div>
  )
}
