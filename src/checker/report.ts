/** What the checker hands back: every promise of the plan that does not hold, in words. */

export interface Refusal {
  /** Which obligation is broken. */
  readonly rule: string
  /** Id of the thing that breaks it: an operation, a unit, a hole, a figure's place in the plan. */
  readonly what: string
  readonly say: string
}

export interface CheckReport {
  readonly ok: boolean
  readonly refusals: readonly Refusal[]
}

/** Where obligations put what they find. Checking goes on after a refusal, so that all of them are seen at once. */
export type Refuse = (rule: string, what: string, say: string) => void

/** A fresh list of refusals and the function that adds to it; the same refusal is kept once. */
export function refusalList(): { readonly refuse: Refuse; readonly report: () => CheckReport } {
  const found = new Map<string, Refusal>()
  return {
    refuse: (rule, what, say) => {
      const key = `${rule}|${what}|${say}`
      if (!found.has(key)) found.set(key, { rule, what, say })
    },
    report: () => ({ ok: found.size === 0, refusals: [...found.values()] }),
  }
}
