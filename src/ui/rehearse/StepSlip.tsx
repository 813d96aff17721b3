import { lazy, Suspense, useEffect, useRef } from 'react'
import { toSettle } from '../../core/plan/findings-at'
import type { Operation, Plan } from '../../core/plan/types'
import { Checks } from '../Checks'
import { Cautions } from '../signs/Cautions'
import { HurtLine } from '../signs/HurtLine'
import { count, keyOf, STAGE_NAMES, TRADE_NAMES, words } from '../words'
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
  const { trade, does, cautions } = operation
  const { first, rest } = leadingFigures(operation.figures)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard
    <article className="slip" aria-labelledby="step-title" tabIndex={0}>
      <p className="where">
        {STAGE_NAMES[operation.stage]} · step {index + 1} of {plan.operations.length}
        {operation.done && ' · done'}
      </p>
      <h1 id="step-title" tabIndex={-1} ref={heading}>
        {words(operation.title)}
      </h1>
      {trade !== null && <p className="hold-point">Only for {TRADE_NAMES[trade]}.</p>}
      <HurtLine cautions={cautions} />
      <HoldPoint plan={plan} operation={operation} />
      <SlipFigures key={`first ${operation.id}`} figures={first} plan={plan} />
      <ol className="does">
        {does.map((line) => (
          <li key={keyOf(line)}>{words(line)}</li>
        ))}
      </ol>
      <SlipFigures key={`figures ${operation.id}`} figures={rest} plan={plan} />
      <Cautions cautions={cautions} />
      <Checks operation={operation} ticked={operation.done ? null : ticked} onTick={onTick} />
      <Suspense fallback={null}>
        <StepFindings plan={plan} operation={operation} />
      </Suspense>
      <p className="crew">{crewLine(operation)}</p>
      <WhyNow key={`why ${operation.id}`} plan={plan} operation={operation} />
    </article>
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
    const slip = heading.current?.closest('.slip')
    if (slip) slip.scrollTop = 0
    if (document.activeElement?.getAttribute('role') !== 'slider')
      heading.current?.focus({ preventScroll: true })
  }, [id])
  return heading
}

function crewLine({ people, minutes, tools }: Operation): string {
  const hands = people === 1 ? 'One person' : people === 2 ? 'Two people' : count(people, 'person', 'people')
  const time = minutes.low === minutes.high ? `${minutes.low}` : `${minutes.low} to ${minutes.high}`
  const tool = tools.length === 0 ? '' : ` Tools: ${tools.map((t) => t.replaceAll('-', ' ')).join(', ')}.`
  return `${hands}, ${time} minutes.${tool}`
}
