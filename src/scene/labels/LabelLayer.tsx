import type { RefObject } from 'react'
import type { Label } from './labels-of'

/**
 * The texts of the picture, in one layer over it. Hidden from screen readers: all of it is said in the operation's own
 * words. LabelRig moves them.
 */
export function LabelLayer({
  labels,
  layer,
}: {
  labels: readonly Label[]
  layer: RefObject<HTMLDivElement | null>
}) {
  return (
    <div className="scene-labels" ref={layer} aria-hidden="true">
      <svg className="scene-leaders" aria-hidden="true">
        {labels.map((label) => (
          <line key={label.id} data-leader={label.id} />
        ))}
      </svg>
      {labels.map((label) => (
        <span
          key={label.id}
          data-label={label.id}
          data-tone={label.tone}
          data-strong={label.isStrong ? '' : undefined}
        >
          {label.text}
        </span>
      ))}
    </div>
  )
}
