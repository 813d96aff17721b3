import { derive, hasValue, valueOf } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { Survey } from '../survey/survey'
import type { Obstacle, PlanPoint } from './types'

const onTheFace = derive('mm', { kind: 'geometry', why: 'on the face of the wall' }, [], () => 0)

/**
 * Boxings, beams, chimney breasts: what is fixed and box-shaped. A height nobody has read leaves that end open, so that
 * the thing is in the way rather than forgotten; one whose place on the wall is not known has no place in the room.
 */
export function obstacles(kitchen: Kitchen, survey: Survey): readonly Obstacle[] {
  return kitchen.boxes.flatMap((box) => {
    const left = survey.along(box.wall, box.left)
    const [l, r, near, far] = [left, survey.along(box.wall, box.right), box.near, box.out].map(valueOf)
    if (l === undefined || r === undefined || far === undefined) return []
    const corner = (along: number, out: number) => survey.toRoom(box.wall, along, out)
    const polygon = [corner(l, near ?? 0), corner(r, near ?? 0), corner(r, far), corner(l, far)]
    if (polygon.some((p) => p === null)) return []
    const at = { wall: box.wall, along: left, out: onTheFace }
    const [bottom, top] = [survey.height(box.bottom, at), survey.height(box.top, at)]
    return [
      {
        id: box.id,
        polygon: polygon as PlanPoint[],
        bottom: hasValue(bottom) ? bottom.value : null,
        top: hasValue(top) ? top.value : null,
      },
    ]
  })
}
