import { type ChangeEvent, useId } from 'react'
import { LONGEST_FILE } from '../core/kitchen/read-json'

interface Props {
  readonly label: string
  readonly onText: (text: string) => void
  /** Which files are offered to be chosen. */
  readonly accept?: string
  /** How its text is told from its bytes. */
  readonly read?: (file: File) => Promise<string>
}

/** No more of a file than can be told to be too long. */
const asUtf8 = (file: File): Promise<string> => file.slice(0, LONGEST_FILE * 4).text()

/** Chooses one file and hands on its text; the same file can be chosen again. */
export function OpenFile({ label, onText, accept = '.json,application/json', read = asUtf8 }: Props) {
  const id = useId()
  const onChange = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0]
    if (file === undefined) return
    const text = await read(file)
    target.value = ''
    onText(text)
  }
  return (
    <div className="open-file">
      <input id={id} className="visually-hidden" type="file" accept={accept} onChange={onChange} />
      <label htmlFor={id} className="button">
        {label}
      </label>
    </div>
  )
}
