import type { Basis, Figure, InputId } from '../figure'
import { sortedIds, valueOf } from '../figure'
import { type Message, message } from '../message'
import type { Finding, WayOut, Weight } from './types'

interface FindingParts {
  readonly rule: string
  /** What it is about, as it stands in the finding's id. */
  readonly subjects: readonly string[]
  readonly weight: Weight
  readonly dangerous?: boolean
  /** Ids of things in the plan to show it at; the subjects themselves if left out. */
  readonly about?: readonly string[]
  readonly where?: { readonly wall: string; readonly along?: Figure; readonly height?: Figure }
  /** What findings of this rule are called together; by the rule's name in the table of words if left out. */
  readonly called?: Message
  readonly say: Message
  readonly figures?: readonly Figure[]
  /** Facts it rests on beside those of its figures. */
  readonly from?: readonly InputId[]
  /** The facts that settle it once they are entered. */
  readonly settledBy?: readonly InputId[]
  readonly basis: Basis
  readonly ask?: Message
  readonly waysOut?: readonly WayOut[]
}

/** A finding with its stable id: the rule and its subjects in order. */
export function finding(parts: FindingParts): Finding {
  const figures = parts.figures ?? []
  const { where } = parts
  return {
    id: `${parts.rule}:${sortedIds(parts.subjects).join('+')}`,
    rule: parts.rule,
    weight: parts.weight,
    dangerous: parts.dangerous ?? false,
    about: parts.about ?? sortedIds(parts.subjects),
    where:
      where === undefined
        ? null
        : {
            wall: where.wall,
            along: where.along === undefined ? null : (valueOf(where.along) ?? null),
            height: where.height === undefined ? null : (valueOf(where.height) ?? null),
          },
    called: parts.called ?? message(`called.${parts.rule}`),
    say: parts.say,
    figures,
    from: sortedIds([...figures.flatMap((f) => f.from), ...(parts.from ?? [])]),
    ...(parts.settledBy === undefined ? {} : { settledBy: parts.settledBy }),
    basis: parts.basis,
    ask: parts.ask ?? null,
    waysOut: parts.waysOut ?? [],
  }
}
