import { useThree } from '@react-three/fiber'
import { type ReactNode, useEffect, useMemo } from 'react'
import { Matrix4 } from 'three'
import { type Carriage, extentOf, roomPoint } from '../core/plan/travel-path'
import type { UnitPlan } from '../core/plan/types'

/** What is inside goes where the unit is carried: its own frame, x along its width, y behind its back, z up. */
export function Carried({ unit, at, children }: { unit: UnitPlan; at: Carriage; children: ReactNode }) {
  const invalidate = useThree((s) => s.invalidate)
  const matrix = useMemo(() => matrixOf(unit, at), [unit, at])
  useEffect(() => {
    if (matrix !== undefined) invalidate()
  }, [matrix, invalidate])
  return (
    <group name={`unit:${unit.unit}`} matrix={matrix} matrixAutoUpdate={false}>
      {children}
    </group>
  )
}

/** Read off the pose itself: where the corner and one millimetre along each own axis are. */
export function matrixOf(unit: UnitPlan, at: Carriage): Matrix4 {
  const extent = extentOf(unit.solid)
  const point = (x: number, y: number, z: number) => roomPoint(at, extent, { x, y, z })
  const [o, x, y, z] = [point(0, 0, 0), point(1, 0, 0), point(0, -1, 0), point(0, 0, 1)]
  // biome-ignore format: rows of a matrix
  return new Matrix4().set(
    x.x - o.x, y.x - o.x, z.x - o.x, o.x,
    x.y - o.y, y.y - o.y, z.y - o.y, o.y,
    x.z - o.z, y.z - o.z, z.z - o.z, o.z,
    0, 0, 0, 1,
  )
}
