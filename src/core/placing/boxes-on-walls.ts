import { type Basis, type Figure, hasValue, known } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { WallId } from '../plan/types'
import type { Survey } from '../survey/survey'
import { boxNames } from '../units/box-name'

/** Something fixed and box-shaped on a wall: from where to where along it, out from it and up it, as figures. */
export interface BoxOnWall {
  readonly id: string
  readonly kind: Kitchen['boxes'][number]['kind']
  readonly name: string
  readonly wall: WallId
  readonly left: Figure
  readonly right: Figure
  readonly near: Figure
  readonly out: Figure
  readonly bottom: Figure
  readonly top: Figure
}

const atTheFace: Basis = { kind: 'geometry', why: 'on the face of the wall, where nothing else is said' }

/** Boxings, beams, radiators, skirtings and the like, each on its wall, left end first whichever way it was typed. */
export function boxesOnWalls(
  kitchen: Pick<Kitchen, 'boxes' | 'walls'>,
  survey: Pick<Survey, 'along' | 'height'>,
): readonly BoxOnWall[] {
  const names = boxNames(kitchen)
  const face = known(0, 0, 'mm', [], atTheFace)
  return kitchen.boxes.map((box) => {
    const ends = [survey.along(box.wall, box.left), survey.along(box.wall, box.right)] as [Figure, Figure]
    const [a, b] = ends
    const [left, right] = hasValue(a) && hasValue(b) && a.value > b.value ? [b, a] : [a, b]
    const at = { wall: box.wall, along: left, out: face }
    return {
      id: box.id,
      kind: box.kind,
      name: names.get(box.id) ?? box.id,
      wall: box.wall,
      left,
      right,
      near: hasValue(box.near) ? box.near : face,
      out: box.out,
      bottom: survey.height(box.bottom, at),
      top: survey.height(box.top, at),
    }
  })
}
