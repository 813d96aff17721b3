import { type PointerEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react'
import { orderWishEdits } from '../../../core/order/order-wish'
import { against, type Forced } from '../../../core/order/what-if'
import { type Operation, type Plan, STAGES } from '../../../core/plan/types'
import { useActions, useApp } from '../../app-context'
import { STAGE_NAMES, words } from '../../words'
import { Forbidden, OrderVerdict } from '../OrderVerdict'
import { forcedBy, placeAt, stageSteps, withMoved } from './order-move'

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** What is asked for by hand and not kept yet: which step, where in the list of its stage, before or after which. */
interface Asked {
  readonly moved: string
  /** Null: chosen out of the whole work, and nowhere in this list. */
  readonly to: number | null
  readonly forced: Forced
}

/** The steps of a stage, put in another order by buttons or by hand; what that would come to is said at once. */
export function Reorder({ plan, operation }: Props) {
  const steps = stageSteps(plan, operation)
  const [picked, setPicked] = useState(operation.id)
  const [asked, setAsked] = useState<Asked | null>(null)
  const from = steps.findIndex((o) => o.id === picked)
  const moved = steps[from]
  const to = asked?.to ?? from
  if (moved === undefined) return <p>It is done, and keeps its place.</p>
  const place = (next: number, of = from) => {
    const forced = forcedBy(steps, of, Math.max(0, Math.min(steps.length - 1, next)))
    setAsked(forced === null ? null : { moved: steps[of]?.id ?? '', to: next, forced })
  }
  const pick = (id: string) => {
    setPicked(id)
    setAsked(null)
  }
  return (
    <StepList
      plan={plan}
      steps={steps}
      from={from}
      to={to}
      onPick={pick}
      onPlace={(id, next) => {
        setPicked(id)
        place(
          next,
          steps.findIndex((o) => o.id === id),
        )
      }}
    >
      <p className="reorder-buttons">
        <button type="button" className="button" disabled={to === 0} onClick={() => place(to - 1)}>
          Earlier
        </button>
        <button
          type="button"
          className="button"
          disabled={to === steps.length - 1}
          onClick={() => place(to + 1)}
        >
          Later
        </button>
      </p>
      <MoveBefore
        plan={plan}
        moved={moved}
        onChoose={(after) => setAsked({ moved: moved.id, to: null, forced: { before: moved.id, after } })}
      />
      <Verdict plan={plan} asked={asked} onSettled={() => setAsked(null)} />
      <WishesHere plan={plan} moved={moved} />
    </StepList>
  )
}

interface ListProps {
  readonly plan: Plan
  readonly steps: readonly Operation[]
  readonly from: number
  readonly to: number
  readonly onPick: (id: string) => void
  readonly onPlace: (id: string, to: number) => void
  /** What can be done with the one that is picked. */
  readonly children: ReactNode
}

/** The steps as they would stand. Each can be picked for the buttons, or dragged by its grip. */
function StepList({ plan, steps, from, to, onPick, onPlace, children }: ListProps) {
  const list = useRef<HTMLOListElement>(null)
  const [dragged, setDragged] = useState<string | null>(null)
  const onMove = (event: PointerEvent, id: string) => {
    if (id !== dragged || list.current === null) return
    const others = [...list.current.children].filter((li) => li.getAttribute('data-step') !== id)
    const middles = others.map((li) => {
      const { top, bottom } = li.getBoundingClientRect()
      return (top + bottom) / 2
    })
    onPlace(id, placeAt(event.clientY, middles))
  }
  return (
    <>
      <p className="quiet">
        The steps of this stage. Pick one and press Earlier or Later, or drag it by its grip.
      </p>
      <ol className="order-list" ref={list}>
        {withMoved(steps, from, to).map((step) => (
          <li key={step.id} data-step={step.id} data-picked={step.id === steps[from]?.id ? '' : undefined}>
            <button type="button" aria-pressed={step.id === steps[from]?.id} onClick={() => onPick(step.id)}>
              {plan.operations.indexOf(step) + 1}. {words(step.title)}
            </button>
            <span
              className="grip"
              aria-hidden="true"
              onPointerDown={(event) => {
                event.currentTarget.setPointerCapture?.(event.pointerId)
                setDragged(step.id)
                onPick(step.id)
              }}
              onPointerMove={(event) => onMove(event, step.id)}
              onPointerUp={() => setDragged(null)}
              onPointerCancel={() => setDragged(null)}
            />
            {step.id === steps[from]?.id && (
              <div className="picked" hidden={dragged !== null}>
                {children}
              </div>
            )}
          </li>
        ))}
      </ol>
    </>
  )
}

interface BeforeProps {
  readonly plan: Plan
  readonly moved: Operation
  readonly onChoose: (after: string) => void
}

/** Any step of the whole work, to put this one before it. */
function MoveBefore({ plan, moved, onChoose }: BeforeProps) {
  const id = useId()
  const open = plan.operations.filter((o) => !o.done && o.id !== moved.id)
  return (
    <p className="move-before">
      <label htmlFor={id}>Or move it before</label>
      <select
        id={id}
        value=""
        onChange={(e) => e.currentTarget.value !== '' && onChoose(e.currentTarget.value)}
      >
        <option value="">choose a step</option>
        {STAGES.map((stage) => {
          const steps = open.filter((o) => o.stage === stage)
          if (steps.length === 0) return null
          return (
            <optgroup key={stage} label={STAGE_NAMES[stage]}>
              {steps.map((o) => (
                <option key={o.id} value={o.id}>
                  {plan.operations.indexOf(o) + 1}. {words(o.title)}
                </option>
              ))}
            </optgroup>
          )
        })}
      </select>
    </p>
  )
}

/** So long, ms, something stays where it was put before it is planned: a drag passes over many places. */
const AT_REST = 250

interface VerdictProps {
  readonly plan: Plan
  readonly asked: Asked | null
  readonly onSettled: () => void
}

/** What the other order would come to, and whether it is to be kept. */
function Verdict({ plan, asked, onSettled }: VerdictProps) {
  const actions = useActions()
  const kitchen = useApp((s) => s.kitchen)
  const trial = useApp((s) => s.trial)
  const edits = useApp((s) => s.past.length)
  const [kept, setKept] = useState<{ readonly say: string; readonly edits: number } | null>(null)
  const { before = '', after = '' } = asked?.forced ?? {}
  const forbidden = asked === null ? [] : against(plan, before, after)
  const isTried = asked !== null && forbidden.length === 0
  useEffect(() => {
    if (!isTried || plan.operations.length === 0) return
    const rest = setTimeout(() => actions.tryOrder({ before, after }), AT_REST)
    return () => {
      clearTimeout(rest)
      actions.tryOrder(null)
    }
  }, [actions, plan, isTried, before, after])
  const tried = trial?.forced.before === before && trial.forced.after === after ? trial.tried : null
  const title = (id: string) => {
    const operation = plan.operations.find((o) => o.id === id)
    return operation === undefined ? '' : words(operation.title)
  }
  const keep = () => {
    actions.edit(orderWishEdits(kitchen, { before, after }))
    setKept({ say: `“${title(before)}” before “${title(after)}”`, edits: edits + 1 })
    onSettled()
  }
  return (
    <div className="order-verdict" aria-live="polite">
      {asked !== null && (
        <p>
          <strong>{title(before)}</strong> before <strong>{title(after)}</strong>:
        </p>
      )}
      {forbidden.length > 0 && <Forbidden plan={plan} reasons={forbidden} />}
      {isTried && tried === null && <p>It is being planned.</p>}
      {tried !== null && <OrderVerdict plan={plan} tried={tried} />}
      {asked !== null && (
        <p className="reorder-buttons">
          {tried?.kind === 'possible' && (
            <button type="button" className="button main" onClick={keep}>
              Keep it so
            </button>
          )}
          <button type="button" className="button" onClick={onSettled}>
            Leave it as it was
          </button>
        </p>
      )}
      {asked === null && kept !== null && kept.edits === edits && (
        <p>
          Written down as your wish: {kept.say}.{' '}
          <button
            type="button"
            className="link"
            onClick={() => {
              actions.undo()
              setKept(null)
            }}
          >
            Take it back
          </button>
        </p>
      )}
    </div>
  )
}

/** What was wished for this step before, each to be given up again. */
function WishesHere({ plan, moved }: { readonly plan: Plan; readonly moved: Operation }) {
  const actions = useActions()
  const wishes = plan.reasons.filter(
    (r) => r.kind === 'wish' && (r.before === moved.id || r.after === moved.id),
  )
  if (wishes.length === 0) return null
  const title = (id: string) => words(plan.operations.find((o) => o.id === id)?.title ?? moved.title)
  return (
    <>
      <h2>What you asked for here</h2>
      <ul>
        {wishes.map((wish) => (
          <li key={wish.id}>
            <span>
              “{title(wish.before)}” before “{title(wish.after)}”
            </span>
            <button
              type="button"
              className="link"
              onClick={() => actions.edit([{ remove: `wishes.order.${wish.rule}` }])}
            >
              Give it up
            </button>
          </li>
        ))}
      </ul>
    </>
  )
}
