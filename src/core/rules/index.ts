import type { Rule } from './rule'
import { rule as runTooLong } from './run-too-long'

/** The rules of the trade that stand in a file of their own, in order of their names. */
export const RULES: readonly Rule[] = [runTooLong]
