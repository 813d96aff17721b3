import { useEffect, useRef } from 'react'
import { letteredFindings, placesOf, toSettle } from '../../core/plan/findings-at'
import type { Finding, Operation, Plan } from '../../core/plan/types'
import { useActions, useApp } from '../app-context'
import { bringIntoView } from '../bring-into-view'
import { actionOf } from '../findings/action'
import { words } from '../words'
import { AnswerAt } from './AnswerAt'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** What has been found that bears on this step, lettered as it is flagged in the picture. */
export function StepFindings({ plan, operation }: Props) {
  const open = useApp((s) => s.finding)
  const findings = letteredFindings(plan, operation, open?.id ?? null)
  const list = useRef<HTMLOListElement>(null)
  useEffect(() => {
    if (open === null) return
    const item = [...(list.current?.children ?? [])].find((e) => e.getAttribute('data-finding') === open.id)
    if (!(item instanceof HTMLElement) || item.contains(document.activeElement)) return
    // After the heading of a step that came with it has had the focus.
    const later = setTimeout(() => bringIntoView(item, 'top'))
    return () => clearTimeout(later)
  }, [open])
  if (findings.length === 0) return null
  return (
    <section className="step-findings" aria-labelledby="found-here">
      <h2 id="found-here">Found here</h2>
      <ol ref={list}>
        {findings.map(({ finding, letter }) => (
          <OneFound
            key={finding.id}
            plan={plan}
            finding={finding}
            letter={letter}
            isOpen={finding.id === open?.id}
          />
        ))}
      </ol>
    </section>
  )
}

interface OneProps {
  readonly plan: Plan
  readonly finding: Finding
  readonly letter: string
  readonly isOpen: boolean
}

function OneFound({ plan, finding, letter, isOpen }: OneProps) {
  const actions = useActions()
  const heading = words(finding.called)
  const { action, rest } = actionOf(finding)
  const isPlaced = placesOf(plan, finding).length > 0
  return (
    <li
      data-finding={finding.id}
      data-weight={finding.weight}
      data-grave={finding.dangerous || finding.weight === 'stop' ? '' : undefined}
      aria-current={isOpen ? 'true' : undefined}
      tabIndex={-1}
    >
      <h3>
        <span className="letter" aria-hidden="true">
          {letter}
        </span>
        {heading}
      </h3>
      {finding.dangerous && <p className="hurts">Can hurt someone.</p>}
      {action !== null && (
        <p>
          <strong>{action}</strong>
        </p>
      )}
      {rest !== '' && <p>{rest}</p>}
      <AnswerAt finding={finding} plan={plan} />
      {isPlaced && (
        <button
          type="button"
          className="link"
          aria-label={`Show it in the picture: ${heading}`}
          onClick={() => actions.lookAtFinding(finding.id)}
        >
          Show it in the picture
        </button>
      )}
    </li>
  )
}

/** What holds the work here: what is to be settled, each leading to its words. */
export function ToSettle({ plan, operation }: Props) {
  const actions = useActions()
  return (
    <ul className="to-settle">
      {toSettle(plan, operation).map((finding) => (
        <li key={finding.id}>
          <button type="button" className="link" onClick={() => actions.openFinding(finding.id)}>
            {words(finding.called)}
          </button>
          <AnswerAt finding={finding} plan={plan} />
        </li>
      ))}
    </ul>
  )
}
