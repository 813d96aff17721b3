import type { Plan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { FindingList } from '../findings/FindingList'
import { OpenFile } from '../OpenFile'
import { ProblemList } from '../ProblemList'
import { fileStem, saveFile } from '../save-file'
import { emptySurvey } from './empty-survey'
import { Guide } from './Guide'
import { MeasureNext } from './MeasureNext'
import { NoOrder } from './NoOrder'
import { RoomPlan } from './RoomPlan'

export interface DemoKitchen {
  readonly name: string
  readonly about: string
  readonly text: () => Promise<string>
}

/** What was measured and what arrived: what is found, what to measure next, and the files. */
export function SurveyPlace({ demos }: { readonly demos: readonly DemoKitchen[] }) {
  const plan = useApp((s) => s.plan)
  const noPlan = useApp((s) => s.noPlan)
  const problems = useApp((s) => s.problems)
  const working = useApp((s) => s.working)
  const isEmpty = plan === null ? !working && noPlan === null : plan.walls.length === 0
  const hasAnswer = noPlan !== null || (plan !== null && !isEmpty)
  const files = <Files demos={demos} />
  return (
    <div className="page survey">
      <header className="survey-head">
        <h1>Survey and delivery</h1>
        {hasAnswer && (
          <button type="button" className="link" onClick={toFiles}>
            Open another kitchen
          </button>
        )}
      </header>
      <ProblemList
        title={
          plan === null ? 'That file was refused.' : `That file was refused. ${plan.name} is still open.`
        }
        problems={problems}
      />
      {!hasAnswer && files}
      {noPlan !== null && <NoOrder noPlan={noPlan} />}
      {plan !== null && !isEmpty && (
        <div className="two">
          <Found plan={plan} />
          <div className="beside">
            <RoomPlan plan={plan} />
            <MeasureNext plan={plan} />
            {files}
          </div>
        </div>
      )}
      {plan !== null && isEmpty && <MeasureNext plan={plan} />}
      {isEmpty && <Guide />}
      {noPlan !== null && files}
    </div>
  )
}

const FILES = 'kitchen-files'

/** Down to the files, and into their heading, for who does not see them. */
function toFiles() {
  const heading = document.getElementById(FILES)
  heading?.scrollIntoView({ block: 'start' })
  heading?.focus({ preventScroll: true })
}

function Files({ demos }: { readonly demos: readonly DemoKitchen[] }) {
  const actions = useActions()
  const kitchen = useApp((s) => s.kitchen)
  const plan = useApp((s) => s.plan)
  return (
    <section className="sheet files">
      <h2 id={FILES} tabIndex={-1}>
        Kitchen files
      </h2>
      <div className="choices">
        <OpenFile label="Open a kitchen file" onText={(text) => actions.open(text)} />
        {plan !== null && (
          <button
            type="button"
            className="button"
            onClick={() => saveFile(`${fileStem(plan.name)}.dryrun.json`, kitchen)}
          >
            Save this kitchen file
          </button>
        )}
        <button type="button" className="button" onClick={() => actions.open(emptySurvey)}>
          Start an empty survey
        </button>
      </div>
      <p className="open-note">
        Kitchen files end in .dryrun.json. What you open stays on this device. Or open one that was invented
        for practice:
      </p>
      <ul className="demos">
        {demos.map((demo) => (
          <li key={demo.name}>
            <button type="button" className="link" onClick={async () => actions.open(await demo.text())}>
              {demo.name}
            </button>
            <span className="quiet">{demo.about}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}

function Found({ plan }: { readonly plan: Plan }) {
  return (
    <section className="sheet">
      <h2>Found in {plan.name}</h2>
      {plan.findings.length === 0 ? (
        <p>Nothing found wrong with what has been measured so far. That is not a promise.</p>
      ) : (
        <FindingList findings={plan.findings} plan={plan} folds />
      )}
    </section>
  )
}
