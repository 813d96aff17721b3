import { addAfterEffect, useThree } from '@react-three/fiber'
import { useEffect } from 'react'

/** Told after every frame that was drawn, with how many draw calls it took and which one it was. */
export function FrameWatch({ onFrame }: { onFrame: (drawCalls: number, frame: number) => void }) {
  const gl = useThree((s) => s.gl)
  const invalidate = useThree((s) => s.invalidate)
  useEffect(() => {
    let last = -1
    const stop = addAfterEffect(() => {
      const { frame, calls } = gl.info.render
      if (frame === last || calls === 0) return
      last = frame
      onFrame(calls, frame)
    })
    invalidate()
    return stop
  }, [gl, invalidate, onFrame])
  return null
}
