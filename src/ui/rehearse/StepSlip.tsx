import { useEffect, useRef } from 'react'
import { hasValue } from '../../core/figure'
import type { Caution, NamedFigure, Operation, OperationCheck, Plan } from '../../core/plan/types'
import { numberText } from '../../core/words/format'
import { Sign } from '../signs/Sign'
import { STAGE_NAMES, words } from '../words'
import { WhyNow } from './WhyNow'

/** The paper slip of one operation: everything the picture tells, told in words. */
export function StepSlip({ plan, index }: { readonly plan: Plan; readonly index: number }) {
  const operation = plan.operations[index]
  const heading = useRef<HTMLHeadingElement>(null)
  const first = useRef(true)
  const id = operation?.id
  // biome-ignore lint/correctness/useExhaustiveDependencies: the heading takes the focus when the operation changes
  useEffect(() => {
    if (first.current) first.current = false
    else heading.current?.focus({ preventScroll: false })
  }, [id])
  if (operation === undefined) return null
  return (
    <article className="slip" aria-labelledby="step-title">
      <p className="where">
        {STAGE_NAMES[operation.stage]} · step {index + 1} of {plan.operations.length}
      </p>
      <h1 id="step-title" tabIndex={-1} ref={heading}>
        {words(operation.title)}
      </h1>
      {operation.trade !== null && <p className="hold-point">Only for a {tradeName(operation.trade)}.</p>}
      {operation.holdPoint && <p className="hold-point">Hold point. Work stops here until every check is answered.</p>}
      <Figures figures={operation.figures} />
      <ol className="does">
        {operation.does.map((line) => (
          <li key={line.key + JSON.stringify(line.values)}>{words(line)}</li>
        ))}
      </ol>
      <Checks operation={operation} />
      {operation.cautions.map((caution) => (
        <CautionLine key={caution.sign + caution.say.key} caution={caution} />
      ))}
      <p className="where">{crewLine(operation)}</p>
      <WhyNow plan={plan} operation={operation} />
    </article>
  )
}

function tradeName(trade: NonNullable<Operation['trade']>): string {
  return {
    electrician: 'registered electrician',
    'gas-engineer': 'registered gas engineer',
    plumber: 'plumber',
    'asbestos-surveyor': 'competent asbestos surveyor',
  }[trade]
}

function crewLine({ people, minutes, tools }: Operation): string {
  const hands = people === 1 ? 'One person' : people === 2 ? 'Two people' : `${people} people`
  const tool = tools.length === 0 ? '' : ` Tools: ${tools.join(', ')}.`
  return `${hands}, ${minutes.low} to ${minutes.high} minutes for a first-timer.${tool}`
}

function Figures({ figures }: { readonly figures: readonly NamedFigure[] }) {
  if (figures.length === 0) return null
  return (
    <dl className="slip-figures">
      {figures.map(({ name, figure, label }) => (
        <div key={name}>
          <dt>{words(label)}</dt>
          {hasValue(figure) ? (
            <dd className={figure.state === 'assumed' ? 'assumed' : undefined}>
              {numberText(figure, { signed: label.key.endsWith('-from-line') })}
              {figure.unit === 'kg' ? ' kg' : ''}
              {figure.state === 'assumed' && <span className="visually-hidden"> (assumed)</span>}
            </dd>
          ) : (
            <dd className="not-known">not known yet</dd>
          )}
        </div>
      ))}
    </dl>
  )
}

function Checks({ operation }: { readonly operation: Operation }) {
  return (
    <ul className="checks" key={operation.id}>
      {operation.checks.map((check: OperationCheck) => (
        <li key={check.id}>
          <label>
            <input type="checkbox" defaultChecked={operation.done} />
            <span>{words(check.ask)}</span>
          </label>
        </li>
      ))}
    </ul>
  )
}

function CautionLine({ caution }: { readonly caution: Caution }) {
  const text = words(caution.say)
  return (
    <div className="caution">
      <Sign code={caution.sign} label={text} />
      <p>{text}</p>
    </div>
  )
}
