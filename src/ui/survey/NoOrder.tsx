import type { NoPlan, OrderReason } from '../../core/plan/types'
import { basisText } from '../basis'
import { FindingList } from '../findings/FindingList'
import { keyOf, words } from '../words'

const NO_NAMES = { walls: [], units: [] }

/** Why no order is possible: what clashes, and what could be given up. Each set is smallest: nothing in it can be left out. */
export function NoOrder({ noPlan }: { readonly noPlan: NoPlan }) {
  const reasonOf = (id: string) => noPlan.reasons.find((r) => r.id === id)
  return (
    <section className="sheet">
      <h2 className="stop">There is no order that keeps everything</h2>
      {noPlan.trapped.map((t) => (
        <p key={t.unit}>{words(t.say)}</p>
      ))}
      {noPlan.conflicts.map((c) => (
        <section key={c.wishes.join() + c.reasons.join()} className="clash">
          <h3>{c.wishes.length + c.reasons.length === 1 ? 'This cannot hold' : 'These cannot all hold'}</h3>
          <ul className="plain">
            {c.wishes.map((wish) => (
              <li key={wish}>Your wish “{wish.replaceAll('-', ' ')}”</li>
            ))}
            {c.reasons.map((id) => (
              <ReasonLine key={id} id={id} reason={reasonOf(id)} />
            ))}
          </ul>
        </section>
      ))}
      {noPlan.loops.map((loop) => (
        <section key={loop.map((r) => r.id).join()} className="clash">
          <h3>These go round in a circle</h3>
          <ul className="plain">
            {loop.map((r) => (
              <ReasonLine key={r.id} id={r.id} reason={r} />
            ))}
          </ul>
        </section>
      ))}
      {noPlan.repairs.length > 0 && (
        <section className="clash">
          <h3>Ways out</h3>
          <ul className="plain">
            {noPlan.repairs.map((r) => (
              <li key={r.drop.join()}>
                Give up {r.drop.map((wish) => `“${wish.replaceAll('-', ' ')}”`).join(' and ')}
              </li>
            ))}
          </ul>
        </section>
      )}
      {noPlan.findings.length > 0 && <FindingList findings={noPlan.findings} plan={NO_NAMES} />}
    </section>
  )
}

function ReasonLine({ id, reason }: { readonly id: string; readonly reason: OrderReason | undefined }) {
  if (reason === undefined) return <li>{id}</li>
  return (
    <li key={keyOf(reason.because)}>
      {words(reason.because)} <span className="quiet">{basisText(reason.basis)}</span>
    </li>
  )
}
