import { useFrame, useThree } from '@react-three/fiber'
import { type ReactNode, type RefObject, useEffect, useMemo, useRef } from 'react'
import { type Group, Matrix4 } from 'three'
import { type Carriage, extentOf, roomPoint } from '../core/plan/travel-path'
import type { UnitPlan } from '../core/plan/types'
import { FRAME, type Now } from './run'

interface Props {
  readonly unit: UnitPlan
  /** Where it is as it was last thought over; `now`: where it is in the frame that is drawn. */
  readonly at: Carriage
  readonly now: RefObject<Now | null>
  readonly children: ReactNode
}

/** What is inside goes where the unit is carried: its own frame, x along its width, y behind its back, z up. */
export function Carried({ unit, at, now, children }: Props) {
  const invalidate = useThree((s) => s.invalidate)
  const group = useRef<Group>(null)
  const matrix = useMemo(() => matrixOf(unit, at), [unit, at])
  useEffect(() => {
    if (matrix !== undefined) invalidate()
  }, [matrix, invalidate])
  useFrame(() => {
    const place = now.current?.unit ?? null
    if (place !== null) group.current?.matrix.copy(place)
  }, FRAME.things)
  return (
    <group ref={group} name={`unit:${unit.unit}`} matrix={matrix} matrixAutoUpdate={false}>
      {children}
    </group>
  )
}

export function matrixOf(unit: UnitPlan, at: Carriage): Matrix4 {
  return setMatrix(new Matrix4(), unit, at)
}

/** Read off the pose itself: where the corner and one millimetre along each own axis are. */
export function setMatrix(matrix: Matrix4, unit: UnitPlan, at: Carriage): Matrix4 {
  const extent = extentOf(unit.solid)
  const point = (x: number, y: number, z: number) => roomPoint(at, extent, { x, y, z })
  const [o, x, y, z] = [point(0, 0, 0), point(1, 0, 0), point(0, -1, 0), point(0, 0, 1)]
  // biome-ignore format: rows of a matrix
  return matrix.set(
    x.x - o.x, y.x - o.x, z.x - o.x, o.x,
    x.y - o.y, y.y - o.y, z.y - o.y, o.y,
    x.z - o.z, y.z - o.z, z.z - o.z, o.z,
    0, 0, 0, 1,
  )
}
