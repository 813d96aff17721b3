import { type RefObject, useLayoutEffect, useState } from 'react'

export interface BoxSize {
  readonly width: number
  readonly height: number
}

/** Size of an element in CSS pixels, kept up with; null until it has one. */
export function useBoxSize(box: RefObject<HTMLElement | null>): BoxSize | null {
  const [size, setSize] = useState<BoxSize | null>(null)
  useLayoutEffect(() => {
    const node = box.current
    if (node === null) return
    const read = () => {
      const { clientWidth: width, clientHeight: height } = node
      if (width > 0 && height > 0) {
        setSize((was) => (was?.width === width && was.height === height ? was : { width, height }))
      }
    }
    read()
    const observer = new ResizeObserver(read)
    observer.observe(node)
    return () => observer.disconnect()
  }, [box])
  return size
}
