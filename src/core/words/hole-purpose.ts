import type { Hole } from '../plan/types'

const PURPOSES: Readonly<Record<Hole['purpose'], string>> = {
  rail: 'rail',
  plate: 'wall plate',
  'second-fixing': 'second fixing',
  'base-bracket': 'base bracket',
  'tall-restraint': 'restraint',
  'back-rail': 'back rail',
  cleat: 'cleat',
  joining: 'joining',
}

/** What a hole is for, as it stands beside its unit: "wall plate". One through the unit's own rail is for that rail. */
export function holePurpose({ purpose, throughRail }: Pick<Hole, 'purpose' | 'throughRail'>): string {
  return PURPOSES[throughRail === true ? 'back-rail' : purpose]
}
