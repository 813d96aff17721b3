import { hasValue } from '../../core/figure'
import { figuresIn } from '../../core/plan/figures-in'
import type { Plan } from '../../core/plan/types'
import { spaced } from '../../core/words/fact-name'
import { inputName } from '../../core/words/plan-names'

export interface Assumption {
  readonly what: string
  readonly count: number
}

/** What the last word of a figure's name means, where the word alone would not do. */
const NAMES: Readonly<Record<string, string>> = {
  massStripped: 'mass of a unit, stripped',
  massFull: 'mass of a unit, whole',
  endLift: 'lift at the end of a tall unit',
  pull: 'pull on the fixings of a unit',
  shear: 'weight on the fixings of a unit',
  pullPerFixing: 'pull on one fixing',
  shearPerFixing: 'weight on one fixing',
  depth: 'depth of a hole',
  screwLength: 'length of a screw',
  extension: 'length of a leg',
}

/** Figures of the plan that rest on something nobody has confirmed, one line for each kind of figure. */
export function assumedFigures(plan: Plan): readonly Assumption[] {
  const kinds = new Map<string, Assumption>()
  for (const part of [plan.units, plan.holes, plan.rails, plan.lines]) {
    for (const [path, figure] of figuresIn(part)) {
      if (!hasValue(figure) || figure.state !== 'assumed') continue
      const key = path.split('/').at(-1) ?? path
      const kind = kinds.get(key) ?? {
        what: NAMES[key] ?? spaced(key),
        count: 0,
      }
      kinds.set(key, { ...kind, count: kind.count + 1 })
    }
  }
  return [...kinds.values()]
}

/** Facts that stand in the plan as a usual size, until the maker's sheet or a tape says otherwise. */
export function assumedFacts(plan: Plan): readonly string[] {
  const found = plan.findings.filter((f) => f.rule === 'assumed-figures').flatMap((f) => f.from)
  return [...new Set(found)].map((id) => inputName(id, plan))
}
