import { type RefObject, useLayoutEffect, useState } from 'react'
import type { Cover } from '../core/views/clear-of'
import type { BoxSize } from './use-box-size'

/** Room kept round a button, px. */
const ROUND = 4
const none: readonly Cover[] = []

/**
 * The buttons that lie over a picture, as shares of it. They are looked at when another picture comes up (`anew`), and not
 * when somebody opens more of them: nothing is to jump aside under a finger.
 */
export function useCovers(
  picture: RefObject<HTMLElement | null>,
  boxes: readonly RefObject<HTMLElement | null>[],
  size: BoxSize | null,
  anew: string,
): readonly Cover[] {
  const [covers, setCovers] = useState(none)
  useLayoutEffect(() => {
    const whole = picture.current?.getBoundingClientRect()
    if (whole === undefined || size === null || anew === '') return
    const seen = boxes.flatMap(({ current }) =>
      [...(current?.querySelectorAll('button') ?? [])].map((button) => {
        const { left, right, top, bottom } = button.getBoundingClientRect()
        return {
          x0: (left - ROUND - whole.left) / size.width,
          x1: (right + ROUND - whole.left) / size.width,
          y0: (top - ROUND - whole.top) / size.height,
          // What is under the buttons is out of the way no better than what is behind them.
          y1: Math.max(1, (bottom - whole.top) / size.height),
        }
      }),
    )
    setCovers((was) => (JSON.stringify(was) === JSON.stringify(seen) ? was : seen))
  }, [picture, boxes, size, anew])
  return covers
}
