import { hasValue } from '../../../core/figure'
import type { HeightValue, Plan } from '../../../core/plan/types'
import { numberText } from '../../../core/words/format'
import { upperFirst } from '../../../core/words/upper-first'
import { words } from '../../words'
import { SheetHead } from '../SheetHead'
import { LINE_NAMES } from '../wall/line-names'
import { barsFor } from './bars'
import { HeightDrawing } from './HeightDrawing'
import { heightWords } from './height-words'

/** Each height that was chosen, and everything that wants something from it. */
export function HeightsSheet({ plan }: { readonly plan: Plan }) {
  return (
    <section className="sheet" aria-label="Heights">
      <SheetHead plan={plan} id="heights" title="Heights" about="mm, up (+) and down (−) from the line" />
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
      <div className="all-heights">
        {plan.heights.values.map((value) => (
          <OneHeight key={value.of} plan={plan} value={value} />
        ))}
      </div>
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
        {bars.length === 0
          ? 'Nothing that is known asks anything of it.'
          : heightWords(value, bars.length, unmet)}
        {value.achieved && ' It was read on the day, and is no longer chosen.'}
      </p>
      {bars.length > 0 && hasValue(value.height) && (
        <HeightDrawing bars={bars} value={value} chosen={value.height.value} />
      )}
    </section>
  )
}
