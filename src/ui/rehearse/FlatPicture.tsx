import type { Operation, Plan } from '../../core/plan/types'
import { unitsOn } from '../paper/wall/pen'
import { WallDrawing } from '../paper/wall/WallDrawing'

/** Where there is no 3D: the drawing of the wall the operation is about. */
export function FlatPicture({ plan, operation }: { readonly plan: Plan; readonly operation: Operation }) {
  const frame =
    plan.walls.find((w) => w.wall === operation.wall) ??
    plan.walls.find((w) => unitsOn(plan, w.wall).length > 0) ??
    plan.walls[0]
  return (
    <div className="flat">
      {frame === undefined ? (
        <p>There is no wall to draw yet.</p>
      ) : (
        <WallDrawing plan={plan} frame={frame} id="bands-stage" />
      )}
    </div>
  )
}
