import { hasValue } from '../../core/figure'
import { figuresIn } from '../../core/plan/figures-in'
import type { Plan } from '../../core/plan/types'
import { basisText } from '../basis'

export interface Assumption {
  readonly why: string
  readonly facts: readonly string[]
}

/** What the plan rests on without anybody having confirmed it, each reason once with the facts it stands in for. */
export function assumedFacts(plan: Plan): readonly Assumption[] {
  const byWhy = new Map<string, Set<string>>()
  for (const figure of figuresIn(plan.units).values()) {
    if (!hasValue(figure) || figure.state !== 'assumed' || figure.from.length !== 1) continue
    const why = basisText(figure.basis)
    const facts = byWhy.get(why) ?? new Set<string>()
    facts.add(figure.from[0] as string)
    byWhy.set(why, facts)
  }
  return [...byWhy].map(([why, facts]) => ({ why, facts: [...facts] }))
}
