import { useEffect, useState } from 'react'

interface Motion {
  /** 0..1 through the operation. */
  readonly t: number
  /** Runs through it from its start. */
  readonly again: () => void
  /** Shows its other end at once. */
  readonly turnOver: () => void
}

/**
 * Runs once through the motion of an operation when it comes to the hook. Nothing moves at the first opening or for people
 * who ask for none: they see how it begins, as the words say it, and turn over to its end. An operation that moves nothing
 * is seen as it is done. `seconds`: how long it takes on the screen; 0: nothing moves.
 */
export function useMotion(id: string, seconds: number, reducedMotion: boolean): Motion {
  const moves = seconds > 0
  const [run, setRun] = useState({ id, count: 0 })
  const [t, setT] = useState(moves ? 0 : 1)
  if (run.id !== id) {
    setRun({ id, count: run.count + 1 })
    setT(moves ? 0 : 1)
  }
  const { count } = run
  useEffect(() => {
    if (count === 0 || !moves || reducedMotion) return
    let frame = 0
    let start: number | undefined
    const tick = (now: number) => {
      start ??= now
      const next = Math.min(1, (now - start) / (1000 * seconds))
      setT(next)
      if (next < 1) frame = requestAnimationFrame(tick)
    }
    frame = requestAnimationFrame(tick)
    return () => cancelAnimationFrame(frame)
  }, [count, moves, seconds, reducedMotion])
  return {
    t,
    again: () => {
      if (moves && !reducedMotion) setT(0)
      setRun({ id, count: count + 1 })
    },
    turnOver: () => setT(t < 1 ? 1 : 0),
  }
}
