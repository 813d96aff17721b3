import {
  assumed,
  type Basis,
  derive,
  type Figure,
  hasValue,
  type InputId,
  restingOn,
  unknown,
} from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Worktop } from '../kitchen/schema'
import { longestPiece, worktopRuns } from '../placing/worktop-runs'
import type { UnitPlan } from '../plan/types'
import { highestOf } from '../survey/extremes'
import type { Survey } from '../survey/survey'
import { particleboardDensity } from './board-density'

/** What a worktop weighs, and the heaviest piece of it: it is cut at its joints and carried piece by piece. */
export interface WorktopMass {
  readonly whole: Figure
  readonly heaviestPiece: Figure
}

/** All that is read of a kitchen for it. */
export interface WorktopSite {
  readonly kitchen: Pick<Kitchen, 'units'>
  readonly units: readonly UnitPlan[]
  readonly survey: Pick<Survey, 'along'>
}

type Material = NonNullable<Worktop['material']>

/** kg/m³ and by how much the makes of it differ; kg/m² of the sheets on both faces. */
interface Make {
  readonly density: (thickness: number) => number
  readonly spread: number
  readonly faces: number
  readonly why: string
}

/** Two sheets of high-pressure laminate 0.8 mm thick at 1.45 kg/m² for each mm. Source: a maker's sheet. */
const LAMINATE_FACES = 2.32

/**
 * Laminate: particleboard by its thickness and its two faces; 38 mm × 600 comes to 15.1 kg a metre, as sheets print it.
 * Compact: laminate all through, 1.45 kg/m² for each mm. Stone: granite, EN 1991-1-1 (27 to 30 kN/m³); engineered stone is
 * lighter. Solid timber and solid surface: from memory. What is under a steel top nobody can guess.
 */
const MAKES: Readonly<Record<Material, Make | null>> = {
  laminate: {
    density: particleboardDensity,
    spread: 50,
    faces: LAMINATE_FACES,
    why: 'particleboard by its thickness with a laminate face on both sides',
  },
  'solid-timber': { density: () => 700, spread: 100, faces: 0, why: 'hardwood of 700 kg/m³, from memory' },
  compact: { density: () => 1450, spread: 50, faces: 0, why: 'laminate all through, 1 450 kg/m³' },
  'solid-surface': {
    density: () => 1700,
    spread: 100,
    faces: 0,
    why: 'solid surface of 1 700 kg/m³, from memory',
  },
  stone: {
    density: () => 2700,
    spread: 200,
    faces: 0,
    why: 'granite of 2 700 kg/m³; engineered stone is lighter',
  },
  steel: null,
}

const sideToSide: Basis = {
  kind: 'geometry',
  why: 'from side to side of the units it lies on; what is cut off at its ends comes on top',
}

/** Length, breadth and thickness at its density, as its sheet gives it if it does; assumed until it has been weighed. */
export function massOfWorktop(top: Worktop, site: WorktopSite): WorktopMass {
  const stretches = stretchesOf(top, site)
  const length = derive('mm', sideToSide, stretches.map(lengthOf), (...all) => all.reduce((a, b) => a + b, 0))
  const whole = hasValue(top.mass) ? top.mass : reckoned(top, stretches.length === 0 ? noLength(top) : length)
  return {
    whole,
    heaviestPiece: top.joints.length === 0 ? whole : piece(top, site, stretches, length, whole),
  }
}

const massFact = (top: Worktop): InputId => factId('worktops', top.id, 'mass')
const noLength = (top: Worktop): Figure => unknown('mm', [massFact(top)])

function reckoned(top: Worktop, length: Figure): Figure {
  const facts = [factId('worktops', top.id, 'material'), ...top.mass.from]
  const make = top.material === null ? null : MAKES[top.material]
  if (make === null) return unknown('kg', [massFact(top)], facts)
  const spread = assumed(0, make.spread, 'ratio', [], { kind: 'common-practice', why: make.why })
  const mass = derive(
    'kg',
    { kind: 'geometry', why: 'length × depth × thickness × density, and its faces' },
    [length, top.depth, top.thickness, spread],
    (l = 0, d = 0, t = 0, off = 0) => (l * d * (t * (make.density(t) + off) + make.faces * 1000)) / 1e9,
  )
  return restingOn(mass, facts)
}

/** The worktop over the units of one wall (or over islands), and over the arms of corner units round the corner. */
interface Stretch {
  readonly wall: string | null
  readonly left: Figure
  readonly right: Figure
}

const lengthOf = ({ left, right }: Stretch): Figure =>
  derive('mm', sideToSide, [left, right], (a = 0, b = 0) => b - a)

const ZERO: Figure = {
  state: 'known',
  value: 0,
  pm: 0,
  unit: 'mm',
  from: [],
  basis: { kind: 'geometry', why: 'its own left end' },
}

function stretchesOf(top: Worktop, { kitchen, units }: WorktopSite): readonly Stretch[] {
  const under = units.filter((unit) => top.over.includes(unit.unit))
  const againstWalls = units.filter((unit) => unit.kind !== 'island')
  const runs: readonly Stretch[] = worktopRuns({ worktops: [top] }, againstWalls)
  const islands = under
    .filter((unit) => unit.kind === 'island')
    .map((unit): Stretch => ({ wall: null, left: ZERO, right: unit.width }))
  const arms = kitchen.units
    .filter((unit) => top.over.includes(unit.id))
    .flatMap(({ returnLeft, returnRight }) => [returnLeft, returnRight].filter(hasValue))
    .map((arm): Stretch => ({ wall: null, left: ZERO, right: beyond(arm, top.depth) }))
  return [...runs, ...islands, ...arms]
}

/** What an arm adds past the square in the corner that the first run already covers. */
function beyond(arm: Figure, depth: Figure): Figure {
  return derive('mm', sideToSide, [arm, depth], (a = 0, d = 0) => Math.max(0, a - d))
}

/** The longest piece, by its share of the whole length; while a joint has no place, or no length is known, all of it. */
function piece(
  top: Worktop,
  { survey }: WorktopSite,
  stretches: readonly Stretch[],
  length: Figure,
  whole: Figure,
): Figure {
  const longest = stretches.map((stretch) => longestPiece(top, stretch, survey))
  const most = highestOf('mm', sideToSide, longest)
  if (stretches.length === 0 || !hasValue(most) || !hasValue(length) || length.value <= 0) return whole
  return derive(
    'kg',
    { kind: 'geometry', why: 'its longest piece between joints, by its share of the whole length' },
    [whole, most, length],
    (mass = 0, part = 0, all = 1) => (mass * part) / all,
  )
}
