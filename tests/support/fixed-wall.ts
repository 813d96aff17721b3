/** One wall with what stands and hangs on it, worked through from its file: for tests of fixings, holes and lifts. */
import { type Figure, known } from '../../src/core/figure'
import { type WorkedFixings, workOutFixings } from '../../src/core/fixings/fixings'
import { type WorkedBands, workOutBands } from '../../src/core/holes/bands'
import { parseKitchen } from '../../src/core/kitchen/parse-kitchen'
import type { Kitchen } from '../../src/core/kitchen/schema'
import type { Hole } from '../../src/core/plan/types'
import { type RegionPack, regionPack } from '../../src/core/region/region'
import { type Survey, workOutSurvey } from '../../src/core/survey/survey'
import { type UnitPosition, workOutPositions } from '../../src/core/units/positions'

export type Json = Readonly<Record<string, unknown>>

/** A length or mass typed with no doubt about it. */
export const exact = (value: number) => ({ value, pm: 0 })

/** A place on the wall, from its left end. */
export const at = (value: number) => ({ at: exact(value) })

/** A height from the line. */
export const up = (value: number) => ({ up: exact(value) })

/** A masonry wall 3 m long that has been traced, with nothing behind it: nothing speaks against a hole but its place. */
export const brickWall: Json = {
  id: 'a',
  length: exact(3000),
  construction: 'masonry',
  layers: [
    { id: 'plaster', material: 'plaster', thickness: exact(12) },
    { id: 'brick', material: 'brick', thickness: exact(100) },
  ],
  thickness: exact(225),
  behind: 'outside',
  traced: 'whole',
}

/** The same of timber studs and board, with nothing behind it but air. */
export const studWall: Json = {
  id: 'a',
  length: exact(3000),
  construction: 'timber-stud',
  layers: [
    { id: 'board', material: 'plasterboard', thickness: exact(12.5) },
    { id: 'stud', material: 'timber-stud', thickness: exact(89) },
  ],
  thickness: exact(114),
  behind: 'void',
  traced: 'whole',
}

export const stud = (id: string, centre: number, more: Json = {}): Json => ({
  id,
  centre: at(centre),
  width: exact(38),
  material: 'timber',
  confirmed: 'both-edges',
  ...more,
})

/** A wall unit of 600 on two plates: 20 kg with nothing in it, 40 kg to stand in it. */
export const wallUnit: Json = {
  id: 'w',
  kind: 'wall',
  wall: 'a',
  order: { left: at(600) },
  width: exact(600),
  height: exact(720),
  depth: exact(300),
  board: exact(18),
  back: exact(8),
  void: exact(0),
  front: exact(18),
  stands: 'plates',
  hanging: { plateBelowTop: exact(40), plateHoleBelow: exact(10), hangerIn: exact(30), plateHoles: 1 },
  bottomRail: { fromBottom: exact(0), height: exact(100), thickness: exact(20) },
  massEmpty: 20,
  contents: 40,
}

export const baseUnit: Json = {
  ...wallUnit,
  id: 'b',
  kind: 'base',
  stands: 'legs',
  depth: exact(560),
  hanging: {},
  bottomRail: {},
}

export const tallUnit: Json = { ...baseUnit, id: 't', kind: 'tall', height: exact(2100) }

/** A plug for brick with its screw, and a wood screw for studs. */
export const plug: Json = {
  id: 'plug',
  kind: 'screw-and-plug',
  length: exact(60),
  bit: exact(8),
  holeDepth: exact(55),
  embedment: exact(40),
  for: ['rail', 'plate', 'second-fixing', 'base-bracket', 'tall-restraint', 'back-rail', 'cleat'],
  into: ['brick'],
  pull: 500,
  shear: 500,
}
export const woodScrew: Json = {
  ...plug,
  id: 'wood',
  kind: 'wood-screw',
  length: exact(70),
  bit: exact(3),
  holeDepth: null,
  embedment: exact(35),
  into: ['timber-stud'],
}

interface WallFile {
  readonly wall?: Json
  readonly units?: readonly Json[]
  readonly rest?: Json
}

/** The kitchen file of one wall, in Britain, with a level ceiling 1.5 m above the line. */
export function wallFile({ wall = brickWall, units = [], rest = {} }: WallFile): Json {
  const ceiling = [1, 2].map((id) => ({
    id: `c${id}`,
    at: { wall: 'a', along: at(id * 1000), out: exact(300) },
    height: up(1500),
  }))
  return {
    format: 'dryrun-kitchen',
    version: 1,
    name: 'One wall',
    region: 'uk',
    walls: [wall],
    ceiling,
    units,
    fixings: [plug, woodScrew],
    ...rest,
  }
}

export function kitchenOf(file: Json): Kitchen {
  const parsed = parseKitchen(file)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error, null, 2))
  return parsed.value.kitchen
}

export interface Worked {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly region: RegionPack | null
  readonly positions: readonly UnitPosition[]
  readonly bands: WorkedBands
  readonly fixings: WorkedFixings
  readonly hole: (id: string) => Hole
}

/** Undersides that the heights would choose: hung units at +400, everything on the floor at −850, both exact. */
function undersidesOf(positions: readonly UnitPosition[]): ReadonlyMap<string, Figure> {
  const hung = (p: UnitPosition) => p.unit.kind === 'wall' || p.unit.kind === 'corner-wall'
  return new Map(positions.map((p) => [p.unit.id, known(hung(p) ? 400 : -850, 0, 'mm', ['chosen'])]))
}

export function worked(file: Json): Worked {
  const kitchen = kitchenOf(file)
  const region = regionPack(kitchen.region)
  const survey = workOutSurvey(kitchen, region)
  const positions = workOutPositions(kitchen, survey)
  const bands = workOutBands(kitchen, survey, region)
  const undersides = undersidesOf(positions.units)
  const fixings = workOutFixings(kitchen, survey, positions, { undersides }, bands, region)
  const hole = (id: string): Hole => {
    const found = fixings.holes.find((h) => h.id === id)
    if (found === undefined)
      throw new Error(`no hole ${id}; there are ${fixings.holes.map((h) => h.id).join(', ')}`)
    return found
  }
  return { kitchen, survey, region, positions: positions.units, bands, fixings, hole }
}

/** What a figure is, for a test: its value, or what it lacks. */
export function plain(figure: Figure): number | string {
  return figure.state === 'unknown' ? `lacks ${figure.missing.join(' ')}` : figure.value
}

/** A file with the quantity at this fact's place taken out. */
export function without(file: Json, fact: string): Json {
  const copy: unknown = JSON.parse(JSON.stringify(file))
  const path = fact.split('.')
  const last = path.pop() as string
  let here = copy as Record<string, unknown>
  for (const step of path) here = into(here, step)
  if (here[last] === undefined) throw new Error(`nothing at ${fact}`)
  here[last] = null
  return copy as Json
}

function into(here: unknown, step: string): Record<string, unknown> {
  const inner = Array.isArray(here)
    ? here.find((item: { readonly id?: string }) => item.id === step)
    : (here as Record<string, unknown>)[step]
  if (inner === undefined) throw new Error(`nothing at ${step}`)
  return inner as Record<string, unknown>
}
