import type { FittingPart, WhyStage } from '../../core/order/why-stage'
import { whyStage } from '../../core/order/why-stage'
import type { Operation, Plan } from '../../core/plan/types'
import { words } from '../words'

const PART_NAMES: Readonly<Record<FittingPart, string>> = {
  talls: 'tall units',
  'wall-units': 'wall units',
  bases: 'base units',
  worktops: 'worktops',
  fronts: 'doors and drawers',
}

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/** Where a part of the fitting begins: why it does, and whether it could be the other way round. */
export function StageNow({ plan, operation }: Props) {
  const told = whyStage(plan, operation.id)
  if (told === null) return null
  return (
    <p className="why-stage">
      <strong>
        Why {PART_NAMES[told.part]} {told.way} {PART_NAMES[told.other]}:
      </strong>{' '}
      {told.reason !== null && `${words(told.reason.because)} `}
      {strengthOf(told)}
    </p>
  )
}

/** How far it binds, said plainly: a must, or only what the planner reckons the other way costs. */
function strengthOf({ kind, reason, more }: WhyStage): string {
  if (kind === 'must') return reason?.kind === 'wish' ? 'A wish, kept.' : 'A must.'
  if (kind === 'free')
    return 'Either could come first: nothing in this kitchen asks for it, it is the usual order.'
  const minutes = `about ${Math.round(reason?.cost ?? 0)} min`
  const others = more === 0 ? '' : `, one of ${more + 1} such reasons`
  return kind === 'preferred'
    ? `Either could come first; this is reckoned to save ${minutes}${others}.`
    : `Set aside here: either could come first, and this is reckoned to cost ${minutes} more.`
}
