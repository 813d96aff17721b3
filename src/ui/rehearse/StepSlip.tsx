import {
  type ComponentProps,
  lazy,
  type ReactNode,
  type RefObject,
  Suspense,
  useEffect,
  useRef,
  useState,
} from 'react'
import { toSettle } from '../../core/plan/findings-at'
import type { Operation, Plan } from '../../core/plan/types'
import { Checks } from '../Checks'
import { type ReadingAt, ReadingContext, useIsRead } from '../reading'
import { Cautions } from '../signs/Cautions'
import { HurtLine } from '../signs/HurtLine'
import { count, keyOf, namesWhole, STAGE_NAMES, TRADE_NAMES, words } from '../words'
import type { ReadAloud as ReadAloudHere } from './aloud/ReadAloud'
import { leadingFigures } from './figure-groups'
import { SlipFigures } from './SlipFigures'
import { WhyNow } from './WhyNow'

/** The sentences of findings come after the first step; where the line fails, the step itself stays. */
const orNothing = (part: 'StepFindings' | 'ToSettle') =>
  lazy(() =>
    import('./StepFindings').then(
      (m) => ({ default: m[part] }),
      () => ({ default: (_: { readonly plan: Plan; readonly operation: Operation }) => null }),
    ),
  )
const Said = lazy(() =>
  import('./Said').then(
    (m) => ({ default: m.Said }),
    () => ({ default: ({ children }: { readonly children: ReactNode }) => children }),
  ),
)
const ReadAloud = lazy(() =>
  import('./aloud/ReadAloud').then(
    (m) => ({ default: m.ReadAloud }),
    () => ({ default: (_: ComponentProps<typeof ReadAloudHere>): ReactNode => null }),
  ),
)
const WordsUsed = lazy(() =>
  import('./Said').then(
    (m) => ({ default: m.WordsUsed }),
    () => ({ default: () => null }),
  ),
)
const LevelTrial = lazy(() =>
  import('./trial/LevelTrial').then(
    (m) => ({ default: m.LevelTrial }),
    () => ({ default: () => null }),
  ),
)
const StageNow = lazy(() =>
  import('./StageNow').then(
    (m) => ({ default: m.StageNow }),
    () => ({ default: () => null }),
  ),
)
const StepFindings = orNothing('StepFindings')
const ToSettle = orNothing('ToSettle')

interface Props {
  readonly plan: Plan
  readonly operation: Operation
  readonly index: number
  /** Ticks of a rehearsal: kept nowhere, for nothing has been done yet. */
  readonly ticked: ReadonlySet<string>
  readonly onTick: (ticked: ReadonlySet<string>) => void
}

/** The paper slip of one operation: everything the picture tells, told in words. */
export function StepSlip({ plan, operation, index, ticked, onTick }: Props) {
  const heading = useHeadingFocus(operation.id)
  const [reading, setReading] = useState<ReadingAt | null>(null)
  const { trade, does, cautions } = operation
  const { first, rest } = leadingFigures(operation.figures)
  const unit = operation.kind === 'level' ? plan.units.find((u) => operation.on.includes(u.unit)) : undefined
  return (
    <ReadingContext value={reading}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard */}
      <article className="slip" aria-labelledby="step-title" tabIndex={0}>
        {plan.demo && index === 0 && (
          <p className="invented-note">
            {plan.name} is invented, to practise on. <a href="#survey">Put in your own kitchen</a>
          </p>
        )}
        <div className="slip-head">
          <p className="where">
            {STAGE_NAMES[operation.stage]} · step {index + 1} of {plan.operations.length}
            {operation.done && ' · done'}
          </p>
          <Suspense fallback={null}>
            <ReadAloud operation={operation} onReading={setReading} />
          </Suspense>
        </div>
        <Heading operation={operation} heading={heading} />
        <Suspense fallback={null}>
          <StageNow plan={plan} operation={operation} />
        </Suspense>
        {trade !== null && <TradeOnly trade={trade} />}
        <HurtLine cautions={cautions} />
        <HoldPoint plan={plan} operation={operation} />
        <SlipFigures key={`first ${operation.id}`} figures={first} plan={plan} />
        <ol className="does">
          {does.map((line, i) => (
            <li key={operation.id + keyOf(line)}>
              <Line operation={operation} at={`does.${i}`} text={words(line)} />
            </li>
          ))}
        </ol>
        <SlipFigures key={`figures ${operation.id}`} figures={rest} plan={plan} />
        {unit !== undefined && (
          <Suspense fallback={null}>
            <LevelTrial key={`try ${operation.id}`} operation={operation} unit={unit} />
          </Suspense>
        )}
        <Cautions
          key={`cautions ${operation.id}`}
          cautions={cautions}
          say={({ say }, i) => <Line operation={operation} at={`cautions.${i}`} text={words(say)} />}
        />
        <Checks operation={operation} ticked={operation.done ? null : ticked} onTick={onTick} />
        {operation.checks.length > 0 && !operation.done && (
          <p className="quiet ticks-only">
            Ticks here are for the rehearsal only: nothing is written down, and nothing found is settled by
            them.
          </p>
        )}
        <Suspense fallback={null}>
          <StepFindings plan={plan} operation={operation} />
        </Suspense>
        <p className="crew">{crewLine(operation)}</p>
        <Suspense fallback={null}>
          <WordsUsed key={`words ${operation.id}`} operation={operation} />
        </Suspense>
        <WhyNow key={`why ${operation.id}`} plan={plan} operation={operation} />
      </article>
    </ReadingContext>
  )
}

interface HeadingProps {
  readonly operation: Operation
  readonly heading: RefObject<HTMLHeadingElement | null>
}

function Heading({ operation, heading }: HeadingProps) {
  return (
    <h1 id="step-title" tabIndex={-1} ref={heading}>
      <span data-read={useIsRead('title')}>{namesWhole(words(operation.title))}</span>
    </h1>
  )
}

function TradeOnly({ trade }: { readonly trade: NonNullable<Operation['trade']> }) {
  return (
    <p className="hold-point" data-read={useIsRead('trade')}>
      Only for {TRADE_NAMES[trade]}.
    </p>
  )
}

interface LineProps {
  readonly operation: Operation
  /** Which line of the step: `does.0`, `cautions.1`. */
  readonly at: string
  readonly text: string
}

/** A line of the step: plain until its words of the trade can be explained, and where that cannot be fetched. */
function Line({ operation, at, text }: LineProps) {
  return (
    <Suspense fallback={text}>
      <Said operation={operation} at={at}>
        {text}
      </Said>
    </Suspense>
  )
}

/** Why work stops here, each reason leading to its words. */
function HoldPoint({ plan, operation }: { readonly plan: Plan; readonly operation: Operation }) {
  if (!operation.holdPoint) return null
  const hasStops = toSettle(plan, operation).length > 0
  return (
    <div className="hold-point">
      <p>
        Hold point. Work stops here until{' '}
        {hasStops ? 'this is settled, and every check is answered:' : 'every check is answered.'}
      </p>
      {hasStops && (
        <Suspense fallback={null}>
          <ToSettle plan={plan} operation={operation} />
        </Suspense>
      )}
    </div>
  )
}

/** The heading takes the focus when the operation changes, so that its words are read; never from somebody on the tape. */
function useHeadingFocus(id: string) {
  const heading = useRef<HTMLHeadingElement>(null)
  const shown = useRef(id)
  useEffect(() => {
    if (shown.current === id) return
    shown.current = id
    // Where there is very little room, it is the place that scrolls.
    for (const box of ['.slip', '.place']) {
      const scroller = heading.current?.closest(box)
      if (scroller) scroller.scrollTop = 0
    }
    if (document.activeElement?.getAttribute('role') !== 'slider')
      heading.current?.focus({ preventScroll: true })
  }, [id])
  return heading
}

function crewLine({ people, minutes, tools }: Operation): string {
  const hands = people === 1 ? 'One person' : people === 2 ? 'Two people' : count(people, 'person', 'people')
  const time = minutes.low === minutes.high ? `${minutes.low}` : `${minutes.low} to ${minutes.high}`
  const tool = tools.length === 0 ? '' : ` Tools: ${tools.map((t) => t.replaceAll('-', ' ')).join(', ')}.`
  return `${hands}, ${time} minutes by common practice.${tool}`
}
