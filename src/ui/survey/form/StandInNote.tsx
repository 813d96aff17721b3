import { type StandsIn, standsInWords } from '../../../core/form/stands-in'
import type { Display } from '../../../core/words/format'

interface Props {
  readonly id: string
  readonly standIn: StandsIn
  readonly unit: Display
  /** Somebody has looked, and it is so. */
  readonly onSaid: () => void
}

/** What is taken for an empty field and why, and the way to say that it is so: until then nothing is entered. */
export function StandInNote({ id, standIn, unit, onSaid }: Props) {
  return (
    <span className="assumed" id={id}>
      assumed {standsInWords(standIn, unit)}, <span className="stands-on">{standIn.why}</span>
      <span className="short">common practice</span>. Yours?
      <button type="button" className="link" onClick={onSaid}>
        That is so
      </button>
    </span>
  )
}
