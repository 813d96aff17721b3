import { type ReactNode, useId, useState } from 'react'

interface Props {
  readonly label: string
  /** Said small under the label; may hold a control of its own. */
  readonly note?: ReactNode
  readonly value: number
  readonly step: number
  readonly min: number
  readonly max: number
  readonly onChange: (value: number) => void
}

/** A figure set with thumbs: less, the figure itself, more. */
export function Stepper({ label, note, value, step, min, max, onChange }: Props) {
  const id = useId()
  const [typed, setTyped] = useState<string | null>(null)
  const set = (v: number) => {
    setTyped(null)
    onChange(Math.min(max, Math.max(min, Math.round(v * 100) / 100)))
  }
  return (
    <div className="stepper">
      <div>
        <label htmlFor={id}>{label}</label>
        {note !== undefined && <small>{note}</small>}
      </div>
      <button
        type="button"
        className="button"
        aria-label={`Less: ${label}`}
        onClick={() => set(value - step)}
      >
        −
      </button>
      <input
        id={id}
        inputMode="decimal"
        value={typed ?? `${value}`}
        onChange={(e) => {
          setTyped(e.target.value)
          const number = readNumber(e.target.value)
          if (number !== null && number >= min && number <= max) onChange(number)
        }}
        onBlur={() => setTyped(null)}
      />
      <button
        type="button"
        className="button"
        aria-label={`More: ${label}`}
        onClick={() => set(value + step)}
      >
        +
      </button>
    </div>
  )
}

/** A number as people type it: comma or point, a real minus or a hyphen; null when it is none. */
export function readNumber(text: string): number | null {
  const tidy = text.trim().replace(',', '.').replace('−', '-').replace(/\s/g, '')
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(tidy) ? Number(tidy) : null
}
