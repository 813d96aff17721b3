import type { Message } from '../../core/message'
import type { Operation } from '../../core/plan/types'
import { targetText } from '../Checks'
import { sentences } from '../sentences'
import { hurtText, isAllSaidAbove } from '../signs/HurtLine'
import { TRADE_NAMES, words } from '../words'

/** One sentence of a step, by where it stands on the slip: `does.2` is the third line of what to do. */
export interface StepSentence {
  readonly at: string
  readonly text: string
  /** The key of the message it is of. */
  readonly key?: string
}

const saidAt = (at: string, text: string | null): readonly StepSentence[] =>
  text === null ? [] : sentences(text).map((sentence) => ({ at, text: sentence }))

const messageAt = (at: string, line: Message): readonly StepSentence[] =>
  saidAt(at, words(line)).map((sentence) => ({ ...sentence, key: line.key }))

const listAt = (name: string, list: readonly Message[]): readonly StepSentence[] =>
  list.flatMap((line, i) => messageAt(`${name}.${i}`, line))

/** What is to be done and minded at a step, sentence by sentence, in the order it stands on the slip. */
export function toDoAndMind({ does, cautions }: Operation): readonly StepSentence[] {
  return [
    ...listAt('does', does),
    ...listAt('cautions', isAllSaidAbove(cautions) ? [] : cautions.map((c) => c.say)),
  ]
}

/** A step as it is read out: what it is, what can hurt, what to do, what to mind, what to check. */
export function stepInWords(operation: Operation): readonly StepSentence[] {
  const { title, trade, cautions, checks } = operation
  return [
    ...saidAt('title', `${words(title)}.`),
    ...saidAt('trade', trade === null ? null : `Only for ${TRADE_NAMES[trade]}.`),
    ...saidAt('hurt', hurtText(cautions)),
    ...toDoAndMind(operation),
    ...checks.flatMap((check, i) => [
      ...messageAt(`checks.${i}`, check.ask),
      ...saidAt(`checks.${i}`, targetText(check)),
    ]),
  ]
}
