import type { InputId } from '../figure'
import { inputName, type Named } from './plan-names'

const MOST_NAMED = 6

/** The parts of a kitchen file, as facts of them are counted. */
const PARTS: Readonly<Record<string, string>> = {
  walls: 'the walls',
  units: 'the units',
  floor: 'the floor',
  ceiling: 'the ceiling',
  lines: 'the line',
  appliances: 'the appliances',
  worktops: 'the worktops',
  finishing: 'the finishing parts',
  rails: 'the rails',
  fixings: 'the fixings',
  wishes: 'your wishes',
  log: 'the day log',
  survey: 'the survey',
  boxes: 'the boxings',
  crew: 'the crew',
  region: 'the country',
  closed: 'the walls',
}

/** A few facts by name; many by how many there are of each part of the file. */
export function factsSaid(ids: readonly InputId[], plan: Named): string {
  if (ids.length <= MOST_NAMED) return ids.map((id) => inputName(id, plan)).join('; ')
  const counts = new Map<string, number>()
  for (const id of ids) {
    const part = id.split('.')[0] ?? id
    const name = PARTS[part] ?? part
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  const [only] = counts.keys()
  if (counts.size === 1) return `${ids.length} facts of ${only}`
  return `${ids.length} facts, ${[...counts].map(([name, n]) => `${n} of ${name}`).join(', ')}`
}
