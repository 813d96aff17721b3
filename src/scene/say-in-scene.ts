import type { MessageValue } from '../core/message'
import { sceneWords } from '../core/words/en/scene'
import type { Display } from '../core/words/format'
import { sayWritten } from '../core/words/say-written'

export type SceneKey = keyof typeof sceneWords

/** A short text written on the picture: these are the picture’s own and come with no plan. */
export function sayInScene(
  key: SceneKey,
  values: Readonly<Record<string, MessageValue>> = {},
  display: Display = 'mm',
): string {
  return sayWritten({ key, values, template: sceneWords[key] }, display)
}
