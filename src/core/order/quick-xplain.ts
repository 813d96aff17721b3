/**
 * A smallest set of facts that cannot all hold beside what always holds: take away any one of them and the rest can.
 * Of several such sets one with facts given early is found rather than one with facts given late. Null: all can hold.
 *
 * @source Junker, QuickXplain: Preferred Explanations and Relaxations for Over-Constrained Problems, AAAI 2004
 */
export function quickXplain<T>(
  facts: readonly T[],
  holds: (facts: readonly T[]) => boolean,
): readonly T[] | null {
  if (holds(facts)) return null
  if (!holds([])) return []
  return explain([], false, facts, holds)
}

function explain<T>(
  beside: readonly T[],
  grew: boolean,
  facts: readonly T[],
  holds: (facts: readonly T[]) => boolean,
): readonly T[] {
  if (grew && !holds(beside)) return []
  if (facts.length <= 1) return facts
  const half = Math.floor(facts.length / 2)
  const [first, rest] = [facts.slice(0, half), facts.slice(half)]
  const fromRest = explain([...beside, ...first], first.length > 0, rest, holds)
  const fromFirst = explain([...beside, ...fromRest], fromRest.length > 0, first, holds)
  return [...fromFirst, ...fromRest]
}
