import type { Basis, Figure, InputId } from '../figure'
import type { HeightPosition, Kitchen, Unit, Wall } from '../kitchen/schema'
import type { Message, MessageValue } from '../message'
import type { OperationContext } from '../operations/operation-context'
import { overLimit } from '../placing/over-limit'
import { finding } from '../plan/finding'
import type { Cost, Edit, Finding, Obstacle, Operation, UnitPlan, WayOut, Weight } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'

/** A way the job goes wrong on site, by its label in the table of them (`core/trade/failure-modes.ts`). */
export type FailureMode = `F${number}`

/** All that has been worked out of a kitchen, as a rule of the trade may read it. Heights from the line, lengths mm. */
export interface Site extends Omit<OperationContext, 'survey'> {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly positions: readonly UnitPosition[]
  /** Boxings, beams, chimney breasts: what is fixed in the room. */
  readonly obstacles: readonly Obstacle[]
  /** The work in order; none when no order is possible. */
  readonly order: readonly Operation[]
  readonly unit: (id: string) => UnitPlan | undefined
  /** The unit as the file states it. */
  readonly stated: (id: string) => Unit | undefined
  readonly wall: (id: string) => Wall | undefined
  /** The name of a unit, appliance, wall or part as it is said: "wall unit 3", "Garden wall". */
  readonly name: (id: string) => string
  /** The height of something on the face of a wall, from the line, however it was read. */
  readonly onFace: (wall: string, along: Figure, height: HeightPosition) => Figure
  /** Units of a wall from left to right whose place is known; spaces for appliances among them. */
  readonly along: (wall: string) => readonly UnitPlan[]
}

/** What a rule has found, in its own words; `said` names one of the rule's sentences and fills it. */
export interface Found {
  /** Whatever makes this finding another than the rule's next one: ids of what it is about. */
  readonly subjects: readonly string[]
  readonly weight: Weight
  readonly said: Said
  /** Where it is shown; the subjects themselves if left out. */
  readonly about?: readonly string[]
  readonly where?: { readonly wall: string; readonly along?: Figure; readonly height?: Figure }
  /** What it rests on, and by how much: every figure it says. */
  readonly figures?: readonly Figure[]
  /** Facts it rests on beside those of its figures. */
  readonly from?: readonly InputId[]
  /** Whether this one can hurt somebody or damage a service; as the rule says if left out. */
  readonly dangerous?: boolean
  readonly basis?: Basis
  /** Who can confirm or settle it. */
  readonly ask?: Said
  readonly waysOut?: readonly Way[]
}

type Values = Readonly<Record<string, MessageValue>>
export type Said = readonly [key: string, values?: Values]

/** A way out as a rule proposes it; it is shown as one only once a plan made with it holds. */
export interface Way {
  readonly said: Said
  readonly cost: Cost
  readonly edits: readonly Edit[]
}

/**
 * One rule of the trade. It reads primitive facts of the survey and delivery and what was worked out of them, never a
 * field that names the fault. A rule never knows another rule.
 */
export interface Rule {
  /** Name of the rule and of its file. */
  readonly id: string
  /** What its findings are called together. */
  readonly heading: string
  /** The failure modes it catches or asks about. */
  readonly catches: readonly FailureMode[]
  /** Somebody can be hurt, or a service damaged: a stop or ask of it makes the plan hold until it is settled. */
  readonly dangerous: boolean
  readonly basis: Basis
  /** Why the trade keeps it, in a line. */
  readonly why: string
  /** Its sentences, in English, by the keys its findings use. */
  readonly words: Readonly<Record<string, string>>
  readonly check: (site: Site) => readonly Found[]
}

function sentence(rule: Rule, [key, values = {}]: Said): Message {
  const template = rule.words[key] ?? `[no words for ${rule.id}.${key}]`
  return { key: `${rule.id}.${key}`, values, template }
}

function wayOut(rule: Rule, way: Way): WayOut {
  return { say: sentence(rule, way.said), cost: way.cost, edits: way.edits, planned: 'not-yet', brings: [] }
}

/** What a rule finds in a kitchen, as findings of the plan. */
export function findingsOf(rule: Rule, site: Site): readonly Finding[] {
  return rule.check(site).map((found) => {
    const { subjects, weight, about, where, figures = [], from = [], ask } = found
    const said = Object.values(found.said[1] ?? {}).filter((v): v is Figure => typeof v === 'object')
    return finding({
      rule: rule.id,
      subjects,
      weight,
      dangerous: (found.dangerous ?? rule.dangerous) && weight !== 'note' && weight !== 'warn',
      ...(about === undefined ? {} : { about }),
      ...(where === undefined ? {} : { where }),
      called: { key: `${rule.id}.called`, values: {}, template: rule.heading },
      say: sentence(rule, found.said),
      figures: [...figures, ...said.filter((f) => !figures.includes(f))],
      from,
      basis: found.basis ?? rule.basis,
      ...(ask === undefined ? {} : { ask: sentence(rule, ask) }),
      waysOut: (found.waysOut ?? []).map((way) => wayOut(rule, way)),
    })
  })
}

/**
 * What a margin (room less what is needed) says: `short` when it is missing by more than the readings can be out, `near`
 * when they cannot tell, `not-known` when a figure of it is; null when there is room.
 */
export function margin(left: Figure): 'short' | 'near' | 'not-known' | null {
  const stands = overLimit(missing(left))
  if (stands === 'within') return null
  return stands === 'over' ? 'short' : stands
}

/** Room less what is needed. */
export function lessThan(room: Figure, needed: Figure, why: string): Figure {
  return sum(room.unit, { kind: 'geometry', why }, [room], [needed])
}

/** How much is missing, as it is said: the margin the other way round. */
export function missing(left: Figure): Figure {
  return sum(left.unit, left.basis, [], [left])
}
