import type { CSSProperties } from 'react'
import type { HeightValue } from '../../../core/plan/types'
import { keyOf, words } from '../../words'
import { type Bar, reachOf, roundStep } from './bars'

interface Props {
  readonly bars: readonly Bar[]
  readonly value: HeightValue
  readonly chosen: number
}

/** Where a height stands on the scale, in hundredths of its length. */
type Place = (z: number) => number

/** One bar a demand, over one scale; the strip is where they agree, the line is what was chosen. */
export function HeightDrawing({ bars, value, chosen }: Props) {
  const [low, high] = reachOf(bars, chosen)
  const at: Place = (z) => ((Math.max(low, Math.min(high, z)) - low) / (high - low)) * 100
  const isAgreed = value.lowest !== null && value.highest !== null && value.highest >= value.lowest
  const agree = isAgreed ? [at(value.lowest as number), at(value.highest as number)] : [0, 0]
  const style = {
    '--from': `${agree[0]}%`,
    '--to': `${agree[1]}%`,
    '--chosen': `${at(chosen)}%`,
  } as CSSProperties
  return (
    <ul className="bars" style={style}>
      <li className="bars-scale" aria-hidden="true">
        <span />
        <Scale low={low} high={high} at={at} />
      </li>
      {bars.map((bar) => (
        <li key={bar.id}>
          <p className={bar.isMet ? undefined : 'stop'}>
            {bar.title}
            {bar.deciding.map((m) => (
              <small key={keyOf(m)}>{words(m)}</small>
            ))}
            <span className="visually-hidden"> {spoken(bar)}.</span>
            {!bar.isMet && ' Not met.'}
          </p>
          <div className={bar.isMet ? 'track' : 'track unmet'} aria-hidden="true">
            <OneBar bar={bar} at={at} />
          </div>
        </li>
      ))}
    </ul>
  )
}

function spoken({ min, max }: Bar): string {
  if (min === null) return `At most ${tenths(max as number)}`
  if (max === null) return `At least ${tenths(min)}`
  return `From ${tenths(min)} to ${tenths(max)}`
}

function Scale({ low, high, at }: { readonly low: number; readonly high: number; readonly at: Place }) {
  const step = roundStep(high - low, 7)
  const first = Math.ceil(low / step) * step
  const marks = Array.from({ length: Math.floor((high - first) / step) + 1 }, (_, i) => first + i * step)
  return (
    <div className="scale">
      {marks.map((z) => (
        <span key={z} style={{ left: `${at(z)}%` }}>
          {tenths(z)}
        </span>
      ))}
    </div>
  )
}

function tenths(z: number): string {
  const rounded = Math.round(z * 10) / 10
  return rounded > 0 ? `+${rounded}` : `${rounded}`.replace('-', '−')
}

const NARROW = 24

function OneBar({ bar: { min, max }, at }: { readonly bar: Bar; readonly at: Place }) {
  const from = min === null ? 0 : at(min)
  const to = max === null ? 100 : at(max)
  const outside = to - from < NARROW
  if (min !== null && min === max) return <End at={from} text={tenths(min)} isBefore={false} />
  return (
    <>
      <i className="bar" style={{ left: `${from}%`, width: `${Math.max(0, to - from)}%` }} />
      {min !== null && <End at={from} text={tenths(min)} isBefore={outside && from > 10} />}
      {max !== null && <End at={to} text={tenths(max)} isBefore={!outside || to > 90} />}
    </>
  )
}

function End({
  at,
  text,
  isBefore,
}: {
  readonly at: number
  readonly text: string
  readonly isBefore: boolean
}) {
  return (
    <b className={isBefore ? 'end before' : 'end'} style={{ left: `${at}%` }}>
      <span>{text}</span>
    </b>
  )
}
