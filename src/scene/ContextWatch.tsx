import { useThree } from '@react-three/fiber'
import { useEffect } from 'react'

/**
 * Tells when the graphics context goes and comes back: phones take it away in the background. The picture is drawn anew
 * on return, because nothing else would ask for a frame.
 */
export function ContextWatch({ onChange }: { onChange: (isLost: boolean) => void }) {
  const gl = useThree((s) => s.gl)
  const invalidate = useThree((s) => s.invalidate)
  useEffect(() => {
    const canvas = gl.domElement
    const lost = (event: Event) => {
      event.preventDefault()
      onChange(true)
    }
    const restored = () => {
      onChange(false)
      invalidate()
    }
    canvas.addEventListener('webglcontextlost', lost)
    canvas.addEventListener('webglcontextrestored', restored)
    return () => {
      canvas.removeEventListener('webglcontextlost', lost)
      canvas.removeEventListener('webglcontextrestored', restored)
    }
  }, [gl, invalidate, onChange])
  return null
}
