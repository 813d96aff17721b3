import { useEffect, useState } from 'react'

/** How long a part travels its path on the screen, ms. */
const TRAVEL = 2600

interface Motion {
  /** 0..1 through the operation. */
  readonly t: number
  readonly again: () => void
}

/**
 * Runs once through the motion of an operation when it comes to the hook. Nothing moves at the first opening, for an
 * operation that moves nothing, or for people who ask for none: they see where it ends.
 */
export function useMotion(id: string, moves: boolean, reducedMotion: boolean): Motion {
  const [run, setRun] = useState({ id, count: 0 })
  const [t, setT] = useState(1)
  if (run.id !== id) {
    setRun({ id, count: run.count + 1 })
    setT(moves && !reducedMotion ? 0 : 1)
  }
  const { count } = run
  useEffect(() => {
    if (count === 0 || !moves || reducedMotion) return
    let frame = 0
    let start: number | undefined
    const tick = (now: number) => {
      start ??= now
      const next = Math.min(1, (now - start) / TRAVEL)
      setT(next)
      if (next < 1) frame = requestAnimationFrame(tick)
    }
    frame = requestAnimationFrame(tick)
    return () => cancelAnimationFrame(frame)
  }, [count, moves, reducedMotion])
  return {
    t,
    again: () => {
      if (moves && !reducedMotion) setT(0)
      setRun({ id, count: count + 1 })
    },
  }
}
