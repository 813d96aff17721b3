import type { Label } from './labels-of'

/** A picture narrower than this, px, has room for less, and its letters are smaller (scene.css). */
export const NARROW = 560
/** Room kept round every text, px: more where they would else run into one word. */
export const GAP = { wide: 3, narrow: 6 } as const

/**
 * What is written on a narrow picture: what the step is about and what keeps people safe. Names of what stands there, and
 * of lines struck before, stay off it; figures of marks are written at their mark or not at all. All of it is in the words.
 */
export function thinnedOut(labels: readonly Label[], width: number): readonly Label[] {
  if (width >= NARROW) return labels
  return labels
    .filter((label) => !label.isAside)
    .map((label) => (label.isMark ? { ...label, moves: 'no' as const } : label))
}
