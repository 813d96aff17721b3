import { Fragment, lazy, type ReactNode, Suspense } from 'react'
import type { Figure } from '../../core/figure'
import { PAGES } from '../../core/form/pages'
import type { Plan } from '../../core/plan/types'
import { figureText } from '../../core/words/format'
import { useActions, useApp } from '../app-context'
import { FindingList } from '../findings/FindingList'
import { ProblemList } from '../ProblemList'
import { DeliveryPage } from './delivery/DeliveryPage'
import { Files } from './Files'
import { FirstAnswers } from './first/FirstAnswers'
import { PageForm } from './form/PageForm'
import { Guide } from './Guide'
import { GiveOn } from './give/GiveOn'
import { fullName } from './heights/names'
import { MeasureNext } from './MeasureNext'
import { NoOrder } from './NoOrder'
import { RoomPlan } from './RoomPlan'
import { SaveReminder } from './SaveReminder'
import { useBegin } from './use-begin'
import { YourKitchens } from './YourKitchens'

/** Fetched by who prints it. */
const SheetPage = lazy(() => import('./sheet/SheetPage').then((m) => ({ default: m.SheetPage })))

export interface DemoKitchen {
  readonly name: string
  readonly about: string
  readonly text: () => Promise<string>
}

interface Choice {
  readonly id: string
  readonly title: string
  readonly shown: ReactNode
  /** Shown while no kitchen is open too. */
  readonly isAlways?: boolean
}

/** Where everything found stands, and what is open when nothing else is. */
const FOUND = 'found'

const CHOICES: readonly Choice[] = [
  { id: 'first', title: 'First answers', shown: <FirstAnswers /> },
  { id: FOUND, title: 'What was found', shown: null },
  ...PAGES.map((page) => ({ id: page.id, title: page.title, shown: <PageForm page={page} /> })),
  { id: 'delivery', title: 'Delivery check', shown: <DeliveryPage /> },
  { id: 'sheet', title: 'Sheet to print', shown: <SheetPage />, isAlways: true },
]

/** What was measured and what arrived: what is found, the pages to type it into, what to measure next, and the files. */
export function SurveyPlace({ demos }: { readonly demos: readonly DemoKitchen[] }) {
  const isOpen = useApp((s) => s.kitchen !== null)
  const name = useApp((s) => s.page)
  const choice = CHOICES.find(({ id, isAlways }) => id === name && (isOpen || isAlways === true))
  const open = choice?.id ?? FOUND
  const plan = useApp((s) => s.plan)
  const noPlan = useApp((s) => s.noPlan)
  const hasAnswer = noPlan !== null || (plan !== null && plan.walls.length > 0)
  return (
    <div className="page survey">
      <header className="survey-head">
        <h1>Survey and delivery</h1>
        {hasAnswer && open === FOUND && (
          <button type="button" className="link" onClick={toFiles}>
            Open another kitchen
          </button>
        )}
        {!isOpen && open !== 'sheet' && (
          <a className="link" href="#survey/sheet">
            Print a blank survey sheet
          </a>
        )}
        {isOpen && <TakeBack />}
      </header>
      <SaveReminder />
      {isOpen && <PageChoice open={open} />}
      <Suspense key={open} fallback={null}>
        {open === FOUND ? <WhatWasFound demos={demos} /> : choice?.shown}
      </Suspense>
    </div>
  )
}

const addressOf = (id: string): string => (id === FOUND ? '#survey' : `#survey/${id}`)

/** The pages, one of them open: all in a row at a desk, to be chosen from in the hand. */
function PageChoice({ open }: { readonly open: string }) {
  return (
    <nav aria-label="Pages of the survey">
      <ul className="marks pages">
        {CHOICES.map(({ id, title }) => (
          <li key={id}>
            <a className="button" href={addressOf(id)} aria-current={id === open ? 'page' : undefined}>
              {title}
            </a>
          </li>
        ))}
      </ul>
      <label className="pages-in-hand">
        Page
        <select
          value={open}
          onChange={({ target }) => {
            window.location.hash = addressOf(target.value)
          }}
        >
          {CHOICES.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
    </nav>
  )
}

/** Takes the last edit back, or makes it again. */
function TakeBack() {
  const actions = useActions()
  const canUndo = useApp((s) => s.past.length > 0)
  const canRedo = useApp((s) => s.future.length > 0)
  return (
    <div className="take-back">
      <button type="button" className="button" aria-disabled={!canUndo} onClick={actions.undo}>
        Take back
      </button>
      <button type="button" className="button" aria-disabled={!canRedo} onClick={actions.redo}>
        Do again
      </button>
    </div>
  )
}

function WhatWasFound({ demos }: { readonly demos: readonly DemoKitchen[] }) {
  const plan = useApp((s) => s.plan)
  const noPlan = useApp((s) => s.noPlan)
  const problems = useApp((s) => s.problems)
  const working = useApp((s) => s.working)
  const isBehind = useApp((s) => s.isBehind)
  const isEmpty = plan === null ? !working && noPlan === null : plan.walls.length === 0
  const hasAnswer = noPlan !== null || (plan !== null && !isEmpty)
  const files = (
    <>
      <YourKitchens />
      <Files demos={demos} />
      <GiveOn />
    </>
  )
  return (
    <>
      {plan?.demo === true && <Invented name={plan.name} />}
      <ProblemList title={refusal(plan, isBehind)} problems={problems} isFile={!isBehind} />
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
    </>
  )
}

/** What is open is not the reader's own kitchen: said first, with the way to their own. */
function Invented({ name }: { readonly name: string }) {
  const begin = useBegin()
  return (
    <p className="sheet invented">
      <span>{name} is an invented kitchen, to practise on. What stands below was found in it.</span>
      <button type="button" className="button main" onClick={begin}>
        Put in your own kitchen
      </button>
    </p>
  )
}

function refusal(plan: Plan | null, isBehind: boolean): string {
  if (plan === null) return isBehind ? 'Something does not go together yet.' : 'That file was refused.'
  return isBehind
    ? 'Something does not go together yet. The plan is the one from before it.'
    : `That file was refused. ${plan.name} is still open.`
}

/** Down to the files, and into their heading, for who does not see them. */
function toFiles() {
  const heading = document.getElementById('kitchen-files')
  heading?.scrollIntoView({ block: 'start' })
  heading?.focus({ preventScroll: true })
}

const heightSaid = (height: Figure): string =>
  height.state === 'unknown' ? 'not known yet' : figureText(height, { signed: true })

function Found({ plan }: { readonly plan: Plan }) {
  return (
    <section className="sheet">
      <h2>Found in {plan.name}</h2>
      {plan.heights.values.length > 0 && (
        <>
          <h3>Heights, from the line</h3>
          <dl className="heights-said">
            {plan.heights.values.map(({ of, height }) => (
              <Fragment key={of}>
                <dt>{fullName(of)}</dt>
                <dd className="figure">{heightSaid(height)}</dd>
              </Fragment>
            ))}
          </dl>
          <p>
            <a href="#survey/wishes">All heights on one scale</a>, to see what sets each and to move it.
          </p>
        </>
      )}
      {plan.findings.length === 0 ? (
        <p>Nothing found wrong with what has been measured so far. That is not a promise.</p>
      ) : (
        <FindingList findings={plan.findings} plan={plan} folds />
      )}
    </section>
  )
}
