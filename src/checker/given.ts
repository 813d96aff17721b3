import type { Measure } from './measure'

/** The kitchen file as this checker reads it: only what plans are judged by. */

export interface GivenAlong {
  readonly end: 'left' | 'right'
  readonly face: 'room' | 'other'
  readonly at: Measure
}
export interface GivenHeight {
  readonly id: string
  readonly line: string
  readonly up: Measure
  readonly down: Measure
  readonly aboveFloor: Measure
}
export interface GivenPlace {
  readonly wall: string
  readonly along: GivenAlong
  readonly out: Measure
}
export interface GivenLayer {
  readonly material: string
  readonly thickness: Measure
}
export interface GivenStud {
  readonly id: string
  readonly centre: GivenAlong
  readonly width: Measure
  readonly material: string | null
  readonly confirmed: string | null
}
export interface GivenNogging {
  readonly id: string
  readonly from: GivenAlong
  readonly to: GivenAlong
  readonly centre: GivenHeight
  readonly depth: Measure
}
export interface GivenAccessory {
  readonly id: string
  readonly face: 'room' | 'other'
  readonly along: GivenAlong
  readonly height: GivenHeight
  readonly width: Measure
  readonly tall: Measure
}
export interface GivenService {
  readonly id: string
  readonly face: 'room' | 'other'
  readonly points: readonly { readonly along: GivenAlong; readonly height: GivenHeight }[]
  readonly width: Measure
  readonly traced: string | null
}
export interface GivenRect {
  readonly id: string
  readonly kind: string | null
  readonly left: GivenAlong
  readonly right: GivenAlong
  readonly bottom: GivenHeight
  readonly top: GivenHeight
}
export interface GivenWall {
  readonly id: string
  readonly length: Measure
  /** Inside angle at its right end, degrees. */
  readonly corner: Measure
  readonly construction: string | null
  readonly layers: readonly GivenLayer[]
  readonly layersToCome: readonly GivenLayer[]
  readonly thickness: Measure
  readonly behind: string | null
  readonly otherFaceChecked: boolean | null
  readonly otherFaceShift: Measure
  readonly studs: readonly GivenStud[]
  readonly studTimber: { readonly grade: string | null; readonly density: Measure; readonly gravity: Measure }
  readonly noggings: readonly GivenNogging[]
  readonly accessories: readonly GivenAccessory[]
  readonly services: readonly GivenService[]
  readonly lintels: readonly GivenRect[]
  readonly openings: readonly GivenRect[]
  readonly traced: string | null
  readonly tracedDepth: Measure
  readonly provedDead: boolean | null
}
export interface GivenReading {
  readonly id: string
  readonly at: GivenPlace
  readonly line: string
  readonly drop: Measure
}
export interface GivenBox extends GivenRect {
  readonly wall: string
  readonly near: Measure
  readonly out: Measure
}
export interface GivenOrder {
  readonly left: GivenAlong | null
  readonly rightOf: string | null
  readonly leftOf: string | null
  readonly gap: Measure
}
export interface GivenFoot {
  readonly id: string
  readonly x: Measure
  readonly y: Measure
}
export interface GivenZone {
  /** Bottom rail: its bottom edge above the underside; back rail: its top edge below the top. */
  readonly edge: Measure
  readonly height: Measure
  readonly thickness: Measure
}
export interface GivenUnit {
  readonly id: string
  readonly kind: string
  readonly wall: string
  readonly order: GivenOrder
  readonly standOff: Measure
  readonly width: Measure
  readonly height: Measure
  readonly depth: Measure
  readonly returnLeft: Measure
  readonly returnRight: Measure
  readonly returnDepth: Measure
  readonly board: Measure
  readonly void: Measure
  readonly stands: string | null
  readonly feet: readonly GivenFoot[]
  readonly legs: {
    readonly min: Measure
    readonly max: Measure
    readonly delivered: Measure
    readonly perTurn: Measure
    readonly maySwing: boolean | null
  }
  readonly hanging: {
    readonly plateBelowTop: Measure
    readonly plateHoleBelow: Measure
    readonly plateHoles: Measure
    readonly plateHolePitch: Measure
    readonly hangerIn: Measure
    readonly hookLift: Measure
    readonly up: Measure
    readonly ratedPerHanger: Measure
    readonly down: Measure
  }
  readonly backRail: GivenZone
  readonly bottomRail: GivenZone
  readonly fronts: number
  readonly assembled: string | null
  readonly applianceBay: string | null
}
export interface GivenRail {
  readonly id: string
  readonly wall: string
  readonly units: readonly string[]
  readonly thickness: Measure
  readonly maxSpacing: Measure
}
export interface GivenAppliance {
  readonly id: string
  readonly kind: string
  readonly fuel: string | null
  readonly heightMin: Measure
  readonly heightMax: Measure
  readonly workingGap: Measure
  readonly over: string | null
}
export interface GivenFinishing {
  readonly id: string
  readonly kind: string
  readonly wall: string | null
  readonly of: readonly string[]
  readonly order: GivenOrder | null
  readonly width: Measure
  readonly height: Measure
  readonly setBack: Measure
}
export interface GivenWorktop {
  readonly id: string
  readonly over: readonly string[]
  readonly thickness: Measure
}
export interface GivenFixing {
  readonly id: string
  readonly kind: string
  readonly diameter: Measure
  readonly length: Measure
  readonly thread: Measure
  readonly core: Measure
  readonly tip: Measure
  readonly holeDepth: Measure
  readonly embedment: Measure
  readonly bit: Measure
  readonly purposes: readonly string[]
  readonly into: readonly string[]
  readonly pull: Measure
  readonly shear: Measure
}
export interface GivenWish {
  readonly id: string
  readonly of: string
  readonly min: GivenHeight | null
  readonly max: GivenHeight | null
  readonly place: GivenPlace | null
  readonly equals: string | null
}
export interface GivenOrderSide {
  readonly operation: string | null
  readonly kind: string | null
  readonly on: string | null
}
export interface GivenOrderWish {
  readonly id: string
  readonly before: GivenOrderSide
  readonly after: GivenOrderSide
  readonly hard: boolean
}
export interface Given {
  readonly region: string | null
  readonly houseBuilt: number | null
  readonly gas: boolean | null
  readonly closed: boolean | null
  readonly lines: readonly { readonly id: string; readonly offset: Measure }[]
  readonly walls: readonly GivenWall[]
  readonly ceiling: readonly { readonly id: string; readonly at: GivenPlace; readonly height: GivenHeight }[]
  readonly boxes: readonly GivenBox[]
  readonly finishToCome: Measure
  readonly finishWhere: string | null
  readonly readings: readonly GivenReading[]
  readonly units: readonly GivenUnit[]
  readonly rails: readonly GivenRail[]
  readonly appliances: readonly GivenAppliance[]
  readonly finishing: readonly GivenFinishing[]
  readonly worktops: readonly GivenWorktop[]
  readonly fixings: readonly GivenFixing[]
  readonly heightWishes: readonly GivenWish[]
  readonly orderWishes: readonly GivenOrderWish[]
}
