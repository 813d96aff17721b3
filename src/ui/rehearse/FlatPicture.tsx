import { useLayoutEffect, useRef } from 'react'
import type { Operation, Plan } from '../../core/plan/types'
import { wallName } from '../../core/words/plan-names'
import { penFor, unitsOn } from '../paper/wall/pen'
import { WallDrawing } from '../paper/wall/WallDrawing'
import { middleOf } from './middle-of'

/**
 * Where there is no 3D: the drawing of the wall the operation is about, so large that it can be read, pushed along to where
 * the work is.
 */
export function FlatPicture({ plan, operation }: { readonly plan: Plan; readonly operation: Operation }) {
  const frame =
    plan.walls.find((w) => w.wall === operation.wall) ??
    plan.walls.find((w) => unitsOn(plan, w.wall).length > 0) ??
    plan.walls[0]
  const box = useRef<HTMLElement>(null)
  useLayoutEffect(() => {
    const svg = box.current?.querySelector('svg')
    const pen = frame === undefined ? null : penFor(plan, frame)
    if (box.current === null || svg == null || frame === undefined || pen === null) return
    const [left = 0, top = 0, width = 1] = pen.viewBox.split(' ').map(Number)
    const { along, height } = middleOf(plan, operation, frame.wall, pen.span)
    const scale = svg.getBoundingClientRect().width / width
    box.current.scrollLeft = (along - left) * scale - box.current.clientWidth / 2
    box.current.scrollTop = (pen.y(height) - top) * scale - box.current.clientHeight / 2
  }, [plan, operation, frame])
  if (frame === undefined) return <p className="flat">There is no wall to draw yet.</p>
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard
    <section className="flat" aria-label={`Drawing of ${wallName(frame.wall, plan)}`} tabIndex={0} ref={box}>
      <WallDrawing plan={plan} frame={frame} id="bands-stage" />
    </section>
  )
}
