import galley from '../../scenes/galley.dryrun.json?raw'
import lShape from '../../scenes/l-shape.dryrun.json?raw'
import noOrder from '../../scenes/no-order.dryrun.json?raw'
import northAmerican from '../../scenes/north-american.dryrun.json?raw'
import oneWall from '../../scenes/one-wall.dryrun.json?raw'
import { type Outcome, workThrough } from '../../src/core/plan/entry'
import type { Plan } from '../../src/core/plan/types'
import { withWords } from '../../src/core/words/with-words'

const TEXTS = {
  'l-shape': lShape,
  'one-wall': oneWall,
  'no-order': noOrder,
  galley,
  'north-american': northAmerican,
} as const

export type SceneName = keyof typeof TEXTS
export const SCENES: readonly SceneName[] = ['l-shape', 'one-wall', 'no-order']

const outcomes = new Map<SceneName, Outcome>()

export function sceneText(name: SceneName): string {
  return TEXTS[name]
}

export function sceneFile(name: SceneName): unknown {
  return JSON.parse(sceneText(name))
}

/** What comes of one of the invented kitchens with nothing done yet, with its words, as the app gets it; worked through once. */
export function outcomeOf(name: SceneName): Outcome {
  const outcome = outcomes.get(name) ?? withWords(workThrough(sceneFile(name)))
  outcomes.set(name, outcome)
  return outcome
}

export function planOf(name: SceneName): Plan {
  const outcome = outcomeOf(name)
  if (outcome.kind !== 'plan') throw new Error(`${name} gives no plan but ${outcome.kind}`)
  return outcome.plan
}
