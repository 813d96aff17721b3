import { createRoot, extend, type ReconcilerRoot } from '@react-three/fiber'
import { Component, type ReactNode, useInsertionEffect, useLayoutEffect, useRef, useState } from 'react'
import { Color, Group } from 'three'
import type { BoxSize } from './use-box-size'

// Only what the picture is made of: the whole of the library would be loaded with a canvas that knows all its names.
extend({ Color, Group })

interface Props {
  readonly size: BoxSize
  /** Every part in its own flat colour: no smoothing, and the pixels are kept to be read. */
  readonly isIdPicture: boolean
  readonly children: ReactNode
}

/** The canvas, and the picture's own tree of components in it; what fails in there fails here. */
export function SceneCanvas({ size, isIdPicture, children }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const root = useRef<ReconcilerRoot<HTMLCanvasElement> | null>(null)
  const [failed, setFailed] = useState<unknown>(null)
  if (failed !== null) throw failed
  // An insertion effect is taken back only when the canvas is taken out of the page. Layout effects are taken back and made
  // again while it stays, under StrictMode and while what is round it is hidden: the picture would be given up with its
  // graphics context each time, which a canvas does not get a second time.
  useInsertionEffect(
    () => () => {
      root.current?.unmount()
      root.current = null
    },
    [],
  )
  useLayoutEffect(() => {
    if (canvas.current === null) return
    root.current ??= createRoot(canvas.current)
    root.current
      .configure({
        frameloop: 'demand',
        flat: true,
        dpr: isIdPicture ? 1 : [1, 2],
        gl: { antialias: !isIdPicture, alpha: false, preserveDrawingBuffer: isIdPicture },
        size: { ...size, top: 0, left: 0 },
      })
      .catch(setFailed)
    root.current.render(<Fails onFail={setFailed}>{children}</Fails>)
  })
  return (
    <div aria-hidden="true">
      <canvas ref={canvas} />
    </div>
  )
}

/** Tells the page's tree what failed in the picture's. */
class Fails extends Component<{ onFail: (error: unknown) => void; children: ReactNode }> {
  override state = { hasFailed: false }
  static getDerivedStateFromError = () => ({ hasFailed: true })
  override componentDidCatch(error: unknown) {
    this.props.onFail(error)
  }
  override render() {
    return this.state.hasFailed ? null : this.props.children
  }
}
