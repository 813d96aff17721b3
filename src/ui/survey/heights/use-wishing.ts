import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react'
import type { HeightName } from '../../../core/kitchen/kinds'
import { useActions, useApp } from '../../app-context'
import type { Scale } from './scale'
import { unwishEdits, wishEdits, wishMark } from './wished'

/** Millimetres that a key moves a height, up or down. */
const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
}
/** Less than this a finger moves without meaning it, px. */
const STILL = 4

/** Where a height that is dragged was taken hold of. */
interface Hold {
  readonly of: HeightName
  readonly scale: Scale
  readonly y: number
  readonly clientY: number
  /** Screen to one of the drawing's own units. */
  readonly zoom: number
  readonly isMoving: boolean
  readonly last: number
}

/**
 * Moving a height: every move is a wish in the kitchen file at once. All moves of one drag, or of keys and buttons one
 * after another, are taken back as one.
 */
export function useWishing() {
  const actions = useActions()
  const kitchen = useApp((s) => s.kitchen)
  const hold = useRef<Hold | null>(null)
  const [held, setHeld] = useState<Scale | null>(null)

  const wish = (of: HeightName, mm: number) =>
    actions.edit(wishEdits(kitchen, of, mm), `height wished: ${of}`)
  const end = () => {
    if (hold.current?.isMoving === true) actions.settle()
    hold.current = null
    setHeld(null)
  }
  return {
    /** The scale a height is being dragged on: it stays as it is until the height is let go. */
    held,
    step: (of: HeightName, from: number, by: number) => wish(of, Math.round(from) + by),
    settle: actions.settle,
    takeAway: (of: HeightName) => {
      const mark = wishMark(kitchen, of)
      if (mark !== undefined) actions.edit(unwishEdits(mark))
    },
    handle: (of: HeightName, at: number, scale: Scale) => ({
      onKeyDown: (event: KeyboardEvent) => {
        const by = STEPS[event.key]
        if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return
        event.preventDefault()
        event.stopPropagation()
        wish(of, Math.round(at) + by)
      },
      onBlur: actions.settle,
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        if (event.button !== 0) return
        const picture = event.currentTarget.closest('[data-scale]')?.getBoundingClientRect()
        const zoom = picture === undefined || picture.height === 0 ? 1 : picture.height / scale.height
        event.currentTarget.setPointerCapture?.(event.pointerId)
        hold.current = { of, scale, y: scale.y(at), clientY: event.clientY, zoom, isMoving: false, last: at }
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const now = hold.current
        if (now === null || now.of !== of) return
        const moved = event.clientY - now.clientY
        if (!now.isMoving && Math.abs(moved) < STILL) return
        if (!now.isMoving) {
          actions.settle()
          setHeld(now.scale)
        }
        const mm = Math.round(now.scale.mm(now.y + moved / now.zoom))
        hold.current = { ...now, isMoving: true, last: mm }
        if (mm !== now.last) wish(of, mm)
      },
      onPointerUp: end,
      onPointerCancel: end,
    }),
  }
}

export type Wishing = ReturnType<typeof useWishing>
