import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react'
import type { Plan } from '../../core/plan/types'
import { useActions } from '../app-context'
import { words } from '../words'
import { stageLabels } from './stage-lettering'
import { tapeTarget } from './step-keys'
import { numberEvery, stretches, type TapeScale, tapeScale } from './tape-scale'

/** Least distance between ticks, so that a finger can hit one. */
const LEAST_PITCH = { low: 10, high: 6 }
const LETTER = { low: 8.8, high: 7.3 }
/** Where the line of a stage begins, under the figures. */
const BEGIN = 44
/** Lower than this, in the hand: larger letters, and the hook hangs inside. */
const LOW = 80
/** Lower still there is room only for ticks and figures. */
const LOWEST = 60

/** The timeline as an enamelled tape: one tick an operation, stages lettered along it, the hook is now. */
export function Tape({ plan, index }: { readonly plan: Plan; readonly index: number }) {
  const actions = useActions()
  const box = useRef<HTMLDivElement>(null)
  const { width, height } = useSize(box)
  const count = plan.operations.length
  const isLow = height < LOW
  const scale = tapeScale(count, index, width, isLow ? LEAST_PITCH.low : LEAST_PITCH.high)
  const operation = plan.operations[index]
  const go = (event: PointerEvent<HTMLDivElement>) => {
    actions.goToIndex(scale.indexAt(event.clientX - event.currentTarget.getBoundingClientRect().left))
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const to = tapeTarget(event.key, index, count)
    if (to === undefined) return
    event.preventDefault()
    event.stopPropagation()
    actions.goToIndex(to)
  }
  return (
    <div
      ref={box}
      className="tape"
      role="slider"
      tabIndex={0}
      aria-label="Step"
      aria-valuemin={1}
      aria-valuemax={count}
      aria-valuenow={index + 1}
      aria-valuetext={operation === undefined ? '' : `${index + 1} of ${count}: ${words(operation.title)}`}
      onKeyDown={onKeyDown}
      onPointerDown={(e) => {
        e.currentTarget.setPointerCapture(e.pointerId)
        go(e)
      }}
      onPointerMove={(e) => {
        if (e.buttons === 1) go(e)
      }}
    >
      <svg aria-hidden="true" focusable="false">
        <rect className="done" x={0} y={0} width={Math.max(0, scale.x(index))} height={height} />
        <Ticks count={count} scale={scale} isLow={isLow} />
        {height >= LOWEST && (
          <Stages plan={plan} scale={scale} index={index} width={width} height={height} isLow={isLow} />
        )}
        <Hook x={scale.x(index)} width={width} height={height} isLow={isLow} label={`${index + 1}`} />
      </svg>
    </div>
  )
}

function useSize(box: RefObject<HTMLDivElement | null>) {
  const [size, setSize] = useState({ width: 1000, height: 82 })
  useEffect(() => {
    const element = box.current
    if (element === null || typeof ResizeObserver === 'undefined') return
    const watch = new ResizeObserver(() =>
      setSize({ width: element.clientWidth, height: element.clientHeight }),
    )
    watch.observe(element)
    return () => watch.disconnect()
  }, [box])
  return size
}

function Ticks({
  count,
  scale,
  isLow,
}: {
  readonly count: number
  readonly scale: TapeScale
  readonly isLow: boolean
}) {
  const every = numberEvery(scale.pitch)
  const numbers = Array.from({ length: count }, (_, i) => i + 1)
  return (
    <>
      {numbers.map((n) => (
        <line
          key={n}
          className="tick"
          x1={scale.x(n - 1)}
          x2={scale.x(n - 1)}
          y1={0}
          y2={n % 10 === 0 ? 22 : n % 5 === 0 ? 17 : 11}
        />
      ))}
      {numbers
        .filter((n) => n % every === 0)
        .map((n) => (
          <text key={n} x={scale.x(n - 1)} y={isLow ? 40 : 39} textAnchor="middle">
            {n}
          </text>
        ))}
    </>
  )
}

/** Where each stage begins, and its name from there, its line bent where names had to make room for one another. */
function Stages({
  plan,
  scale,
  index,
  width,
  height,
  isLow,
}: {
  readonly plan: Plan
  readonly scale: TapeScale
  readonly index: number
  readonly width: number
  readonly height: number
  readonly isLow: boolean
}) {
  const all = stretches(plan.operations)
  const labels = stageLabels(all, scale, index, width, isLow ? LETTER.low : LETTER.high)
  const begins = (from: number) => scale.x(from) - scale.pitch / 2
  return (
    <>
      {all.slice(1).map(({ from }) => (
        <line
          key={from}
          className="stage-tick"
          x1={begins(from)}
          x2={begins(from)}
          y1={BEGIN}
          y2={BEGIN + 6}
        />
      ))}
      {labels.map(({ from, name, at, x }) => {
        const isNow = all.some((s) => s.from === from && index >= s.from && index <= s.to)
        return (
          <g key={from}>
            <path
              className="stage-tick"
              d={`M${at} ${BEGIN + 6}L${x} ${BEGIN + 13}V${height - 6}`}
              fill="none"
            />
            <text className={isNow ? 'stage-name now' : 'stage-name'} x={x + 5} y={height - (isLow ? 8 : 11)}>
              {name}
            </text>
          </g>
        )
      })}
    </>
  )
}

interface HookProps {
  readonly x: number
  readonly width: number
  readonly height: number
  readonly isLow: boolean
  readonly label: string
}

/** The hook of the tape, with the number of the step. On a low tape it hangs inside, and the slip says the number. */
function Hook({ x, width, height, isLow, label }: HookProps) {
  const top = isLow ? 0 : -18
  // The stages' names lie under its end; the number goes to the other side at the end of the tape.
  const end = isLow ? Math.min(height, 46) : 46
  const isAtEnd = x > width - 48
  return (
    <g className="hook">
      <path d={`M${x - 8} ${top}h16v10l-8 8-8-8z`} />
      <rect x={x - 1.5} y={top + 10} width={3} height={end - top - 10} />
      {!isLow && (
        <text x={isAtEnd ? x - 14 : x + 14} y={-5} textAnchor={isAtEnd ? 'end' : 'start'}>
          {label}
        </text>
      )}
    </g>
  )
}
