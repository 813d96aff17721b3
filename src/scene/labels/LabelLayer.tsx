import type { PointerEvent, RefObject } from 'react'
import type { Flag } from './flags-of'
import type { Label } from './labels-of'

interface Props {
  readonly labels: readonly Label[]
  readonly flags: readonly Flag[]
  readonly layer: RefObject<HTMLDivElement | null>
  readonly onFinding: (finding: string) => void
}

/**
 * The texts of the picture, in one layer over it, and the flags of what has been found. Texts are hidden from screen
 * readers: all of it is said in the operation's own words. LabelRig moves them.
 */
export function LabelLayer({ labels, flags, layer, onFinding }: Props) {
  return (
    <div className="scene-labels" ref={layer}>
      <svg className="scene-leaders" aria-hidden="true">
        {[...flags, ...labels].map(({ id }) => (
          <line key={id} data-leader={id} />
        ))}
      </svg>
      {labels.map((label) => (
        <span
          key={label.id}
          aria-hidden="true"
          data-label={label.id}
          data-tone={label.tone}
          data-strong={label.isStrong ? '' : undefined}
        >
          {label.text}
        </span>
      ))}
      {flags.map((flag) => (
        <button
          key={flag.id}
          type="button"
          className="scene-flag"
          data-label={flag.id}
          data-weight={flag.weight}
          data-grave={flag.isGrave ? '' : undefined}
          aria-label={`Found here, ${flag.letter}: ${flag.words}`}
          aria-current={flag.isOpen ? 'true' : undefined}
          onPointerDown={keepFromDragging}
          onClick={() => onFinding(flag.finding)}
        >
          <span className="scene-flag-letter" aria-hidden="true">
            {flag.letter}
          </span>
          <span className="scene-flag-words" aria-hidden="true">
            {flag.words}
          </span>
        </button>
      ))}
    </div>
  )
}

/** The picture under the flag is turned by dragging, which would take the press. */
const keepFromDragging = (event: PointerEvent) => event.stopPropagation()
