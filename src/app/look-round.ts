import { type PointerEvent, useRef } from 'react'
import type { Look } from '../scene/camera/look'

export const asChosen: Look = { turn: 0, tip: 0, closer: 1 }

const CLOSEST = 4
const FURTHEST = 0.4
const TIP = 90
/** Degrees for a way of one point on the screen. */
const PER_POINT = 0.35

export function turned(look: Look, turn: number, tip: number, closer: number): Look {
  return {
    turn: look.turn + turn,
    tip: Math.max(-TIP, Math.min(TIP, look.tip + tip)),
    closer: Math.max(FURTHEST, Math.min(CLOSEST, look.closer * closer)),
  }
}

/** Turning by dragging over the picture; all of it can be done with the buttons too. */
export function useDrag(look: Look, onLook: (look: Look) => void) {
  const from = useRef<{ readonly x: number; readonly y: number; readonly look: Look } | null>(null)
  return {
    onPointerDown: (e: PointerEvent<HTMLElement>) => {
      if (!e.isPrimary || e.button !== 0) return
      e.currentTarget.setPointerCapture(e.pointerId)
      from.current = { x: e.clientX, y: e.clientY, look }
    },
    onPointerMove: (e: PointerEvent<HTMLElement>) => {
      const start = from.current
      if (start === null || !e.isPrimary) return
      onLook(turned(start.look, (start.x - e.clientX) * PER_POINT, (e.clientY - start.y) * PER_POINT, 1))
    },
    onPointerUp: () => {
      from.current = null
    },
    onPointerCancel: () => {
      from.current = null
    },
  }
}
