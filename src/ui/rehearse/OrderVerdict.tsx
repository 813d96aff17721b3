import type { Tried } from '../../core/order/try-order'
import type { OrderReason, Plan } from '../../core/plan/types'
import { listed } from '../../core/words/listed'
import { count } from '../words'
import { ReasonList } from './ReasonList'

/** What the parts of a cost are for, in the words of somebody who pays it in time. */
const PARTS: Readonly<Record<string, string>> = {
  stages: 'going back to an earlier stage',
  done: 'doing again what was done',
  helper: 'calling in a second pair of hands',
  walking: 'walking',
  over: 'going over to another wall',
  left: 'leaving a unit before it is levelled',
  tools: 'changing tools',
}

interface Props {
  readonly plan: Plan
  readonly tried: Tried
}

/** What came of trying another order: what forbids it, or what it costs and what it sets aside. */
export function OrderVerdict({ plan, tried }: Props) {
  if (tried.kind === 'refused') return <p>The survey does not go together as it is: mend it first.</p>
  if (tried.kind === 'impossible') return <Forbidden plan={plan} reasons={tried.reasons} />
  const { costs, parts, setAside, moved } = tried
  return (
    <>
      <p>
        {setAside.length === 0 ? 'Nothing speaks against it; ' : 'It can be done; '}
        {costText(costs, parts)}
        {moved > 1 && ` ${count(moved, 'step')} change places.`}
      </p>
      <ReasonList title="What it sets aside" reasons={setAside} other="before" plan={plan} />
    </>
  )
}

/** Each of these is needed for the clash: take one away and it could be done. */
export function Forbidden({
  plan,
  reasons,
}: {
  readonly plan: Plan
  readonly reasons: readonly OrderReason[]
}) {
  return (
    <>
      <p>It cannot be done so.</p>
      <ReasonList title="What forbids it" reasons={reasons} other="before" plan={plan} />
    </>
  )
}

function costText(costs: number, parts: Readonly<Record<string, number>>): string {
  const minutes = Math.round(Math.abs(costs))
  if (minutes === 0) return 'it costs nothing.'
  const about = `about ${count(minutes, 'minute')}`
  if (costs < 0) return `it saves ${about}.`
  const what = Object.entries(parts)
    .filter(([name, part]) => PARTS[name] !== undefined && part >= 0.5)
    .sort((a, b) => b[1] - a[1])
    .map(([name]) => PARTS[name] ?? name)
  return what.length === 0 ? `it costs ${about}.` : `it costs ${about}: ${listed(what)}.`
}
