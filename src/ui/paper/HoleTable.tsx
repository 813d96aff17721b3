import { hasValue } from '../../core/figure'
import type { Hole, Plan } from '../../core/plan/types'
import { figureText, numberText } from '../../core/words/format'
import { holePurpose } from '../../core/words/hole-purpose'
import { unitName } from '../../core/words/plan-names'
import { keyOf, words } from '../words'

const VERDICTS: Readonly<Record<Hole['verdict'], string>> = {
  refused: 'Do not drill.',
  ask: 'Ask first.',
  'trace first': 'Trace first.',
}

/** On a narrow screen each hole is a block, and its figures carry these heads themselves. */
const HEADS = [
  'for',
  'from the left corner',
  'from the line',
  'bit',
  'screw',
  'deepest, from the face',
  'before it is drilled',
] as const

/** Every hole of one wall by its number, refused ones last. */
export function HoleTable({ holes, plan }: { readonly holes: readonly Hole[]; readonly plan: Plan }) {
  if (holes.length === 0) return null
  const sorted = [...holes].sort((a, b) => (a.number ?? 1e9) - (b.number ?? 1e9) || (a.id < b.id ? -1 : 1))
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard
    <section className="scroll wide-table" aria-label="Holes" tabIndex={0}>
      <table className="rows">
        <caption>Holes</caption>
        <thead>
          <tr>
            <th scope="col">no.</th>
            {HEADS.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sorted.map((h) => (
            <HoleRow key={h.id} hole={h} plan={plan} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

function HoleRow({ hole, plan }: { readonly hole: Hole; readonly plan: Plan }) {
  const isRefused = hole.verdict === 'refused'
  return (
    <tr className={isRefused ? 'refused' : undefined}>
      <th scope="row" className="figure">
        {isRefused ? 'no' : (hole.number ?? '?')}
      </th>
      <td data-head={HEADS[0]}>
        {holePurpose(hole)}, {hole.for.map((u) => unitName(u, plan)).join(', ')}
      </td>
      <td data-head={HEADS[1]} className="figure">
        {figureText(hole.along, { withPm: true, withUnit: false })}
      </td>
      <td data-head={HEADS[2]} className="figure">
        {numberText(hole.height, { signed: true }) ?? 'not known yet'}
      </td>
      <td data-head={HEADS[3]} className="figure">
        {numberText(hole.bit) ?? 'not known'}
      </td>
      <td data-head={HEADS[4]} className="figure">
        {numberText(hole.screwLength) ?? 'not known'}
      </td>
      <td data-head={HEADS[5]} className="figure">
        {hasValue(hole.depth) ? figureText(hole.depth, { withPm: true }) : 'not known yet'}
      </td>
      <td data-head={HEADS[6]}>
        <strong>{VERDICTS[hole.verdict]}</strong>{' '}
        {hole.against.map((m) => (
          <span key={keyOf(m)}>{words(m)} </span>
        ))}
      </td>
    </tr>
  )
}
