import type { MouseEvent } from 'react'
import { hasValue } from '../core/figure'
import type { Operation, OperationCheck } from '../core/plan/types'
import { asksForHeight, figureText, numberText } from '../core/words/format'
import { besides, bringIntoView } from './bring-into-view'
import { useIsRead } from './reading'
import { words } from './words'

/** From a control to the first check beside it that is not answered yet. */
export function toFirstOpenCheck({ currentTarget }: MouseEvent<HTMLElement>): void {
  bringIntoView(besides(currentTarget, '.checks input:not(:checked)'))
}

interface Props {
  readonly operation: Operation
  /** Ids of the checks answered; null: it was done before, with all of them. */
  readonly ticked: ReadonlySet<string> | null
  readonly onTick: (ticked: ReadonlySet<string>) => void
}

/** What has to be looked at before an operation is called done, each with what it should be. */
export function Checks({ operation, ticked, onTick }: Props) {
  if (operation.checks.length === 0) return null
  const toggle = (id: string, was: ReadonlySet<string>) =>
    onTick(was.has(id) ? new Set([...was].filter((other) => other !== id)) : new Set([...was, id]))
  return (
    <ul className="checks" aria-label="Checks">
      {operation.checks.map((check, i) => (
        <li key={`${operation.id} ${check.id}`}>
          <label>
            <input
              type="checkbox"
              checked={ticked?.has(check.id) ?? true}
              disabled={ticked === null}
              onChange={() => ticked !== null && toggle(check.id, ticked)}
            />
            <Ask check={check} at={`checks.${i}`} />
          </label>
        </li>
      ))}
    </ul>
  )
}

function Ask({ check, at }: { readonly check: OperationCheck; readonly at: string }) {
  return (
    <span data-read={useIsRead(at)}>
      {words(check.ask)}
      <Target check={check} />
    </span>
  )
}

function Target({ check }: { readonly check: OperationCheck }) {
  const text = targetText(check)
  return text === null ? null : <small> {text}</small>
}

/** "145 mm, give or take 2" for a check with a target; null for one that is answered by looking. */
export function targetText({ ask, target, tolerance }: OperationCheck): string | null {
  if (target === null) return null
  if (!hasValue(target)) return 'What it should be is not known yet.'
  const within = tolerance === null || !hasValue(tolerance) ? null : numberText({ ...tolerance, pm: 0.1 })
  if (target.value === 0 && within !== null)
    return `At most ${within} ${target.unit === 'mm' ? 'mm' : ''}.`.replace(' .', '.')
  const bare = figureText({ ...target, state: 'known' }, { signed: asksForHeight(ask.key) })
  return `${bare}${within === null ? '' : `, give or take ${within}`}.`
}
