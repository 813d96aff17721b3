import type { Demand, Plan } from '../../../core/plan/types'
import { groupedNumber, signedNumber } from '../../../core/words/format'
import { useApp } from '../../app-context'
import { keyOf, words } from '../../words'
import { type Block, missedAt, type PictureBar } from './blocks'
import { fullName } from './names'
import type { Wishing } from './use-wishing'
import { wishedAt, wishMark } from './wished'

interface Props {
  readonly plan: Plan
  readonly block: Block
  /** Where it is shown: as wished, else as the plan has it. */
  readonly at: number
  readonly wishing: Wishing
}

/** The chosen height in words: where it stands, what wants something of it, and the wish for it. */
export function HeightPanel({ plan, block, at, wishing }: Props) {
  const kitchen = useApp((s) => s.kitchen)
  const { of, value, bars } = block
  const name = fullName(of)
  const isWished = wishMark(kitchen, of) !== undefined
  return (
    <div className="height-panel">
      <div className="height-now">
        <h4>{name}</h4>
        <p className="now-at">
          <span className="figure">{signedNumber(at)}</span> mm from the line
        </p>
        {value.achieved ? (
          <p>It was read on the day, and is not chosen any more.</p>
        ) : (
          <div className="height-moves">
            {([-1, 1] as const).map((by) => (
              <button
                key={by}
                type="button"
                className="button"
                aria-label={`${signedNumber(by)} mm: ${name}`}
                onClick={() => wishing.step(of, at, by)}
                onBlur={wishing.settle}
              >
                {signedNumber(by)} mm
              </button>
            ))}
            {isWished && (
              <button type="button" className="button" onClick={() => wishing.takeAway(of)}>
                Take wish away
              </button>
            )}
          </div>
        )}
        <Answer plan={plan} block={block} at={at} />
      </div>
      <Room plan={plan} block={block} />
      <ol className="demands">
        {bars.map((bar) => (
          <OneDemand key={bar.id} bar={bar} />
        ))}
      </ol>
    </div>
  )
}

/** What comes of the wish: at once what it lies past, then what the plan made of it. */
function Answer({ plan, block, at }: Omit<Props, 'wishing'>) {
  const kitchen = useApp((s) => s.kitchen)
  const isWorking = useApp((s) => s.working)
  const isBehind = useApp((s) => s.isBehind)
  const mark = wishMark(kitchen, block.of)
  const missed = missedAt(block, at)
  const isWished = wishedAt(kitchen, block.of) !== undefined
  return (
    <div className="height-answer" role="status">
      {missed.length > 0 && (
        <p className="stop">
          {signedNumber(at)} lies past {missed.map(({ letter }) => letter).join(', ')}:{' '}
          {missed.map(({ title }) => title).join('; ')}
        </p>
      )}
      {isWorking && <p className="quiet">Working it out…</p>}
      {!isWorking && isBehind && (
        <p className="quiet">Something does not go together yet. The plan is the one from before it.</p>
      )}
      {!isWorking && !isBehind && mark !== undefined && isWished && (
        <Outcome plan={plan} mark={mark} block={block} at={at} />
      )}
    </div>
  )
}

function Outcome({ plan, mark, block, at }: Omit<Props, 'wishing'> & { readonly mark: string }) {
  const { demands, conflicts, unmet } = plan.heights
  const wish = demands.find((d) => d.id === `wish:${mark}`)
  if (wish === undefined) return null
  const conflict = conflicts.find((c) => c.demands.includes(wish.id))
  // What it lies past is named above it already.
  const isNamed = missedAt(block, at).length > 0
  if (conflict !== undefined)
    return (
      <>
        <p className="stop">
          Your wish and {isNamed ? 'that' : 'these'} cannot all hold: they miss by {tenths(conflict.by)} mm.
          The plan has {signedNumber(block.at)}.
        </p>
        {!isNamed && (
          <Sentences demands={demands.filter((d) => d !== wish && conflict.demands.includes(d.id))} />
        )}
      </>
    )
  if (unmet.includes(wish.id))
    return <p className="stop">The plan does not meet your wish: it has {signedNumber(block.at)}.</p>
  return (
    <p>
      {at === block.at ? 'The plan has it as you wish.' : `The plan has ${signedNumber(block.at)}.`} What was
      measured can still be wrong.
    </p>
  )
}

const tenths = (mm: number): string => (mm < 100 ? `${Math.round(mm * 10) / 10}` : groupedNumber(mm))

export function Sentences({ demands }: { readonly demands: readonly Demand[] }) {
  return (
    <ul className="sentences">
      {[...new Map(demands.map((d) => [keyOf(d.because), d])).values()].map((d) => (
        <li key={d.id}>{words(d.because)}</li>
      ))}
    </ul>
  )
}

/** The room a height has, and what sets its ends from further off: through another height. */
function Room({ plan, block: { value, bars } }: { readonly plan: Plan; readonly block: Block }) {
  const { lowest, highest, lowestBy, highestBy, achieved } = value
  if (achieved) return null
  const here = new Set(bars.flatMap(({ parts }) => parts.map(({ demand }) => demand.id)))
  const afar = plan.heights.demands.filter(
    ({ id }) => (lowestBy.includes(id) || highestBy.includes(id)) && !here.has(id),
  )
  return (
    <div className="height-room">
      <p>{roomWords(lowest, highest)}</p>
      {afar.length > 0 && (
        <details>
          <summary>What else sets its ends, through another height</summary>
          <Sentences demands={afar} />
        </details>
      )}
    </div>
  )
}

function roomWords(lowest: number | null, highest: number | null): string {
  if (lowest === null && highest === null) return 'Nothing that is known bounds it.'
  if (lowest === null) return `It may lie up to ${signedNumber(highest ?? 0)}; nothing known bounds it below.`
  if (highest === null) return `It may lie from ${signedNumber(lowest)} up; nothing known bounds it above.`
  return highest - lowest < 0.05
    ? `All together leave ${signedNumber(lowest)} alone.`
    : `All together leave it from ${signedNumber(lowest)} to ${signedNumber(highest)}: the blue band.`
}

function OneDemand({ bar }: { readonly bar: PictureBar }) {
  const { letter, title, deciding, isMet, sets } = bar
  return (
    <li>
      <span className="letter">{letter}</span>
      <div>
        <p className={isMet ? undefined : 'stop'}>{title}</p>
        {deciding.map((m) => (
          <p key={keyOf(m)} className="quiet">
            {words(m)}
          </p>
        ))}
        <p className="ends">
          {endsOf(bar)}
          {sets.length > 0 && <strong> Sets the {sets.join(' and the ')} end.</strong>}
          {!isMet && <strong className="stop"> Not met.</strong>}
        </p>
      </div>
    </li>
  )
}

function endsOf({ min, max, isTied }: PictureBar): string {
  const tied = isTied ? ', as the other height stands now' : ''
  if (min === null) return `Not higher than ${signedNumber(max ?? 0)}${tied}.`
  if (max === null) return `Not lower than ${signedNumber(min)}${tied}.`
  if (min === max) return `At ${signedNumber(min)}${tied}.`
  return `From ${signedNumber(min)} to ${signedNumber(max)}${tied}.`
}
