import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useMemo, useRef } from 'react'
import { type Group, Matrix4 } from 'three'
import type { Act } from '../../core/staging/staging'
import { Drawing, type IdPicture } from '../Drawing'
import { FRAME, type Now } from '../run'
import type { Piece } from './pieces'

interface Props {
  readonly act: Act | null
  /** What that act shows. */
  readonly pieces: readonly Piece[]
  /** 0..1 through it. */
  readonly progress: number
  /** The unit that hands have hold of: where it is, and back from where it was as the operation began; null: none is carried. */
  readonly carried: { readonly at: Matrix4; readonly fromStart: Matrix4 } | null
  readonly now: RefObject<Now | null>
  readonly idPicture: IdPicture | null
}

const along = new Matrix4()

/** The tool of one act, where it is at one moment of it. */
export function Staged({ act, pieces, progress, carried, now, idPicture }: Props) {
  const invalidate = useThree((s) => s.invalidate)
  const groups = useRef<(Group | null)[]>([])
  const places = useMemo(
    () =>
      pieces.map(({ at }) => {
        const own = at(progress)
        return carried === null ? own : carried.at.clone().multiply(carried.fromStart).multiply(own)
      }),
    [pieces, progress, carried],
  )
  useEffect(() => {
    if (places.length > 0) invalidate()
  }, [places, invalidate])
  useFrame(() => {
    const { current } = now
    if (current === null) return
    // One movement goes over into the next in the frame after: until then it is at its end.
    const at = current.act === act ? current.progress : 1
    for (const [i, piece] of pieces.entries()) {
      const group = groups.current[i]
      if (group == null) continue
      group.matrix.copy(piece.at(at))
      if (carried !== null && current.unit !== null)
        group.matrix.premultiply(along.copy(current.unit).multiply(carried.fromStart))
    }
  }, FRAME.things)
  return pieces.map(({ name, sketch }, i) => (
    <group
      key={name}
      ref={(group) => {
        groups.current[i] = group
      }}
      name={name}
      matrix={places[i] as Matrix4}
      matrixAutoUpdate={false}
    >
      <Drawing sketch={sketch} idPicture={idPicture} />
    </group>
  ))
}
