import { z } from 'zod'
import { HEIGHT_NAMES, UNIT_KINDS } from './kinds'
import {
  count,
  degrees,
  density,
  exactLength,
  force,
  level,
  mass,
  minutes,
  perTurn,
  ratio,
  type Stamped,
  sheet,
  tape,
  whole,
} from './quantity'

/**
 * The kitchen file, version 1: what a survey and a delivery hold. It states facts and wishes; everything else is worked
 * out. Every field says who reads it: a place in the core that does now, or "later: …" for a named later piece of work.
 *
 * Rules of the file:
 * - every listed thing has an id, unique in its list; facts are cited by ids, never by position;
 * - a figure left out, or null, is unknown: a surveyed fact is never defaulted;
 * - arrays are sets unless their description says "in order";
 * - unknown keys are refused.
 */

export const FORMAT = 'dryrun-kitchen'
export const VERSION = 1

const id = z
  .string()
  .regex(
    /^[a-z0-9][a-z0-9-]{0,39}$/,
    'must be small letters, figures and hyphens, beginning with a letter or figure, at most 40 long',
  )
  .refine((s) => s !== 'constructor' && s !== 'prototype', 'is a word that cannot be an id')
const text = z.string().max(200)
/** A yes/no the user may not know. */
const yesNo = z.boolean().nullable().default(null)
/** Of anything that is bought: whether it has come. */
const delivered = yesNo.describe(
  'Seen and counted; false: looked for and not there. Read by: operations/check-delivery, rules/not-delivered.',
)
const oneOf = <const T extends readonly [string, ...string[]]>(...values: T) =>
  z.enum(values).nullable().default(null)
const list = <T extends z.ZodType>(item: T, why: string) => z.array(item).max(500).default([]).describe(why)

/** A position along a wall: as measured from either end, on either face. A bare figure is from the left end. */
const along = z.strictObject({
  from: z
    .enum(['left', 'right'])
    .default('left')
    .describe(
      'Which end of the wall it was measured from, seen from the face it was measured on. Read by: survey/positions.',
    ),
  face: z
    .enum(['room', 'other'])
    .default('room')
    .describe('Which face it was measured on. Read by: survey/positions.'),
  at: tape({ min: -1000, max: 100_000 }).describe('Distance from that end. Read by: survey/positions.'),
})

/** A height: up or down from a line, or above the floor at that place. Give one of the three. */
const height = z.strictObject({
  line: id.default('line').describe('Which line it was read from. Read by: survey/positions.'),
  up: level().describe('Above the line. Read by: survey/positions.'),
  down: level().describe('Below the line (a drop; a bigger drop is lower). Read by: survey/positions.'),
  aboveFloor: tape().describe('Above the floor surface at that place. Read by: survey/positions.'),
})

/** A place on the plan: along a wall and out from its finished face. */
const place = z.strictObject({
  wall: id.describe('Read by: survey/positions.'),
  along: along.describe('Read by: survey/positions.'),
  out: tape({ min: 0, max: 100_000 }).describe(
    'Out from the finished face of that wall. Read by: survey/positions.',
  ),
})

/** What a tape or staff reads at a mark: the mark lies so far above the line, or so far below it. Give one of the two. */
const markReading = z
  .strictObject({
    up: level().describe(
      'The mark lies above the line: the staff held upside down. Read by: survey/carried.',
    ),
    down: level().describe('The mark lies below the line. Read by: survey/carried.'),
  })
  .prefault({})

/** One mark read from two lines: how a line is carried on from one before it. */
const carried = z.strictObject({
  id,
  line: id.default('line').describe('A line listed before this one. Read by: survey/carried.'),
  there: markReading.describe('The mark as read from that line. Read by: survey/carried.'),
  here: markReading.describe('The same mark as read from this one. Read by: survey/carried.'),
})

const line = z.strictObject({
  id,
  offset: level().describe(
    'Height above the first line; the first line itself is 0. Read by: survey/positions.',
  ),
  carried: list(
    carried,
    'Marks read from a line before it and from this one, where nobody typed how far they are apart. Read by: survey/carried.',
  ),
  closing: level().describe(
    'By how much it missed its own start after going round the room. Read by: rules/line-out-of-true.',
  ),
  reversal: level().describe(
    'Two-wall reversal error of the laser over 5 m. Read by: rules/line-out-of-true.',
  ),
})

export const MATERIALS = [
  'tile',
  'adhesive',
  'plaster-skim',
  'plaster',
  'lime-plaster',
  'plasterboard',
  'void',
  'dabs',
  'timber-stud',
  'metal-stud',
  'brick',
  'dense-block',
  'aircrete',
  'old-brick',
  'concrete',
  'insulation',
  'lath',
  'plywood',
  'osb',
  'timber-batten',
  'stone',
  'steel',
] as const
const layer = z.strictObject({
  id,
  material: oneOf(...MATERIALS).describe(
    'Null: not known yet; then what a fixing reaches behind it is not known either. Read by: fixings/base-material.',
  ),
  thickness: tape({ min: 0, max: 2000 }).describe('Read by: fixings/layers, holes/depth.'),
})

/** The eleven kinds of wall of the trade; null means not known, and then nothing is drilled to find out. */
export const CONSTRUCTIONS = [
  'masonry',
  'aircrete',
  'old-brick',
  'dot-and-dab',
  'timber-stud',
  'metal-stud',
  'lath-and-plaster',
  'concrete',
  'insulated-lining',
  'over-opening',
  'chimney-breast',
] as const

const stud = z.strictObject({
  id,
  centre: along.describe('Read by: fixings/studs.'),
  width: tape({ min: 20, max: 300 }).describe('Read by: fixings/studs.'),
  material: oneOf('timber', 'steel').describe('Read by: fixings/studs.'),
  confirmed: z
    .enum(['both-edges', 'one-beep', 'fixings-seen', 'seen-open', 'not-found'])
    .nullable()
    .default(null)
    .describe('How it was found; one beep is not a stud. Read by: fixings/studs.'),
})

/**
 * What the timber studs of a wall are graded as: for the published formulas of what a screw holds. Facts of the stamp on
 * the timber, or of whoever supplied it; never guessed.
 */
const studTimber = z.strictObject({
  grade: oneOf('C16', 'C24', 'other').describe(
    'Strength class stamped on the studs (EN 338). Read by: fixings/stud-timber.',
  ),
  density: density({ min: 200, max: 1200 }).describe(
    'Characteristic density of that class, kg/m³: less than what the timber weighs on average. Read by: fixings/stud-timber.',
  ),
  specificGravity: ratio({ min: 0.2, max: 1.2 }).describe(
    'Assigned specific gravity of the species (North America), such as 0.42. Read by: fixings/stud-timber.',
  ),
})

const nogging = z.strictObject({
  id,
  kind: z.enum(['nogging', 'pattress']).describe('Read by: fixings/studs.'),
  from: along.describe('Left end. Read by: fixings/studs.'),
  to: along.describe('Right end. Read by: fixings/studs.'),
  centre: height.describe('Read by: fixings/studs.'),
  depth: tape().describe('Height of the timber or board on the wall. Read by: fixings/studs.'),
  thickness: tape().describe('Read by: operations/timber-section.'),
})

const accessory = z.strictObject({
  id,
  kind: z
    .enum([
      'socket',
      'switch',
      'spur',
      'cooker-outlet',
      'isolator',
      'light',
      'aerial',
      'data',
      'consumer-unit',
      'other',
    ])
    .describe('Read by: holes/bands.'),
  face: z
    .enum(['room', 'other'])
    .default('room')
    .describe('Which face of the wall it is on. Read by: holes/bands.'),
  along: along.describe('Centre. Read by: holes/bands.'),
  height: height.describe('Centre. Read by: holes/bands.'),
  width: tape({ min: 20, max: 1000 }).describe(
    'Width of its plate. Read by: holes/bands, operations/behind-unit.',
  ),
  tall: tape({ min: 20, max: 1000 }).describe(
    'Height of its plate. Read by: holes/bands, operations/behind-unit.',
  ),
  live: yesNo.describe(
    'Known live, known dead, not known. Read by: later: rules of the trade (reach of isolators).',
  ),
  serves: id
    .nullable()
    .default(null)
    .describe('The appliance it feeds or cuts off. Read by: rules/hose-and-lead, rules/plinth-heater.'),
  cutOut: yesNo.describe(
    'The back of the unit in front of it will be cut round it. Read by: rules/outlet-in-unit.',
  ),
  standsProud: tape({ max: 300 }).describe(
    'How far it, or the plug in it, stands out from the finished face. Read by: later: rules of the trade (F35, F66).',
  ),
})

const service = z.strictObject({
  id,
  kind: z
    .enum(['cable', 'water-cold', 'water-hot', 'heating', 'gas', 'waste', 'duct', 'not-known'])
    .describe('Read by: holes/bands.'),
  face: z.enum(['room', 'other']).default('room').describe('Read by: holes/bands.'),
  points: z
    .array(
      z.strictObject({
        id,
        along: along.describe('Read by: holes/bands.'),
        height: height.describe('Read by: holes/bands.'),
      }),
    )
    .max(50)
    .describe('In order along its run. Read by: holes/bands.'),
  width: tape().describe('Diameter or width. Read by: holes/bands, operations/behind-unit.'),
  depth: tape().describe('Depth of its near side behind the finished face. Read by: holes/bands.'),
  traced: oneOf('seen', 'detector', 'drawing', 'guessed').describe('How it is known. Read by: holes/bands.'),
})

const lintel = z.strictObject({
  id,
  kind: oneOf('timber', 'concrete', 'prestressed', 'steel').describe('Read by: holes/obstructions.'),
  left: along.describe('Read by: holes/obstructions.'),
  right: along.describe('Read by: holes/obstructions.'),
  bottom: height.describe('Read by: holes/obstructions.'),
  top: height.describe('Read by: holes/obstructions.'),
})

const opening = z.strictObject({
  id,
  kind: z.enum(['door', 'window', 'arch', 'hatch']).describe('Read by: survey/openings.'),
  left: along.describe('Read by: survey/openings.'),
  right: along.describe('Read by: survey/openings.'),
  bottom: height.describe('Threshold or sill. Read by: survey/openings.'),
  top: height.describe('Read by: survey/openings.'),
  architrave: tape().describe('Width of the trim round it. Read by: rules/run-at-opening.'),
  boardProjection: tape().describe(
    'Window board out from the wall. Read by: heights/demands, rules/window-board.',
  ),
  boardLeft: height
    .prefault({})
    .describe('Underside of the window board at its left end. Read by: heights/demands, rules/window-board.'),
  boardRight: height
    .prefault({})
    .describe(
      'Underside of the window board at its right end. Read by: heights/demands, rules/window-board.',
    ),
  sashBottom: height
    .prefault({})
    .describe('Underside of the sash that opens. Read by: rules/sash-over-worktop.'),
  hinge: oneOf('left', 'right', 'top', 'bottom', 'slides').describe(
    'Seen from inside. Read by: rules/room-door-meets-unit, rules/sash-meets-tap.',
  ),
  opens: oneOf('in', 'out', 'neither').describe(
    'Read by: rules/room-door-meets-unit, rules/passage, rules/sash-meets-tap.',
  ),
  leaf: tape().describe(
    'Width of the leaf or sash. Read by: rules/room-door-meets-unit, rules/sash-meets-tap.',
  ),
  handle: tape().describe('Projection of its handle. Read by: rules/room-door-meets-unit, rules/passage.'),
})

const wall = z.strictObject({
  id,
  name: text.optional().describe("The user's own name. Read by: words."),
  length: tape({ min: 1, max: 100_000 }).describe(
    'Corner to corner, finished faces. Read by: survey/outline.',
  ),
  lengthAt: oneOf('floor', 'worktop', 'wall-unit').describe(
    'At which height the length was taken. Read by: later: rules of the trade (F01).',
  ),
  lengthTo: oneOf('bare', 'finished').describe(
    'To bare or finished faces of the neighbours. Read by: later: rules of the trade (F29).',
  ),
  widths: list(
    z.strictObject({
      id,
      at: oneOf('floor', 'worktop', 'wall-unit').describe(
        'At which height; null: nobody said, and it counts at each. Read by: rules/run-too-long.',
      ),
      depth: oneOf('back', 'middle', 'front').describe(
        'How far out from the wall; null: nobody said. Read by: rules/run-too-long.',
      ),
      width: tape().describe('Read by: rules/run-too-long, rules/worktop-trapped, first/run.'),
    }),
    'Up to nine widths of an alcove or run. Read by: rules/run-too-long, rules/bay-pinched.',
  ),
  cornerRight: z
    .strictObject({
      angle: degrees({ min: 10, max: 350 }).describe('Inside angle. Read by: survey/outline.'),
      thisLeg: tape().describe('Mark on this wall, from the corner. Read by: survey/outline.'),
      nextLeg: tape().describe('Mark on the next wall, from the corner. Read by: survey/outline.'),
      across: tape().describe('Straight across between the two marks. Read by: survey/outline.'),
    })
    .prefault({})
    .describe('The corner at the right end, as an angle or three lengths. Read by: survey/outline.'),
  construction: z
    .enum(CONSTRUCTIONS)
    .nullable()
    .default(null)
    .describe('What the wall is made of; null: not known. Read by: fixings/wall.'),
  knock: oneOf('solid', 'hollow', 'mixed', 'blown').describe(
    'What knocking on it says. Read by: fixings/wall.',
  ),
  layers: z
    .array(layer)
    .max(20)
    .default([])
    .describe('In order, from the finished face inwards. Read by: fixings/layers.'),
  layersToCome: z
    .array(layer)
    .max(10)
    .default([])
    .describe('In order, finishes still to be put on the face before fixing. Read by: fixings/layers.'),
  thickness: tape().describe('The whole wall, face to face. Read by: holes/bands (thin walls).'),
  behind: oneOf('outside', 'room', 'neighbour', 'void').describe(
    'What is on the other side. Read by: holes/bands.',
  ),
  otherFaceChecked: yesNo.describe(
    'Somebody has looked for accessories on the other face. Read by: holes/bands.',
  ),
  otherFaceShift: level().describe(
    "The other face's left end (seen from there), beyond this face's right end: + is further. Read by: survey/positions.",
  ),
  studs: list(stud, 'Studs found. Read by: fixings/studs.'),
  studTimber: studTimber
    .prefault({})
    .describe('What its timber studs are graded as. Read by: fixings/stud-timber.'),
  noggings: list(nogging, 'Timber or board let in, or to be let in. Read by: fixings/studs.'),
  plumb: list(
    z.strictObject({
      id,
      along,
      over: tape().describe('Height measured over. Read by: placing/wall-lean.'),
      lean: level().describe('Top out into the room: +. Read by: placing/wall-lean.'),
    }),
    'Plumb readings. Read by: rules/panel-short, rules/filler-short.',
  ),
  straightness: list(
    z.strictObject({
      id,
      height,
      along,
      bow: level().describe(
        'Hollow: +, belly: −, from a straightedge. Read by: rules/wall-bellies, rules/panel-short.',
      ),
      over: tape({ max: 20_000 }).describe(
        'Length of the straightedge, between the two points it lay on. Read by: rules/out-of-flat.',
      ),
    }),
    'Straightness readings. Read by: rules/wall-bellies.',
  ),
  accessories: list(accessory, 'Accessories on both faces. Read by: holes/bands.'),
  services: list(service, 'Cables and pipes known. Read by: holes/bands.'),
  lintels: list(lintel, 'Lintels and steels. Read by: holes/obstructions.'),
  openings: list(opening, 'Doors and windows. Read by: survey/openings.'),
  traced: oneOf('whole', 'part', 'not-yet').describe(
    'Whether a detector has been over it. Read by: holes/bands, operations.',
  ),
  tracedDepth: tape({ max: 500 }).describe(
    'How deep the detector looks, by its maker, in this wall. Read by: holes/depth.',
  ),
  provedDead: yesNo.describe(
    'The circuits about this wall proved dead by someone competent, for the drilling. Read by: holes/depth.',
  ),
})

const box = z.strictObject({
  id,
  kind: z
    .enum([
      'boxing',
      'beam',
      'chimney',
      'radiator',
      'step',
      'skirting',
      'coving',
      'picture-rail',
      'pipe',
      'light',
      'boiler',
      'other',
    ])
    .describe('Read by: placing/obstacles.'),
  wall: id.describe('Read by: placing/obstacles.'),
  left: along.describe('Read by: placing/obstacles.'),
  right: along.describe('Read by: placing/obstacles.'),
  near: tape().describe('Nearest face, out from the wall. Read by: placing/obstacles.'),
  out: tape().describe('Furthest face, out from the wall. Read by: placing/obstacles.'),
  bottom: height.describe('Read by: placing/obstacles.'),
  top: height.describe('Read by: placing/obstacles.'),
})

/** A thing somebody must be able to reach for as long as the kitchen stands. */
const accessPoint = z.strictObject({
  id,
  kind: z
    .enum(['stopcock', 'gas-tap', 'valve', 'rodding-eye', 'meter', 'consumer-unit', 'other'])
    .describe('Read by: rules/built-in, rules/meter-door.'),
  wall: id.describe('Read by: later: rules of the trade (F39).'),
  along: along.describe('Centre. Read by: later: rules of the trade (F39).'),
  height: height.describe('Centre. Read by: later: rules of the trade (F39).'),
  out: tape().describe('Out from the wall. Read by: later: rules of the trade (F39).'),
  door: tape().describe('Width of its own door or flap, hinged at the side. Read by: rules/meter-door.'),
  panel: yesNo.describe(
    'There will be a loose panel or a cut-out to reach it. Read by: later: rules of the trade (F39).',
  ),
})

const foot = z.strictObject({
  id,
  x: sheet({ min: -500, max: 5000 }).describe(
    "From the unit's left side to the foot's centre. Read by: heights/legs.",
  ),
  y: sheet({ min: -500, max: 5000 }).describe(
    "From the unit's back to the foot's centre. Read by: heights/legs.",
  ),
})

const legs = z.strictObject({
  min: sheet().describe('Shortest, floor to underside of the carcass. Read by: heights/legs.'),
  max: sheet().describe('Longest. Read by: heights/legs.'),
  delivered: sheet().describe('As delivered or set now. Read by: heights/legs.'),
  perTurn: perTurn().describe('Change of length in one turn. Read by: daylog/turns.'),
  maySwing: yesNo.describe(
    'The maker allows the unit to pivot on its legs when stood up. Read by: placing/stand-up.',
  ),
})

const hanging = z.strictObject({
  plateBelowTop: sheet().describe(
    'Hook-on edge of the wall plate or rail, below the top of the unit, adjuster in mid travel. Read by: fixings/hanging.',
  ),
  plateHoleBelow: sheet({ min: -200, max: 200 }).describe(
    'Fixing hole of the plate or rail below that edge (− is above). Read by: fixings/hanging.',
  ),
  plateHoles: whole({ min: 1, max: 12 }).describe('Fixing holes in each plate. Read by: fixings/hanging.'),
  plateHolePitch: sheet().describe(
    'Hole to hole along the plate, spread evenly about its centre. Read by: fixings/hanging.',
  ),
  hangerIn: sheet().describe('Centre of the hanger in from the side of the unit. Read by: fixings/hanging.'),
  hookLift: sheet().describe(
    'How far the unit is lifted above its place to hook on. Read by: placing/hook-on.',
  ),
  up: sheet().describe('Travel of the height screw upwards from mid. Read by: daylog/turns, heights.'),
  down: sheet().describe('Travel downwards from mid. Read by: daylog/turns, heights.'),
  heightScrew: z
    .strictObject({
      place: oneOf('upper', 'lower', 'front', 'inner').describe(
        'Which of the two screws it is. Read by: daylog/turns.',
      ),
      perTurn: perTurn().describe('Read by: daylog/turns.'),
      clockwise: oneOf('raises', 'lowers').describe(
        'What clockwise does to the unit. Read by: daylog/turns.',
      ),
    })
    .prefault({}),
  drawInScrew: z
    .strictObject({
      place: oneOf('upper', 'lower', 'front', 'inner').describe('Read by: words.'),
      perTurn: perTurn().describe('Read by: daylog/turns.'),
    })
    .prefault({}),
  antiLift: yesNo.describe('Has a lock against being lifted off. Read by: operations/lock.'),
  ratedPerHanger: mass().describe("The maker's stated load for one hanger. Read by: fixings/verdict."),
})

const door = z.strictObject({
  id,
  hinge: oneOf('left', 'right', 'top', 'bottom').describe(
    'Read by: operations/fronts, placing/doors-at-corners, rules/flap-rise.',
  ),
  width: sheet().describe('Read by: lifting/mass.'),
  height: sheet().describe('Read by: lifting/mass.'),
  thickness: sheet().describe('Read by: lifting/mass, rules/inner-drawer-fouled.'),
  mass: mass().describe('Read by: lifting/mass.'),
  opens: degrees({ min: 0, max: 270 }).describe(
    'Furthest opening. Read by: rules/door-stops-short, rules/door-strikes-wall, rules/inner-drawer-fouled.',
  ),
  handle: sheet().describe('Handle projection. Read by: rules/corner-binds, rules/door-stops-short.'),
  rise: sheet().describe('Of a flap: how far it rises above the top of the unit. Read by: rules/flap-rise.'),
})

const drawer = z.strictObject({
  id,
  travel: sheet().describe('Read by: rules/corner-binds.'),
  inner: yesNo.describe('Behind a door. Read by: rules/inner-drawer-fouled.'),
  height: sheet().describe('Front height. Read by: lifting/mass.'),
  boxTop: sheet().describe(
    'Top of its box below the top of the carcass. Read by: rules/under-hob, rules/drawer-and-trap.',
  ),
  mass: mass().describe('Box and front. Read by: lifting/mass.'),
  handle: sheet().describe('Read by: rules/corner-binds.'),
})

export const STANDS = [
  'legs',
  'shims',
  'plinth-frame',
  'floor-cleat',
  'plates',
  'rail',
  'back-rail-screws',
  'cleat',
  'nothing',
] as const

const unit = z.strictObject({
  id,
  name: text
    .optional()
    .describe("The user's own text; a written-out default is made if absent. Read by: words."),
  kind: z.enum(UNIT_KINDS).describe('Read by: units.'),
  wall: id.describe('The wall its back is towards. Read by: units/positions.'),
  order: z
    .strictObject({
      left: along.optional().describe('Left side from the corner. Read by: units/positions.'),
      rightOf: id
        .optional()
        .describe('Stands to the right of this unit or finishing part. Read by: units/positions.'),
      leftOf: id
        .optional()
        .describe('Stands to the left of this unit or finishing part. Read by: units/positions.'),
      gap: sheet().describe(
        'Gap to that neighbour; left out or null with rightOf/leftOf means they touch. Read by: units/positions.',
      ),
    })
    .describe('Where along the wall: one of left, rightOf, leftOf. Read by: units/positions.'),
  standOff: sheet().describe(
    'Back of the carcass out from the finished face; null: against the wall. Read by: units/positions.',
  ),
  width: sheet({ min: 10, max: 5000 }).describe('Read by: units.'),
  height: sheet({ min: 10, max: 5000 }).describe('Carcass, without legs or worktop. Read by: units.'),
  depth: sheet({ min: 10, max: 3000 }).describe('Carcass, without fronts. Read by: units.'),
  returnLeft: sheet().describe(
    'Corner unit: length of its arm along the wall on the left; null: none (a straight corner unit). Read by: units/solids.',
  ),
  returnRight: sheet().describe(
    'Corner unit: length of its arm along the wall on the right. Read by: units/solids.',
  ),
  returnDepth: sheet().describe('Corner unit: depth of that arm. Read by: units/solids.'),
  board: sheet().describe('Panel thickness. Read by: lifting/mass, fixings/zones.'),
  back: sheet().describe('Back panel thickness. Read by: lifting/mass.'),
  void: sheet().describe('Service void behind the back panel. Read by: fixings/zones.'),
  front: sheet().describe('Front thickness. Read by: heights/hook-on, fixings/statics.'),
  stands: z
    .enum(STANDS)
    .nullable()
    .default(null)
    .describe('How it stands or hangs. Read by: operations, heights, fixings.'),
  feet: list(foot, 'Feet anywhere. Read by: heights/legs.'),
  legs: legs.prefault({}).describe('Read by: heights/legs.'),
  hanging: hanging.prefault({}).describe('Read by: fixings/hanging.'),
  backRail: z
    .strictObject({
      fromTop: sheet().describe("Top edge of the back rail below the unit's top. Read by: fixings/zones."),
      height: sheet().describe('Read by: fixings/zones.'),
      thickness: sheet().describe('Read by: fixings/zones.'),
    })
    .prefault({})
    .describe('The rail through which it may be screwed. Read by: fixings/zones.'),
  bottomRail: z
    .strictObject({
      fromBottom: sheet().describe(
        "Bottom edge of a lower fixing rail above the unit's underside. Read by: fixings/zones.",
      ),
      height: sheet().describe('Read by: fixings/zones.'),
      thickness: sheet().describe('Read by: fixings/zones.'),
    })
    .prefault({})
    .describe('A lower rail for second fixings. Read by: fixings/zones.'),
  shelves: count().describe('Loose shelves. Read by: lifting/mass.'),
  doors: list(door, 'Read by: lifting/mass, operations/fronts.'),
  drawers: list(drawer, 'Read by: lifting/mass, operations/fronts.'),
  massEmpty: mass().describe('Whole unit as the sheet gives it. Read by: lifting/mass.'),
  massStripped: mass().describe('Without doors, drawers, shelves. Read by: lifting/mass.'),
  contents: mass().describe('What will stand in it. Read by: fixings/statics.'),
  assembled: oneOf('flat-packed', 'built').describe('As delivered. Read by: operations/assemble.'),
  hand: oneOf('left', 'right', 'either').describe(
    'Of a corner unit: on which side, seen from its front, the corner lies. Of another: its door’s hinges. Read by: operations/check-delivery, rules/wrong-hand.',
  ),
  delivered,
  applianceBay: id.nullable().default(null).describe('The appliance that goes in it. Read by: heights/bays.'),
})

const appliance = z.strictObject({
  id,
  name: text.optional().describe("The user's own text. Read by: words."),
  kind: z
    .enum([
      'dishwasher',
      'washing-machine',
      'fridge',
      'freezer',
      'fridge-freezer',
      'oven',
      'hob',
      'hood',
      'microwave',
      'boiler',
      'sink',
      'plinth-heater',
      'other',
    ])
    .describe('Read by: heights/bays, operations/connect.'),
  fuel: oneOf('electric', 'gas', 'both', 'none').describe('Read by: operations/connect.'),
  heightMin: sheet().describe('Feet wound in. Read by: heights/bays.'),
  heightMax: sheet().describe('Feet wound out. Read by: heights/bays.'),
  widthNeeded: sheet().describe(
    'Clear width its sheet asks for. Read by: rules/bay-pinched, rules/hood-gap.',
  ),
  depthNeeded: sheet().describe('Read by: later: rules of the trade (F66).'),
  workingGap: sheet().describe('Room above it to slide it in. Read by: heights/bays.'),
  clearAbove: sheet().describe('Read by: later: rules of the trade (F63).'),
  clearSide: sheet().describe('Read by: later: rules of the trade (F62).'),
  clearTall: sheet().describe(
    'To the side of a tall unit or wall. Read by: later: rules of the trade (F62).',
  ),
  clearBelow: sheet().describe('Read by: rules/boiler-clearance.'),
  clearFront: sheet().describe('Working space in front. Read by: rules/boiler-clearance.'),
  clearFrom: oneOf('worktop', 'pan-supports').describe(
    'From where a hood’s or hob’s clearance above is measured. Read by: later: rules of the trade (F63).',
  ),
  panSupports: sheet().describe(
    'Of a hob: its pan supports above the worktop. Read by: later: rules of the trade (F63).',
  ),
  below: sheet().describe(
    'Of a hob or bowl: how far it reaches below the top of the worktop. Read by: later: rules of the trade (F67, F105).',
  ),
  underside: height
    .prefault({})
    .describe('Of a hood that hangs by itself: its underside as planned. Read by: rules/hood-height.'),
  sleeveMin: sheet().describe(
    'Of a hood: underside to the top of its chimney, pushed in. Read by: rules/hood-sleeve.',
  ),
  sleeveMax: sheet().describe('The same, drawn out. Read by: rules/hood-sleeve.'),
  doorOut: sheet().describe(
    'How far its open door reaches out from the front of the carcass. Read by: rules/corner-binds, rules/aisle, rules/passage.',
  ),
  doorNeeds: degrees({ min: 0, max: 180 }).describe(
    'Door opening its inner drawers or shelves need. Read by: rules/fridge-in-corner.',
  ),
  hinge: oneOf('left', 'right', 'bottom', 'top').describe('Read by: rules/fridge-in-corner.'),
  plinthMin: sheet().describe(
    'Least plinth height its furniture door allows. Read by: rules/furniture-door.',
  ),
  plinthMax: sheet().describe('Greatest. Read by: rules/furniture-door.'),
  frontMin: sheet().describe('Least height of its furniture door. Read by: rules/furniture-door.'),
  frontMax: sheet().describe('Greatest. Read by: rules/furniture-door.'),
  tapHeight: sheet().describe(
    'Of a sink: top of the tap above the worktop. Read by: rules/sash-meets-tap, rules/bowl-and-tap.',
  ),
  tapFromWall: sheet().describe(
    'Tap hole out from the wall. Read by: rules/sash-meets-tap, rules/bowl-and-tap.',
  ),
  tapLever: sheet().describe(
    'How far the lever swings from the tap hole. Read by: later: rules of the trade (F105).',
  ),
  outlet: sheet().describe(
    'Of a sink: underside of the trap below the top of the worktop. Read by: rules/waste-fall, rules/drawer-and-trap.',
  ),
  case: id
    .nullable()
    .default(null)
    .describe('Of a boiler: the fixed box it is, among the boxes. Read by: rules/boiler-clearance.'),
  ductBends: count().describe('Of a hood: bends in its duct. Read by: later: rules of the trade (F98).'),
  ductLength: tape().describe('Length of its duct. Read by: later: rules of the trade (F98).'),
  ductBendsMax: count().describe('By its sheet. Read by: later: rules of the trade (F98).'),
  ductLengthMax: sheet().describe('By its sheet. Read by: later: rules of the trade (F98).'),
  leadLength: sheet().describe('Read by: rules/hose-and-lead.'),
  hoseLength: sheet().describe('Read by: rules/hose-and-lead.'),
  ventArea: count().describe('Vent opening its sheet asks for, cm². Read by: rules/vent-area.'),
  ventPlanned: count().describe(
    'Vent opening there will be in plinth and top, cm². Read by: rules/vent-area.',
  ),
  shelf: sheet().describe(
    'Of an appliance built into a tall unit: top of the shelf it stands on, above the underside of that unit. Read by: rules/appliance-in-tall.',
  ),
  mass: mass().describe('Read by: lifting/mass.'),
  over: id
    .nullable()
    .default(null)
    .describe('The unit or worktop it stands in or on. Read by: operations/connect.'),
  delivered,
})

const finishing = z.strictObject({
  id,
  name: text.optional().describe("The user's own text. Read by: words."),
  kind: z
    .enum(['end-panel', 'filler', 'plinth', 'cornice', 'pelmet', 'upstand', 'splashback', 'scribe'])
    .describe('Read by: operations/finishing, units/positions.'),
  wall: id.nullable().default(null).describe('Read by: units/positions.'),
  of: z
    .array(id)
    .max(60)
    .default([])
    .describe('The units it belongs to, as a set. Read by: operations/finishing.'),
  order: z
    .strictObject({ left: along.optional(), rightOf: id.optional(), leftOf: id.optional() })
    .optional()
    .describe('Where along the wall a panel or filler stands. Read by: units/positions.'),
  width: sheet().describe(
    'Along the wall (thickness of a panel, width of a filler). Read by: units/positions.',
  ),
  height: sheet().describe('Read by: heights/plinth.'),
  depth: sheet().describe('Read by: rules/panel-short.'),
  length: sheet().describe('Read by: later: cutting.'),
  setBack: sheet().describe('Plinth face back from the front of the carcass. Read by: heights/plinth.'),
  openingHeight: sheet().describe(
    'Of a plinth: height of the highest thing let into it, such as a vent or a heater. Read by: rules/plinth-opening.',
  ),
  scribe: sheet().describe(
    'Allowance to be cut to the wall, included in its width. Read by: rules/filler-short.',
  ),
  delivered,
})

const worktop = z.strictObject({
  id,
  name: text.optional().describe("The user's own text. Read by: words."),
  over: z
    .array(id)
    .max(60)
    .default([])
    .describe('The units it lies on, as a set. Read by: heights/worktop, operations/finishing.'),
  thickness: sheet().describe('Read by: heights/worktop.'),
  depth: sheet().describe('Read by: later: worktops.'),
  freeOverhang: sheet().describe(
    'Furthest it reaches past what carries it, as for a breakfast bar. Read by: later: rules of the trade (F106).',
  ),
  freeOverhangMax: sheet().describe('By its maker. Read by: later: rules of the trade (F106).'),
  material: oneOf('laminate', 'solid-timber', 'stone', 'compact', 'solid-surface', 'steel').describe(
    'Read by: later: worktops.',
  ),
  mass: mass().describe('Read by: later: worktops.'),
  joints: list(
    z.strictObject({ id, along, wall: id.describe('Read by: later: worktops.') }),
    'Read by: later: worktops.',
  ),
  cutouts: list(
    z.strictObject({
      id,
      for: id.describe(
        'The sink or hob it is cut for, listed among the appliances. Read by: later: worktops.',
      ),
      wall: id.describe('Read by: later: worktops.'),
      left: along.describe('Read by: later: worktops.'),
      width: sheet().describe('Along the wall. Read by: later: worktops.'),
      front: sheet().describe('From the front edge of the worktop. Read by: later: worktops.'),
      depth: sheet().describe('From front to back. Read by: later: worktops.'),
    }),
    'Read by: later: worktops.',
  ),
  delivered,
})

const heightWish = z.strictObject({
  id,
  of: z.enum(HEIGHT_NAMES).describe('Read by: heights/demands.'),
  min: height.optional().describe('Not lower than. Read by: heights/demands.'),
  max: height.optional().describe('Not higher than. Read by: heights/demands.'),
  place: place.optional().describe('Where it is measured above the floor. Read by: heights/demands.'),
  equals: z.enum(HEIGHT_NAMES).optional().describe('In line with another height. Read by: heights/demands.'),
})

/** A side of an order wish: one operation by id, or every operation of a kind (on one unit, or all). */
const operationSet = z.strictObject({
  operation: z.string().max(200).optional().describe('One operation id. Read by: order/wishes.'),
  kind: z.string().max(60).optional().describe('All operations of this kind. Read by: order/wishes.'),
  on: id.optional().describe('Only those on this unit or wall. Read by: order/wishes.'),
})

const orderWish = z.strictObject({
  id,
  before: operationSet,
  after: operationSet,
  minLag: minutes().describe('At least this long between end and start; null: none. Read by: order/wishes.'),
  maxLag: minutes().describe('At most this long between end and start; null: none. Read by: order/wishes.'),
  hard: z.boolean().default(true).describe('Must, or would like. Read by: order/wishes.'),
})

const person = z.strictObject({
  id,
  name: text.optional().describe("The user's own text. Read by: words."),
  filter: oneOf('man', 'woman').describe(
    'Which column of the published lifting filter to read. Read by: lifting/filter.',
  ),
  own: mass().describe(
    'A lower figure of their own, close to the body at elbow height. Read by: lifting/filter.',
  ),
  alwaysThere: z
    .boolean()
    .default(true)
    .describe('False: a helper with windows. Read by: order; later: crew schedule.'),
  windows: list(
    z.strictObject({
      id,
      from: z.string().max(30).describe('Read by: later: crew schedule.'),
      to: z.string().max(30).describe('Read by: later: crew schedule.'),
    }),
    'When a helper is there, as local date and time. Read by: later: crew schedule.',
  ),
})

const fixing = z.strictObject({
  id,
  name: text.optional().describe("The user's own text. Read by: words."),
  kind: z
    .enum(['wood-screw', 'screw-and-plug', 'frame-plug', 'anchor', 'stand-off', 'bracket-screw', 'lag-screw'])
    .describe('Read by: fixings/choose.'),
  diameter: sheet({ min: 1, max: 30 }).describe('Read by: fixings/choose.'),
  length: sheet({ min: 5, max: 500 }).describe('Read by: fixings/length.'),
  thread: sheet({ min: 1, max: 500 }).describe(
    'Of a screw into timber: length of its thread, to the point. Read by: fixings/published-pull.',
  ),
  core: sheet({ min: 0.5, max: 30 }).describe(
    'Its diameter between the threads. Read by: fixings/published-pull.',
  ),
  tip: sheet({ min: 0, max: 50 }).describe(
    'Of a lag screw: length of its tapered tip, which does not count. Read by: fixings/published-pull.',
  ),
  bit: sheet({ min: 0, max: 40 }).describe('Drill bit or pilot. Read by: holes.'),
  holeDepth: sheet({ min: 0, max: 500 }).describe(
    'Depth its maker asks for in the base material. Read by: holes/depth.',
  ),
  embedment: sheet({ min: 0, max: 500 }).describe(
    'Least length in the base material. Read by: fixings/length.',
  ),
  for: z
    .array(z.enum(['rail', 'plate', 'second-fixing', 'base-bracket', 'tall-restraint', 'back-rail', 'cleat']))
    .max(7)
    .default([])
    .describe('What it is bought for, as a set. Read by: fixings/choose.'),
  into: z
    .array(z.enum(MATERIALS))
    .max(22)
    .default([])
    .describe('Base materials it is made for, as a set. Read by: fixings/choose.'),
  pull: force().describe("The maker's recommended pull in that material. Read by: fixings/verdict."),
  shear: force().describe("The maker's recommended shear in that material. Read by: fixings/verdict."),
  delivered,
})

const rail = z.strictObject({
  id,
  wall: id.describe('Read by: fixings/hanging.'),
  units: z.array(id).max(60).describe('The wall units that hang on it, as a set. Read by: fixings/hanging.'),
  thickness: sheet().describe('Stand-off of the rail from the wall. Read by: fixings/length.'),
  overhang: sheet().describe('How far it may run past its last fixing. Read by: fixings/hanging.'),
  maxSpacing: sheet().describe("The maker's furthest fixing to fixing. Read by: fixings/hanging."),
  slots: sheet().describe('Pitch of its slots; null: drilled where wanted. Read by: fixings/hanging.'),
  length: sheet().describe('Stock length. Read by: later: cutting.'),
  delivered,
})

const YEAR = { error: 'must be a year from 1000 to 2200' }
/** Whoever reads the way in: the same for each of its figures. */
const ROUTE = 'Read by: later: rules of the trade (F07, F08).'

export const kitchenSchema = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  name: text.describe('Read by: app, sheets.'),
  region: oneOf('uk', 'north-america', 'continental').describe(
    'Which region pack; never guessed. Read by: region.',
  ),
  display: z.enum(['mm', 'inch']).default('mm').describe('Read by: words/format.'),
  demo: z.boolean().default(false).describe('An invented kitchen: said on screen. Read by: app.'),
  survey: z
    .strictObject({
      date: z.string().max(30).optional().describe('Read by: sheets.'),
      by: text.optional().describe('Read by: sheets.'),
      tapePrecision: exactLength({ min: 0, max: 100 }).describe(
        'Usual ± of a taped length; null: the stated usual one. Read by: kitchen/stamp.',
      ),
      levelPrecision: exactLength({ min: 0, max: 100 }).describe(
        'Usual ± of a reading off the line. Read by: kitchen/stamp.',
      ),
      houseBuilt: z
        .number()
        .int()
        .min(1000, YEAR)
        .max(2200, YEAR)
        .nullable()
        .default(null)
        .describe('Year. Read by: operations/make-safe (asbestos).'),
      gas: yesNo.describe('Gas in the house. Read by: operations/make-safe.'),
      ceilingHeatingCables: yesNo.describe('Read by: later: rules of the trade.'),
    })
    .prefault({}),
  lines: z
    .array(line)
    .max(20)
    .default([])
    .describe('In order; the first is the line, height 0. Read by: survey/positions.'),
  closed: yesNo.describe('The walls go all the way round. Read by: survey/outline.'),
  walls: z
    .array(wall)
    .max(60)
    .default([])
    .describe(
      'In order, clockwise seen from above: left to right as seen from inside. Read by: survey/outline.',
    ),
  ceiling: list(
    z.strictObject({ id, at: place, height: height }),
    'Ceiling readings; between them it is a surface. Read by: survey/ceiling.',
  ),
  access: list(accessPoint, 'What must stay within reach. Read by: rules/built-in, rules/meter-door.'),
  boxes: list(
    box,
    'Boxings, beams, chimney breasts, anything fixed and box-shaped. Read by: placing/obstacles.',
  ),
  floor: z
    .strictObject({
      kind: oneOf('concrete', 'screed', 'suspended-timber', 'boards', 'not-known').describe(
        'Read by: later: rules of the trade (F107).',
      ),
      changed: yesNo.describe(
        'A screed, levelling compound or new floor was laid after these readings. Read by: later: rules of the trade (F108).',
      ),
      heating: yesNo.describe('Pipes or mats in the floor. Read by: later: rules of the trade (F41).'),
      heatingDepth: tape().describe('Read by: later: rules of the trade (F41).'),
      worstDrop: tape({ max: 1000 }).describe(
        'From the highest to the lowest place of the floor where units stand, as first looked at; readings say it better. Read by: first/heights.',
      ),
      finishToCome: tape().describe('Thickness still to be laid. Read by: heights/bays.'),
      finishWhere: oneOf('everywhere', 'bays-and-front', 'up-to-plinth', 'none').describe(
        'Read by: heights/bays.',
      ),
      readings: list(
        z.strictObject({
          id,
          at: place,
          drop: level().describe(
            'Down from the line to the floor; a bigger drop is lower. Read by: survey/floor.',
          ),
          line: id.default('line').describe('Read by: survey/floor.'),
        }),
        'Read by: survey/floor.',
      ),
    })
    .prefault({}),
  units: list(unit, 'Read by: units.'),
  rails: list(rail, 'Read by: fixings/hanging.'),
  appliances: list(appliance, 'Read by: heights/bays, operations/connect.'),
  finishing: list(finishing, 'Read by: operations/finishing.'),
  worktops: list(worktop, 'Read by: heights/worktop, operations/finishing.'),
  fixings: list(fixing, 'Screws and plugs bought or to buy. Read by: fixings/choose.'),
  wishes: z
    .strictObject({
      heights: list(heightWish, 'Read by: heights/demands.'),
      order: list(orderWish, 'Read by: order/wishes.'),
      overrides: list(
        z.strictObject({
          id,
          arc: z.string().max(300).describe('The preferred order reason set aside. Read by: order/arrange.'),
        }),
        'Read by: order/arrange.',
      ),
    })
    .prefault({}),
  crew: z
    .strictObject({
      people: list(person, 'Read by: lifting/filter, order.'),
      lifter: z
        .strictObject({
          rated: mass().describe('The rated load of a lifter for wall units. Read by: lifting/filter.'),
        })
        .nullable()
        .default(null),
      hours: text.optional().describe('Working hours. Read by: later: crew schedule.'),
      extraction: yesNo.describe(
        'Dust extraction at the drill and saw. Read by: later: rules of the trade (F93).',
      ),
    })
    .prefault({}),
  route: z
    .array(
      z.strictObject({
        id,
        kind: z.enum(['door', 'corner', 'stairs', 'lift-car']).describe(ROUTE),
        width: tape().describe(ROUTE),
        width2: tape().describe(`The way on, past a corner; how deep a lift car is. ${ROUTE}`),
        height: tape().describe(ROUTE),
        ceiling: tape().describe(ROUTE),
      }),
    )
    .max(50)
    .default([])
    .describe(`In order, the way in from the street. ${ROUTE}`),
  staging: place
    .nullable()
    .default(null)
    .describe('Where units may be set down first; null: chosen. Read by: placing/staging.'),
  keptOrder: z
    .array(z.string().max(200))
    .max(2000)
    .default([])
    .describe('In order, operation ids of the order last accepted. Read by: order/arrange.'),
})

/** The kitchen as typed: what is kept, edited, undone, exported. */
export type KitchenFile = z.input<typeof kitchenSchema>
/** The kitchen as read: every quantity a figure that knows its own id. */
export type Kitchen = Stamped<z.output<typeof kitchenSchema>>
export type Wall = Kitchen['walls'][number]
export type Stud = Wall['studs'][number]
export type Accessory = Wall['accessories'][number]
export type Service = Wall['services'][number]
export type Opening = Wall['openings'][number]
export type AccessPoint = Kitchen['access'][number]
export type Layer = Wall['layers'][number]
export type Nogging = Wall['noggings'][number]
export type Unit = Kitchen['units'][number]
export type Appliance = Kitchen['appliances'][number]
export type FinishingPart = Kitchen['finishing'][number]
export type Worktop = Kitchen['worktops'][number]
export type Fixing = Kitchen['fixings'][number]
export type Rail = Kitchen['rails'][number]
export type AlongPosition = Unit['order']['left'] & {}
export type HeightPosition = Wall['noggings'][number]['centre']
export type Place = Kitchen['floor']['readings'][number]['at']
export type OrderWish = Kitchen['wishes']['order'][number]
export type HeightWish = Kitchen['wishes']['heights'][number]
export type Region = NonNullable<Kitchen['region']>
