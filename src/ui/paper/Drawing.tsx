import { useEffect, useRef, useState } from 'react'
import type { Plan, WallFrame } from '../../core/plan/types'
import { showWords } from './FoundHere'
import type { Chosen } from './sheets'
import { flagId } from './wall/Flags'
import type { Found } from './wall/found'
import { WallDrawing, WallOverview } from './wall/WallDrawing'

interface Props {
  readonly plan: Plan
  readonly frame: WallFrame
  readonly name: string
  readonly found: readonly Found[]
  readonly asked: Pick<Chosen, 'finding' | 'isWords'> | null
}

/**
 * The drawing of a wall: all of it across the screen, or so large that every figure can be read, and then pushed along.
 * In the hand the small one leaves the figures out.
 */
export function Drawing({ plan, frame, name, found, asked }: Props) {
  const isAskedFor = asked?.finding != null && !asked.isWords
  const [isLarge, setLarge] = useState(isAskedFor)
  const [lastAsked, setLastAsked] = useState(asked?.finding ?? null)
  const scroll = useRef<HTMLElement>(null)
  if ((asked?.finding ?? null) !== lastAsked) {
    setLastAsked(asked?.finding ?? null)
    if (isAskedFor) setLarge(true)
  }
  const [finding, isWords] = [asked?.finding ?? null, asked?.isWords ?? false]
  useEffect(() => {
    if (finding === null) return
    if (isWords) showWords(finding)
    else showFlag(finding)
  }, [finding, isWords])
  const push = (by: number) => {
    const box = scroll.current
    box?.scrollBy({ left: by * box.clientWidth * 0.7, behavior: 'instant' })
  }
  return (
    <div className={isLarge ? 'drawing large' : 'drawing'}>
      <div className="drawing-bar no-print">
        <button type="button" className="button" aria-pressed={isLarge} onClick={() => setLarge(!isLarge)}>
          {isLarge ? 'The whole wall' : 'Enlarge'}
        </button>
        {isLarge && (
          <span className="push">
            <button
              type="button"
              className="button"
              aria-label="To the left of the wall"
              onClick={() => push(-1)}
            >
              ←
            </button>
            <button
              type="button"
              className="button"
              aria-label="To the right of the wall"
              onClick={() => push(1)}
            >
              →
            </button>
          </span>
        )}
        <span className="quiet">
          {isLarge
            ? 'Push the drawing to either side for the rest of the wall.'
            : 'Enlarge it to read the figures.'}
        </span>
      </div>
      {!isLarge && (
        <button
          type="button"
          className="overview no-print"
          aria-label={`Enlarge the drawing of ${name}`}
          onClick={() => setLarge(true)}
        >
          <WallOverview plan={plan} frame={frame} id={`overview-${frame.wall}`} found={found} />
        </button>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard */}
      <section className="scroll" aria-label={`Drawing of ${name}`} tabIndex={0} ref={scroll}>
        <WallDrawing plan={plan} frame={frame} id={`bands-${frame.wall}`} found={found} onFlag={showWords} />
      </section>
    </div>
  )
}

/** Brings the flag of a finding into sight, and the focus to it. */
export function showFlag(finding: string): void {
  const flag = document.getElementById(flagId(finding))
  flag?.scrollIntoView({ block: 'center', inline: 'center' })
  flag?.focus({ preventScroll: true })
}
