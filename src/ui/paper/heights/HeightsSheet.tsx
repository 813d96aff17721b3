import { hasValue } from '../../../core/figure'
import type { HeightValue, Plan } from '../../../core/plan/types'
import { numberText } from '../../../core/words/format'
import { upperFirst } from '../../../core/words/upper-first'
import { words } from '../../words'
import { SheetHead } from '../SheetHead'
import { LINE_NAMES } from '../wall/HeightLines'
import { barsFor } from './bars'
import { HeightDrawing } from './HeightDrawing'

/** Each height that was chosen, and everything that wants something from it. */
export function HeightsSheet({ plan }: { readonly plan: Plan }) {
  return (
    <section className="sheet" aria-label="Heights">
      <SheetHead plan={plan} title="Heights" about="mm, up (+) and down (−) from the line" />
      {plan.heights.conflicts.map((c) => (
        <p className="stop" key={c.demands.join()}>
          These cannot all hold, by {c.by} mm:{' '}
          {c.demands
            .map((id) =>
              words(plan.heights.demands.find((d) => d.id === id)?.because ?? { key: id, values: {} }),
            )
            .join(' ')}
        </p>
      ))}
      {plan.heights.values.map((value) => (
        <OneHeight key={value.of} plan={plan} value={value} />
      ))}
    </section>
  )
}

function OneHeight({ plan, value }: { readonly plan: Plan; readonly value: HeightValue }) {
  const name = upperFirst(LINE_NAMES[value.of] ?? value.of)
  const bars = barsFor(plan, value)
  const unmet = bars.filter((b) => !b.isMet).length
  return (
    <section className="one-height">
      <h2>
        {name}{' '}
        {hasValue(value.height) ? (
          <span className="chosen">{numberText(value.height, { signed: true })}</span>
        ) : (
          'is not known yet'
        )}
      </h2>
      <p>
        {bars.length === 0 ? 'Nothing that is known wants anything of it.' : verdict(unmet)} {roomText(value)}
        {value.achieved && ' It was read on the day, and is no longer chosen.'}
      </p>
      {bars.length > 0 && hasValue(value.height) && (
        <HeightDrawing bars={bars} value={value} chosen={value.height.value} />
      )}
    </section>
  )
}

const verdict = (unmet: number): string =>
  unmet === 0 ? 'It meets everything that wants something of it.' : `It meets all but ${unmet}.`

function roomText({ lowest, highest, marginal }: HeightValue): string {
  if (lowest === null || highest === null) return ''
  const room = Math.round((highest - lowest) * 10) / 10
  return `They agree over ${room} mm.${marginal ? ' That is less than the readings are worth: measure again.' : ''}`
}
