import type { Basis, Figure, InputId } from '../figure'
import type { HeightName, UnitKind } from '../kitchen/kinds'
import type { Message } from '../message'

/**
 * The plan: what one pure function makes of (kitchen, day log, region pack). Plain data, printable as JSON, with a
 * schema in `assets/`. Scene, sheets, command line and checker all read this and nothing behind it.
 */

export type UnitId = string
export type WallId = string
export type OperationId = string

/** Room frame: right-handed, mm, z up from the line; the first wall runs from (0, 0) along +x, the room is at −y of it. */
export interface RoomPoint {
  readonly x: number
  readonly y: number
  readonly z: number
}
export interface PlanPoint {
  readonly x: number
  readonly y: number
}

/**
 * Where a solid stands. (x, y, z) is its back left bottom corner as seen from its front; `yaw` is the direction of its
 * width (left to right) in degrees anticlockwise from +x. Local frame: x along the width, y from the back out to the
 * front, z up. A point goes to the room by: room = (x, y) + lx·(cos yaw, sin yaw) + ly·(sin yaw, −cos yaw), z + lz.
 */
export interface Pose {
  readonly x: number
  readonly y: number
  readonly z: number
  readonly yaw: number
}

/** A box in a unit's local frame (mm). A unit's solid is one box, or more for a corner unit with an arm. */
export interface LocalBox {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

// ---------------------------------------------------------------- survey, worked out

export interface WallFrame {
  readonly wall: WallId
  readonly name: string
  /** Left end of the wall, on its finished face, and the unit vectors along it and out into the room. */
  readonly origin: PlanPoint
  readonly alongDir: PlanPoint
  readonly outDir: PlanPoint
  readonly length: Figure
  /** Inside angle at its right end. */
  readonly cornerRight: Figure
  /** Height of the ceiling over it, when read: lowest. */
  readonly ceiling: Figure
  /** False when a length or corner before it is not known: then it has no place in the room, only its own along and heights. */
  readonly placed: boolean
}

export interface FloorTriangle {
  readonly readings: readonly [string, string, string]
}
export interface FloorReadingPoint {
  readonly id: string
  readonly at: PlanPoint
  readonly z: Figure
}
export interface FloorSurface {
  readonly points: readonly FloorReadingPoint[]
  readonly triangles: readonly FloorTriangle[]
  /** Least-squares plane z = a + b·x + c·y through the readings, and how far the readings lie from it at most. */
  readonly plane: {
    readonly a: number
    readonly b: number
    readonly c: number
    readonly worst: number
  } | null
  /** The highest floor under any foot or bay. */
  readonly highPoint: { readonly z: Figure; readonly where: string }
  readonly fall: Figure
}

// ---------------------------------------------------------------- heights

/** A demand: `to` − `from` lies within [min, max]. A height by itself is a difference from the line ("line"). */
export interface Demand {
  readonly id: string
  readonly from: HeightVariable
  readonly to: HeightVariable
  readonly min: Figure | null
  readonly max: Figure | null
  readonly because: Message
  readonly basis: Basis
  /** A preferred demand is given up, and said so, before a hard one. */
  readonly hard: boolean
  /** What it is about: unit, foot, appliance, opening, wish. */
  readonly about: readonly string[]
}
export type HeightVariable = 'line' | HeightName | `unit:${string}`

export interface HeightValue {
  readonly of: HeightName
  readonly height: Figure
  /** The room it had: where the demands all agree. Null ends are open. */
  readonly lowest: number | null
  readonly highest: number | null
  /** The demands that set those ends. */
  readonly lowestBy: readonly string[]
  readonly highestBy: readonly string[]
  /** True when the interval is narrower than twice the precision of the readings behind it: measure again. */
  readonly marginal: boolean
  /** True when it was read as achieved on the day and is no longer chosen. */
  readonly achieved: boolean
}
export interface HeightConflict {
  readonly demands: readonly string[]
  /** By how much they cannot hold together, mm. */
  readonly by: number
}
export interface Heights {
  readonly demands: readonly Demand[]
  readonly values: readonly HeightValue[]
  readonly conflicts: readonly HeightConflict[]
  /** Demands that the chosen heights do not meet. Never empty while there is a conflict. */
  readonly unmet: readonly string[]
}

/** A horizontal line to strike on a wall, from..to along it. */
export interface HeightLine {
  readonly id: string
  readonly wall: WallId
  readonly of: HeightName | 'line' | 'plate' | 'rail' | 'bracket'
  /** A line of brackets at which the screws go through the units' own back rails; left out: they do not. */
  readonly throughRail?: boolean
  readonly height: Figure
  readonly from: number | null
  readonly to: number | null
}
/** A vertical mark on a wall, from its left corner. */
export interface WallMark {
  readonly id: string
  readonly wall: WallId
  readonly kind: 'unit-edge' | 'stud' | 'bay-edge'
  readonly about: string
  readonly along: Figure
}

// ---------------------------------------------------------------- units

export interface LegPlan {
  readonly foot: string
  /** Foot centre in the unit's local frame. */
  readonly x: number
  readonly y: number
  readonly floor: Figure
  readonly extension: Figure
  readonly min: Figure
  readonly max: Figure
  readonly delivered: Figure
  /** Turns from the delivered setting, when mm a turn is known. */
  readonly turns: Figure
  readonly within: 'yes' | 'too-short' | 'too-long' | 'not-known'
}

/** What goes under one corner of a box without legs: shims, or its frame or cleat and the shims under that. */
export interface ShimPlan {
  /** The place it bears on: one of its feet where they are listed, else a corner of the box. */
  readonly foot: string
  /** Where it bears, in the unit's local frame. */
  readonly x: number
  readonly y: number
  readonly floor: Figure
  /** From the floor there up to the underside of the carcass; 0: the box stands on the floor itself. */
  readonly height: Figure
}

/** One adjuster of a unit: a leg by its foot, or the height screw of the hanger on one side. */
export interface Adjuster {
  readonly kind: 'leg' | 'height-screw'
  readonly id: string
  /** Where it acts, from the unit's left side and from its back. */
  readonly x: Figure
  readonly y: Figure
  readonly perTurn: Figure
  /** What clockwise, seen by the one turning it, does; null: not known, and then it is tried, never assumed. */
  readonly clockwise: 'raises' | 'lowers' | null
  /** Which screw of the hanger it is. */
  readonly place: string | null
  /** How far it can still go from where it is set. */
  readonly upLeft: Figure
  readonly downLeft: Figure
}

/** The only things the tool says about capacity. There is no "safe". */
export type Verdict = 'exceeds' | 'below the figure you entered' | 'unknown'

export interface HoldingPlan {
  /** Pull on the top fixings and shear, whole unit, N. */
  readonly pull: Figure
  readonly shear: Figure
  readonly pullPerFixing: Figure
  readonly shearPerFixing: Figure
  readonly verdict: Verdict
  /** What would settle an unknown. */
  readonly lacking: readonly InputId[]
  /** Only where somebody has entered what the studs are graded as; says nothing of what may be hung. */
  readonly published?: PublishedPull
}

/** What a published formula gives for the pull of one planned screw in a stud, beside what is asked of it. */
export interface PublishedPull {
  readonly screw: string
  readonly wall: WallId
  readonly formula: 'eurocode' | 'american'
  /** N, before the code’s own factors; null: the screw is outside the formula. */
  readonly pull: Figure | null
  /** Thread in the stud. */
  readonly thread: Figure
  /** Characteristic density, or specific gravity in North America. */
  readonly timber: Figure
  /** The limit of the formula that is missed. */
  readonly outside: 'diameter' | 'core' | 'penetration' | null
}

export interface LiftPlan {
  readonly massStripped: Figure
  readonly massFull: Figure
  /** People the published filter asks for, at the worst hand zone; null: over the filter for the crew there is. */
  readonly people: number | null
  readonly filter: Figure
  readonly zone: string
  readonly aid: 'none' | 'lifter' | 'batten-or-prop' | 'lighten-it' | 'stop'
  /** Lift at one end when it is tilted up, kg. */
  readonly endLift: Figure | null
  /** Where the guidance recommends a weight for one person: taken off the floor, set down, and the lower of both, kg. */
  readonly alone?: { readonly lifting: Figure; readonly placing: Figure; readonly lower: Figure }
}

export interface UnitPlan {
  readonly unit: UnitId
  readonly name: string
  readonly kind: UnitKind
  readonly wall: WallId
  readonly left: Figure
  readonly right: Figure
  readonly width: Figure
  readonly height: Figure
  readonly depth: Figure
  readonly underside: Figure
  readonly top: Figure
  readonly stands: string | null
  /** Null when a figure it needs is unknown. */
  readonly pose: Pose | null
  readonly solid: readonly LocalBox[]
  readonly legs: readonly LegPlan[]
  /** Left out for a unit that hangs or stands on legs. */
  readonly shims?: readonly ShimPlan[]
  readonly adjusters: readonly Adjuster[]
  readonly lift: LiftPlan
  readonly holding: HoldingPlan | null
  /** Tall: diagonal it needs while being stood up, over which side, and the lowest ceiling over that sweep. */
  readonly standUp: StandUpPlan | null
  /** Hung: room over its top while it is hooked on. */
  readonly hookOn: {
    readonly needed: Figure
    readonly there: Figure
    readonly fits: 'yes' | 'no' | 'not-known'
  } | null
  /** What the day log says of it: how far it has come and what was read. */
  readonly achieved: { readonly underside: Figure; readonly state: StandingState } | null
}
export interface StandUpPlan {
  readonly over: 'back' | 'front' | 'left' | 'right'
  readonly pivot: 'carcass-edge' | 'feet'
  readonly blocks: Figure
  readonly needed: Figure
  readonly ceiling: Figure
  readonly fits: 'yes' | 'no' | 'not-known'
}

// ---------------------------------------------------------------- walls: rails, bands, holes

export interface RailPlan {
  readonly rail: string
  readonly wall: WallId
  readonly units: readonly UnitId[]
  readonly from: Figure
  readonly to: Figure
  /** Hook-on edge. */
  readonly edge: Figure
  readonly studs: readonly string[]
}

export interface Band {
  readonly id: string
  readonly wall: WallId
  /** accessory-vertical, accessory-horizontal, corner, ceiling, service, lintel */
  readonly kind: 'accessory-vertical' | 'accessory-horizontal' | 'corner' | 'ceiling' | 'service' | 'lintel'
  readonly about: readonly string[]
  readonly face: 'room' | 'other'
  /** Extents on this wall as seen from inside; null when open-ended or unknown (then `unknownBecause` says). */
  readonly left: number | null
  readonly right: number | null
  readonly bottom: number | null
  readonly top: number | null
  /** Its drawn edges are right to within ± this, by the readings it came from: a hole nearer an edge than that is an `ask`. */
  readonly pm: number
  readonly unknownBecause: readonly InputId[]
  readonly from: readonly InputId[]
  readonly basis: Basis
}

export type HolePurpose =
  | 'rail'
  | 'plate'
  | 'second-fixing'
  | 'base-bracket'
  | 'tall-restraint'
  | 'back-rail'
  | 'cleat'
  | 'joining'
export interface Hole {
  /** `<purpose>.<rail or unit>.<stud id, side or number>` */
  readonly id: string
  readonly wall: WallId
  readonly purpose: HolePurpose
  readonly for: readonly UnitId[]
  readonly along: Figure
  readonly height: Figure
  readonly bit: Figure
  /** Depth from the finished face to the tip of bit or screw, whichever is deeper. */
  readonly depth: Figure
  readonly screwLength: Figure
  readonly fixing: string | null
  readonly into: string | null
  readonly stud: string | null
  /** The screw goes through the unit's own back rail, though its purpose is that of a bracket; left out: it does not. */
  readonly throughRail?: boolean
  /** `refused`: in a band, an obstruction or unusable timber; `ask`: something must be settled first; `trace first`: nothing known speaks against it, which is not the same as clear. */
  readonly verdict: 'refused' | 'ask' | 'trace first'
  readonly against: readonly Message[]
  readonly hitBands: readonly string[]
  /** Place among the numbered holes of its wall drawing; null when refused. */
  readonly number: number | null
}

// ---------------------------------------------------------------- paths

export type PathSegment =
  | { readonly kind: 'move'; readonly from: Pose; readonly to: Pose }
  | {
      readonly kind: 'stand-up'
      /** The upright pose it ends in; it turned through 90° about one bottom edge of the carcass. */
      readonly upright: Pose
      readonly over: 'back' | 'front' | 'left' | 'right'
      readonly blocks: number
    }

/** One way of bringing a unit from a staging pose to its place. Moves are horizontal or vertical, never both at once. */
export interface PlacingPath {
  readonly unit: UnitId
  readonly approach: 'front' | 'left' | 'right' | 'back' | 'above'
  readonly segments: readonly PathSegment[]
  /** Units that would be in its way if they already stood. */
  readonly blockedBy: readonly UnitId[]
  /** Least distance to anything fixed, mm; ≥ 0. */
  readonly clearance: number
}

// ---------------------------------------------------------------- operations and order

export const STAGES = [
  'check-delivery',
  'make-safe',
  'survey',
  'set-out',
  'walls-ready',
  'assemble',
  'talls',
  'wall-units',
  'corner-base',
  'base-units',
  'end-panels',
  'hold-point',
  'worktops',
  'connect-and-test',
  'fronts-and-plinths',
  'snag',
] as const
export type Stage = (typeof STAGES)[number]

/** How far a unit has come. Nobody lets go, loads it or hangs its doors before `secured`. */
export const STANDING_STATES = [
  'delivered',
  'assembled',
  'carried',
  'held',
  'hooked',
  'standing',
  'levelled',
  'locked',
  'secured',
] as const
export type StandingState = (typeof STANDING_STATES)[number]

export type ArcKind =
  | 'geometry'
  | 'support'
  | 'access'
  | 'datum'
  | 'service'
  | 'cure'
  | 'finish'
  | 'safety'
  | 'practice'
  | 'wish'

/** Why one operation comes before another. */
export interface OrderReason {
  /** `<before> < <after>: <kind>.<rule>` */
  readonly id: string
  readonly before: OperationId
  readonly after: OperationId
  readonly kind: ArcKind
  readonly rule: string
  readonly hard: boolean
  /** What setting it aside costs, in minutes of extra work as reckoned; 0 for hard ones. */
  readonly cost: number
  readonly basis: Basis
  /** The inputs it rests on. */
  readonly from: readonly InputId[]
  readonly figures: readonly Figure[]
  readonly because: Message
  /** Least and greatest wait between end and start, minutes. */
  readonly minLag: number
  readonly maxLag: number | null
}

export interface NamedFigure {
  readonly name: string
  readonly figure: Figure
  /** Said under the figure: what it is and what it is measured from. */
  readonly label: Message
}
export interface OperationCheck {
  readonly id: string
  readonly ask: Message
  readonly target: Figure | null
  readonly tolerance: Figure | null
}
export interface Caution {
  /** ISO 7010 registration, from the list in the region-free sign table. */
  readonly sign: string
  readonly say: Message
}
export interface StateChange {
  readonly unit: UnitId
  readonly from: StandingState
  readonly to: StandingState
}

export interface Operation {
  /** `<kind>:<what it acts on>`, several joined by '+'. Never a position in a list. */
  readonly id: OperationId
  readonly kind: string
  readonly on: readonly string[]
  readonly stage: Stage
  readonly title: Message
  readonly does: readonly Message[]
  readonly figures: readonly NamedFigure[]
  readonly checks: readonly OperationCheck[]
  readonly cautions: readonly Caution[]
  readonly tools: readonly string[]
  /** People needed; who only a licensed trade may do is said in `trade`. */
  readonly people: number
  readonly trade: 'electrician' | 'gas-engineer' | 'plumber' | 'asbestos-surveyor' | null
  readonly minutes: { readonly low: number; readonly typical: number; readonly high: number }
  /** Work stops here until every check is answered. */
  readonly holdPoint: boolean
  /** Findings that must be settled before it begins, by id: it is the first work they bear on. */
  readonly stops: readonly string[]
  readonly changes: readonly StateChange[]
  /** The path its unit travels, by index into plan.paths; null when nothing is placed. */
  readonly path: number | null
  /** Units that somebody must be holding throughout. */
  readonly holding: readonly UnitId[]
  /** Lines and marks that appear, holes drilled, by id. */
  readonly lines: readonly string[]
  readonly marks: readonly string[]
  readonly holes: readonly string[]
  readonly rails: readonly string[]
  /** The wall it is about, for the view. */
  readonly wall: WallId | null
  readonly from: readonly InputId[]
  readonly done: boolean
}

// ---------------------------------------------------------------- findings and the plan

export type Weight = 'stop' | 'ask' | 'warn' | 'note'
export interface Finding {
  /** `<rule>:<sorted subjects>` */
  readonly id: string
  readonly rule: string
  readonly weight: Weight
  /** Of the class that can hurt someone or damage a service: such an ask or stop makes the command line exit with 1. */
  readonly dangerous: boolean
  readonly about: readonly string[]
  readonly where: {
    readonly wall: WallId
    readonly along: number | null
    readonly height: number | null
  } | null
  /** What findings of its rule are called together. */
  readonly called: Message
  readonly say: Message
  readonly figures: readonly Figure[]
  readonly from: readonly InputId[]
  /** The facts that settle it once they are entered, where its rule knows them; left out: see `plan/settled-by`. */
  readonly settledBy?: readonly InputId[]
  readonly basis: Basis
  /** Who can confirm or settle it. */
  readonly ask: Message | null
  /** Ways out, cheapest first. */
  readonly waysOut: readonly WayOut[]
}

/** What a way out costs, cheapest first. */
export type Cost = 'a look' | 'minutes' | 'an hour' | 'a part to buy' | 'a day or more'

/** One change to the kitchen file: a fact set at its id, an item added to the list at an id, or an item taken out. */
export type Edit =
  | { readonly set: InputId; readonly to: unknown }
  | { readonly add: InputId; readonly item: Readonly<Record<string, unknown>> & { readonly id: string } }
  | { readonly remove: InputId }

export interface WayOut {
  readonly say: Message
  readonly cost: Cost
  /** What it changes in the kitchen file: without any there is nothing to plan again, and it is not shown. */
  readonly edits: readonly Edit[]
  /** Whether a plan was made with it: `holds` when the finding is gone and no new stop or dangerous ask has come. */
  readonly planned: 'not-yet' | 'holds'
  /** Findings that come in its place, by id. */
  readonly brings: readonly string[]
}

/** A set of wishes and reasons that cannot hold together: nothing in it can be left out without losing the clash. */
export interface OrderConflict {
  readonly wishes: readonly string[]
  readonly reasons: readonly string[]
}
export interface OrderRepair {
  /** Wishes to give up. */
  readonly drop: readonly string[]
}

export interface WhatToMeasure {
  readonly input: InputId
  readonly say: Message
  /** How many figures of the plan it would settle. */
  readonly settles: number
}

export interface Change {
  /** Id of the figure, line, leg, hole, operation that is not what it was. */
  readonly what: string
  readonly say: Message
  readonly was: Figure | null
  readonly is: Figure | null
}

export interface OrderReport {
  readonly cost: number
  readonly parts: Readonly<Record<string, number>>
  /** Preferred reasons that the order sets aside, by id. */
  readonly setAside: readonly string[]
  readonly method: string
}

/**
 * A thing in or on a wall as surveyed, its place worked out: what drawings show in the wall. A null end is open (a stud
 * runs from floor to ceiling); an unknown figure is an end nobody has read.
 */
export interface WallThing {
  readonly id: string
  readonly wall: WallId
  readonly kind:
    | 'stud'
    | 'nogging'
    | 'pattress'
    | 'accessory'
    | 'service'
    | 'door'
    | 'window'
    | 'arch'
    | 'hatch'
  /** Of a service: what runs in it, one rectangle a straight piece. */
  readonly carries?: 'cable' | 'water-cold' | 'water-hot' | 'heating' | 'gas' | 'waste' | 'duct' | 'not-known'
  readonly left: Figure
  readonly right: Figure
  readonly bottom: Figure | null
  readonly top: Figure | null
}

/** A part that is fitted after the units: worktop, panel, plinth, front. Same frames as a unit. */
export interface FittedPart {
  readonly part: string
  readonly name: string
  readonly kind:
    | 'worktop'
    | 'front'
    | 'end-panel'
    | 'filler'
    | 'plinth'
    | 'cornice'
    | 'pelmet'
    | 'upstand'
    | 'splashback'
    | 'scribe'
  readonly of: readonly UnitId[]
  /** Null when a figure it needs is unknown. */
  readonly pose: Pose | null
  readonly solid: readonly LocalBox[]
}

export interface Plan {
  readonly stamp: { readonly hash: string; readonly rules: string; readonly region: string | null }
  readonly name: string
  readonly demo: boolean
  readonly walls: readonly WallFrame[]
  readonly floor: FloorSurface
  readonly heights: Heights
  readonly lines: readonly HeightLine[]
  readonly marks: readonly WallMark[]
  readonly units: readonly UnitPlan[]
  readonly rails: readonly RailPlan[]
  readonly bands: readonly Band[]
  readonly holes: readonly Hole[]
  readonly obstacles: readonly Obstacle[]
  /** For drawings; absent while nothing works them out. */
  readonly wallThings?: readonly WallThing[]
  readonly parts?: readonly FittedPart[]
  readonly paths: readonly PlacingPath[]
  /** In the order they are to be done. */
  readonly operations: readonly Operation[]
  readonly reasons: readonly OrderReason[]
  readonly order: OrderReport
  readonly findings: readonly Finding[]
  readonly measureNext: readonly WhatToMeasure[]
  /** Against the plan without the day log; empty when nothing was logged. */
  readonly changes: readonly Change[]
}

/** Anything fixed: the walls beyond the outline, boxings, beams. A vertical prism over a plan polygon. */
export interface Obstacle {
  readonly id: string
  readonly polygon: readonly PlanPoint[]
  readonly bottom: number | null
  readonly top: number | null
}

/** Why no plan can be given. */
export interface NoPlan {
  readonly kind: 'no-order'
  readonly conflicts: readonly OrderConflict[]
  readonly repairs: readonly OrderRepair[]
  /** A loop of hard reasons that no wish is to blame for. */
  readonly loops: readonly (readonly OrderReason[])[]
  /** Units that cannot be brought to their place in any order. */
  readonly trapped: readonly { readonly unit: UnitId; readonly say: Message }[]
  /** The reasons named above, whole. */
  readonly reasons: readonly OrderReason[]
  readonly findings: readonly Finding[]
}
