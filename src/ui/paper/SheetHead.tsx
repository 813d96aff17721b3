import type { Plan } from '../../core/plan/types'
import { useApp } from '../app-context'
import { dateText, surveyFacts } from '../survey-facts'
import { sheetsOf } from './sheets'
import { scaleText } from './wall/Dimensions'

interface Props {
  readonly plan: Plan
  /** Which of the sheets it heads. */
  readonly id: string
  readonly title: string
  readonly about: string
  /** 1 : this, for a drawing that can be measured off. */
  readonly scale?: number | null
}

/** The head of every sheet: what it is, from which survey, how finely read, and the stamp of the plan it belongs to. */
export function SheetHead({ plan, id, title, about, scale = null }: Props) {
  const kitchen = useApp((s) => s.kitchen)
  const { date, tape, level } = surveyFacts(kitchen)
  const sheets = sheetsOf(plan)
  const number = sheets.findIndex((s) => s.id === id) + 1
  const read = [
    tape === null ? 'precision of the tape not stated' : `taped ± ${tape} mm`,
    level === null ? 'of the level not stated' : `levelled ± ${level} mm`,
  ].join(', ')
  return (
    <header className="sheet-head">
      <div>
        <h1>{title}</h1>
        <p>
          {plan.name}
          {plan.demo ? ', invented for practice' : ''} · {about}
        </p>
      </div>
      <div className="stamp">
        <p>
          {date === null ? 'Date of survey not stated' : `Survey of ${dateText(date)}`} · {read}
        </p>
        <p>
          Holds until the room, a unit or a wish changes ·{' '}
          <span className="figure">{plan.stamp.hash.slice(0, 8)}</span>
          {` · rules ${plan.stamp.rules}, ${plan.stamp.region ?? 'country not chosen'}`}
        </p>
      </div>
      <div className="fill-in">
        <p className="plain-text">
          Sheet {number} of {sheets.length}
          {scale !== null && ` · ${scaleText(scale)} when the scale bar measures what is lettered under it`}
        </p>
        <p>Set out by</p>
        <p>Checked by</p>
        <p>Date</p>
      </div>
    </header>
  )
}
