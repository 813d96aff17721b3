import type { CSSProperties } from 'react'
import type { HeightName } from '../../../core/kitchen/kinds'
import { signedNumber } from '../../../core/words/format'
import { type Block, drawnFrom, missedAt, type PictureBar, stretchAt } from './blocks'
import { fullName, shortName } from './names'
import { BREAK, HEADER, type Scale, type Stretch, ticksOf } from './scale'
import type { Wishing } from './use-wishing'

interface Props {
  readonly blocks: readonly Block[]
  readonly scale: Scale
  /** The floor's highest place, where it is known. */
  readonly floor: number | undefined
  readonly chosen: HeightName
  /** Where a height is shown: as wished, else as the plan has it. */
  readonly standsAt: (block: Block) => number
  readonly wishing: Wishing
  readonly onChoose: (of: HeightName) => void
}

/** The drawing grows with the letters. */
const rem = (length: number): string => `${Math.round((length / 16) * 10000) / 10000}rem`
const down = (y: number): CSSProperties => ({ top: rem(y) })
const between = (top: number, bottom: number): CSSProperties => ({
  top: rem(top),
  height: rem(Math.max(0, bottom - top)),
})

/** The picture itself: one scale, the heights as things to take hold of, their demands as upright bars. */
export function Upright(props: Props) {
  const { blocks, scale, floor } = props
  return (
    <div className="upright-scroll">
      <div className="upright" data-scale="" style={{ height: rem(scale.height) }}>
        {scale.stretches.map((stretch, i) => (
          <OneStretch key={stretch.bottom} stretch={stretch} isLast={i === 0} {...props} />
        ))}
        <p className="level the-line" style={down(scale.y(0))} aria-hidden="true">
          <span>the line</span>
        </p>
        {floor !== undefined && (
          <p className="level the-floor" style={down(scale.y(floor))} aria-hidden="true">
            <span>floor, highest place</span>
          </p>
        )}
        {([0, 1] as const).map((column) => (
          <div key={column} className="column" data-column={column}>
            {blocks
              .filter((block) => block.column === column)
              .map((block) => (
                <OneBlock key={block.of} block={block} {...props} />
              ))}
          </div>
        ))}
      </div>
    </div>
  )
}

/** A piece of the scale: its ticks, what stands in it, and what was left out above it. */
function OneStretch({
  stretch,
  isLast,
  scale,
  blocks,
  chosen,
}: Props & { readonly stretch: Stretch; readonly isLast: boolean }) {
  const above = scale.stretches[scale.stretches.indexOf(stretch) - 1]
  return (
    <div aria-hidden="true">
      <div className="stretch" style={between(stretch.y, scale.y(stretch.bottom))} />
      {!isLast && above !== undefined && (
        <p className="left-out" style={between(stretch.y - HEADER - BREAK, stretch.y - HEADER)}>
          <span>{Math.round(above.bottom - stretch.top)} mm left out</span>
        </p>
      )}
      {([0, 1] as const).map((column) => {
        const named = blocks.filter((b) => b.column === column && stretchAt(b.at, scale) === stretch)
        return named.length === 0 ? null : (
          <p key={column} className="named" data-column={column} style={down(stretch.y - HEADER)}>
            {named.map(({ of }, i) => (
              <span key={of} className={of === chosen ? 'chosen' : undefined}>
                {i > 0 && ', '}
                {shortName(of)}
              </span>
            ))}
          </p>
        )
      })}
      {ticksOf(stretch, scale.perMm).map((mm) => (
        <span key={mm} className="tick" style={down(scale.y(mm))}>
          {signedNumber(mm)}
        </span>
      ))}
    </div>
  )
}

/** One height: the room it has, its demands, where the plan has it, and the handle to take hold of. */
function OneBlock({ block, scale, chosen, standsAt, wishing, onChoose }: Props & { readonly block: Block }) {
  const { of, value, at, bars } = block
  const stands = standsAt(block)
  const { lowest, highest } = value
  const isAgreed = lowest !== null && highest !== null && highest >= lowest && !value.achieved
  const missed = missedAt(block, stands)
  return (
    <div className={of === chosen ? 'block chosen' : 'block'} data-height={of}>
      {isAgreed && <div className="room" style={between(scale.y(highest), scale.y(lowest))} />}
      {bars.map((bar, i) => (
        <OneBar
          key={bar.id}
          bar={bar}
          at={at}
          scale={scale}
          isMissed={!bar.isMet || missed.includes(bar)}
          place={(i + 0.5) / bars.length}
        />
      ))}
      <div className="planned" style={down(scale.y(at))} />
      <div
        className={stands === at ? 'handle' : 'handle wished'}
        role="slider"
        tabIndex={0}
        aria-orientation="vertical"
        aria-label={fullName(of)}
        aria-valuemin={Math.round(scale.stretches.at(-1)?.bottom ?? stands)}
        aria-valuemax={Math.round(scale.stretches[0]?.top ?? stands)}
        aria-valuenow={Math.round(stands)}
        aria-valuetext={spoken(block, stands, missed)}
        aria-disabled={value.achieved ? true : undefined}
        style={down(scale.y(stands))}
        onFocus={() => onChoose(of)}
        {...(value.achieved ? {} : wishing.handle(of, stands, scale))}
      >
        {signedNumber(stands)}
      </div>
    </div>
  )
}

/** "−858 mm from the line. There is room from −863 to −853." */
function spoken({ at, value }: Block, stands: number, missed: readonly PictureBar[]): string {
  const { lowest, highest, achieved } = value
  const said = [`${signedNumber(stands)} mm from the line.`]
  if (achieved) said.push('Read on the day: it is not chosen any more.')
  else if (stands !== at) said.push(`Wished; the plan has ${signedNumber(at)}.`)
  if (!achieved && lowest !== null && highest !== null)
    said.push(`There is room from ${signedNumber(lowest)} to ${signedNumber(highest)}.`)
  if (missed.length > 0) said.push(`Past: ${missed.map(({ title }) => title).join(' ')}`)
  return said.join(' ')
}

/** Room for the letter of a bar. */
const LETTER = 22

interface BarProps {
  readonly bar: PictureBar
  readonly at: number
  readonly scale: Scale
  readonly isMissed: boolean
  /** Across the block, from 0 to 1. */
  readonly place: number
}

/** One demand as an upright bar; of several together the ends of each are ticked along it. */
function OneBar({ bar, at, scale, isMissed, place }: BarProps) {
  const { min, max, parts, letter, sets, id } = bar
  const [lowest, highest] = drawnFrom(bar, at, scale)
  const [top, bottom] = [scale.y(highest), scale.y(lowest)]
  const within = (mm: number): CSSProperties => down(scale.y(mm) - top)
  // Over its upper end, or at the top of the stretch where it goes on past that.
  const head = scale.y(stretchAt(at, scale)?.top ?? highest)
  const letterAt = top < head ? head + 1 - top : -LETTER
  const style = { ...between(top, bottom), '--place': place } as CSSProperties
  const ends = (which: 'min' | 'max') =>
    parts.length < 2 ? [] : [...new Set(parts.flatMap((part) => (part[which] === null ? [] : [part[which]])))]
  return (
    <div className={isMissed ? 'demand missed' : 'demand'} data-demand={id} style={style} aria-hidden="true">
      <i />
      {[...ends('min'), ...ends('max')].map((mm) => (
        <b key={mm} className="one-of" style={within(mm)} />
      ))}
      {min !== null && <b className={sets.includes('lower') ? 'binds' : undefined} style={within(min)} />}
      {max !== null && max !== min && (
        <b className={sets.includes('upper') ? 'binds' : undefined} style={within(max)} />
      )}
      <span style={down(letterAt)}>{letter}</span>
    </div>
  )
}
