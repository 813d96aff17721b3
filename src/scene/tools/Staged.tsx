import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import type { Matrix4 } from 'three'
import { Drawing, type IdPicture } from '../Drawing'
import type { Piece } from './pieces'

interface Props {
  /** What one act shows. */
  readonly pieces: readonly Piece[]
  /** 0..1 through it. */
  readonly progress: number
  /** How far the unit that hands have hold of has moved since the operation began; null: nothing moves. */
  readonly carried: Matrix4 | null
  readonly idPicture: IdPicture | null
}

/** The tool of one act, where it is at one moment of it. */
export function Staged({ pieces, progress, carried, idPicture }: Props) {
  const invalidate = useThree((s) => s.invalidate)
  const places = useMemo(
    () =>
      pieces.map(({ at }) => {
        const own = at(progress)
        return carried === null ? own : carried.clone().multiply(own)
      }),
    [pieces, progress, carried],
  )
  useEffect(() => {
    if (places.length > 0) invalidate()
  }, [places, invalidate])
  return pieces.map(({ name, sketch }, i) => (
    <group key={name} name={name} matrix={places[i] as Matrix4} matrixAutoUpdate={false}>
      <Drawing sketch={sketch} idPicture={idPicture} />
    </group>
  ))
}
