import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react'
import { type Plan, STAGES } from '../../core/plan/types'
import { useActions } from '../app-context'
import { STAGE_NAMES, words } from '../words'

/** The timeline as an enamelled tape: one tick an operation, stages lettered along it, the hook is now. */
export function Tape({ plan, index }: { readonly plan: Plan; readonly index: number }) {
  const actions = useActions()
  const box = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(1000)
  const [height, setHeight] = useState(82)
  useEffect(() => {
    const el = box.current
    if (el === null) return
    const watch = new ResizeObserver(() => {
      setWidth(el.clientWidth)
      setHeight(el.clientHeight)
    })
    watch.observe(el)
    return () => watch.disconnect()
  }, [])
  const count = plan.operations.length
  const small = height < 70
  const pitch = Math.max((width - 56) / Math.max(count, 1), small ? 11 : 7)
  const wanted = 28 + pitch * index
  const total = 56 + pitch * count
  const shift = total <= width ? 0 : Math.min(Math.max(wanted - width / 2, 0), total - width)
  const x = (i: number) => 28 + pitch * i - shift
  const go = (event: PointerEvent<HTMLDivElement>) => {
    const at = event.clientX - event.currentTarget.getBoundingClientRect().left
    actions.goToIndex(Math.round((at + shift - 28) / pitch - 0.5))
  }
  const keys: Readonly<Record<string, number>> = {
    ArrowRight: index + 1,
    ArrowUp: index + 1,
    ArrowLeft: index - 1,
    ArrowDown: index - 1,
    PageDown: index + 10,
    PageUp: index - 10,
    Home: 0,
    End: count - 1,
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const to = keys[event.key]
    if (to === undefined) return
    event.preventDefault()
    event.stopPropagation()
    actions.goToIndex(to)
  }
  const operation = plan.operations[index]
  return (
    <div
      ref={box}
      className="tape"
      role="slider"
      tabIndex={0}
      aria-label="Operation"
      aria-valuemin={1}
      aria-valuemax={count}
      aria-valuenow={index + 1}
      aria-valuetext={operation === undefined ? '' : `${index + 1}: ${words(operation.title)}`}
      onKeyDown={onKeyDown}
      onPointerDown={(e) => {
        e.currentTarget.setPointerCapture(e.pointerId)
        go(e)
      }}
      onPointerMove={(e) => {
        if (e.buttons === 1) go(e)
      }}
    >
      <svg aria-hidden="true" width={width} height={height}>
        <rect className="done" x={0} y={0} width={Math.max(0, x(index))} height={height} />
        {plan.operations.map((o, i) => (
          <line
            key={o.id}
            className="tick"
            x1={x(i)}
            x2={x(i)}
            y1={0}
            y2={(i + 1) % 10 === 0 ? 22 : (i + 1) % 5 === 0 ? 16 : 10}
          />
        ))}
        {plan.operations.map((o, i) =>
          (i + 1) % 10 === 0 ? (
            <text key={o.id} x={x(i)} y={small ? 36 : 38} textAnchor="middle">
              {i + 1}
            </text>
          ) : null,
        )}
        {!small && <StageNames plan={plan} x={x} height={height} width={width} />}
        <g className="hook">
          <path d={`M${x(index) - 8} 0h16v10l-8 8-8-8z`} />
          <rect x={x(index) - 1.5} y={0} width={3} height={height} />
        </g>
      </svg>
    </div>
  )
}

interface StageProps {
  readonly plan: Plan
  readonly x: (i: number) => number
  readonly height: number
  readonly width: number
}

/** A stage's name where it fits between its own tick and the next; else nothing, the slip says it anyway. */
function StageNames({ plan, x, height, width }: StageProps) {
  const starts = STAGES.map((stage) => ({ stage, at: plan.operations.findIndex((o) => o.stage === stage) }))
    .filter((s) => s.at >= 0)
    .sort((a, b) => a.at - b.at)
  return starts.map(({ stage, at }, i) => {
    const left = x(at)
    const right = i + 1 < starts.length ? x((starts[i + 1] as { at: number }).at) : width
    const name = STAGE_NAMES[stage]
    return (
      <g key={stage}>
        <line className="stage-tick" x1={left - 0.5} x2={left - 0.5} y1={0} y2={height} />
        {right - left > name.length * 6.9 + 8 && (
          <text className="stage-name" x={left + 5} y={height - 12}>
            {name}
          </text>
        )}
      </g>
    )
  })
}
