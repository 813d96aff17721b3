import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { KitchenFile } from '../../src/core/kitchen/schema'
import { ROOT } from './root'

/** The demo kitchens, each with what was worked out for it by hand before there was a program. */

export interface WorkedRow {
  readonly what: string
  readonly mm: number
  readonly within: number
  readonly unit?: string
  readonly working: string
}

export interface WorkedPair {
  readonly before: string
  readonly after: string
  readonly kind: string
  readonly hard: boolean
  readonly because: string
}

export interface Worked {
  readonly rows: readonly WorkedRow[]
  readonly refused: readonly string[]
  readonly asks?: readonly string[]
  readonly order: readonly WorkedPair[]
  readonly conflicts: readonly (readonly string[])[]
  readonly repairs: readonly (readonly string[])[]
}

export interface Expected {
  readonly exit: number
  readonly findings: readonly string[]
  readonly notes: readonly string[]
}

export const SCENES = ['one-wall', 'l-shape', 'no-order', 'galley', 'north-american'] as const
export type Scene = (typeof SCENES)[number]

function read(name: string): unknown {
  return JSON.parse(readFileSync(join(ROOT, 'scenes', name), 'utf8'))
}

export const sceneFile = (scene: Scene): KitchenFile => read(`${scene}.dryrun.json`) as KitchenFile
export const expectedOf = (scene: Scene): Expected => read(`${scene}.expected.json`) as Expected
export const workedOf = (scene: Scene): Worked => read(`${scene}.worked.json`) as Worked
