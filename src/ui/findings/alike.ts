import { gravestFirst } from '../../core/plan/gravest-first'
import type { Finding, Weight } from '../../core/plan/types'
import { basisText } from '../basis'
import { sentences } from '../sentences'
import { words } from '../words'

/** One finding of several alike: the sentences that only it has. */
export interface OneOf {
  readonly finding: Finding
  readonly own: string
  /** Who can settle it, where that is not said of all. */
  readonly ask: string | null
}

/** Findings of one rule and weight, said under one heading. */
export interface Alike {
  readonly heading: string
  readonly rule: string
  readonly weight: Weight
  readonly dangerous: boolean
  readonly basis: string
  readonly each: readonly OneOf[]
  /** What is the same for all of them, and who settles it; empty and null where there is only one. */
  readonly common: string
  readonly commonAsk: string | null
}

/** The findings of one weight, alike ones together; what can hurt someone comes first. */
export function alikeOf(findings: readonly Finding[], weight: Weight): readonly Alike[] {
  const groups = new Map<string, Finding[]>()
  for (const finding of findings) {
    if (finding.weight !== weight) continue
    const key = `${finding.rule} ${finding.dangerous} ${basisText(finding.basis)}`
    groups.set(key, [...(groups.get(key) ?? []), finding])
  }
  return [...groups.values()]
    .map((group) => group.sort(gravestFirst))
    .sort(([a], [b]) => gravestFirst(a as Finding, b as Finding))
    .map(together)
}

function together(group: readonly Finding[]): Alike {
  const [first] = group as readonly [Finding]
  const said = group.map((f) => sentences(words(f.say)))
  const shared = group.length === 1 ? [] : (said[0] ?? []).filter((s) => said.every((all) => all.includes(s)))
  const asks = group.map((f) => (f.ask === null ? null : words(f.ask)))
  const commonAsk = group.length > 1 && new Set(asks).size === 1 ? (asks[0] ?? null) : null
  return {
    heading: words(first.called),
    rule: first.rule,
    weight: first.weight,
    dangerous: first.dangerous,
    basis: basisText(first.basis),
    common: shared.join(' '),
    commonAsk,
    each: group.map((finding, i) => ({
      finding,
      own: (said[i] ?? []).filter((s) => !shared.includes(s)).join(' '),
      ask: commonAsk === null ? (asks[i] ?? null) : null,
    })),
  }
}
