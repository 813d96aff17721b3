import type { InputId } from '../figure'
import { footName } from '../units/foot-name'
import { saidOnce } from './said-once'

/** What facts are named by: the names of units and walls, and of anything else the file gives a name. By id. */
export interface FactNames {
  readonly unit: (id: string) => string
  readonly wall: (id: string) => string
  /** A foot of a unit; left out, its id has to say where it stands. */
  readonly foot?: (unit: string, foot: string) => string
  /** What a unit bears on: a foot, unless it stands without legs. */
  readonly bearsOn?: (unit: string) => string
  /** A listed thing: its list and its id; undefined where it has no name of its own. */
  readonly thing?: (list: string, id: string, wall: string | null) => string | undefined
}

/** What one thing of each list of the kitchen file is called. */
const ONE_OF: Readonly<Record<string, string>> = {
  studs: 'stud',
  noggings: 'nogging',
  accessories: 'outlet',
  services: 'pipe or cable',
  openings: 'opening',
  lintels: 'lintel',
  layers: 'layer',
  layersToCome: 'layer to come',
  readings: 'floor reading',
  lines: 'line',
  carried: 'mark',
  appliances: 'appliance',
  worktops: 'worktop',
  finishing: 'part',
  fixings: 'fixing',
  rails: 'rail',
  people: 'helper',
  boxes: 'boxing',
  ceiling: 'ceiling reading',
  points: 'point',
  doors: 'door',
  drawers: 'drawer',
  heights: 'wish for a height',
  widths: 'width',
  plumb: 'plumb reading',
  straightness: 'straightness reading',
}

/** Fields whose own name does not say it. */
const FIELD: Readonly<Record<string, string>> = {
  'legs.min': 'shortest length of the legs',
  'legs.max': 'longest length of the legs',
  'legs.delivered': 'length of the legs as they came',
  'legs.perTurn': 'millimetres the legs move in one turn',
  'legs.maySwing': 'whether it may be stood up on its legs',
  'hanging.plateBelowTop': 'how far the hook-on edge lies below the top',
  'hanging.hookLift': 'how far it is lifted to hook on',
  'hanging.hangerIn': 'how far the hangers lie in from the side',
  'hanging.up': 'how far the height screw can lift',
  'hanging.down': 'how far the height screw can lower',
  'hanging.antiLift': 'whether it can be locked against being lifted off',
  'hanging.ratedPerHanger': 'load the maker states for one hanger',
  'hanging.plateHoleBelow': 'how far the hole of the plate lies below its hook-on edge',
  'hanging.plateHoles': 'number of holes in each plate',
  'hanging.plateHolePitch': 'distance from hole to hole of the plate',
  'heightScrew.place': 'which of the two screws sets the height',
  'heightScrew.perTurn': 'millimetres the height screw moves in one turn',
  'heightScrew.clockwise': 'which way clockwise moves it',
  cornerRight: 'the corner at the right end',
  'cornerRight.angle': 'angle of the corner at the right end',
  'cornerRight.thisLeg': 'three lengths of the corner at the right end',
  'cornerRight.nextLeg': 'three lengths of the corner at the right end',
  'cornerRight.across': 'three lengths of the corner at the right end',
  'survey.houseBuilt': 'the year the house was built',
  'survey.gas': 'whether there is gas in the house',
  'floor.worstDrop': 'how far the floor falls from its highest to its lowest place',
  'floor.finishToCome': 'thickness of the floor finish still to be laid',
  'floor.finishWhere': 'where a floor finish will be laid',
  'floor.heating': 'whether there is heating in the floor',
  'floor.readings': 'more floor readings',
  'wishes.heights': 'a wish for this height',
  region: 'the country whose rules apply',
  closed: 'whether the walls go all the way round',
  ceiling: 'ceiling readings',
  units: 'the units',
  walls: 'the walls',
  fixings: 'the screws and plugs',
  feet: 'where the feet are',
  stands: 'how it stands or hangs',
  drop: 'the drop from the line',
  confirmed: 'how it was found',
  'studTimber.grade': 'strength class of the timber',
  'studTimber.density': 'characteristic density of the timber',
  'studTimber.specificGravity': 'specific gravity of the timber',
  thread: 'length of the thread',
  core: 'diameter between the threads',
  tip: 'length of the tapered tip',
  heightMin: 'height with its feet wound in',
  heightMax: 'height with its feet wound out',
  workingGap: 'room it needs to slide in',
  construction: 'what it is made of',
  'along.at': 'place along the wall',
  'centre.at': 'centre along the wall',
  'along.from': 'starting end of the measurement',
  'along.face': 'wall face of the measurement',
  'height.up': 'height above the line',
  'height.down': 'drop below the line',
  'height.line': 'line of the measurement',
  'there.up': 'height above the line before it',
  'there.down': 'drop below the line before it',
  'here.up': 'height above its own line',
  'here.down': 'drop below its own line',
  'min.aboveFloor': 'least height above the floor',
  'max.aboveFloor': 'greatest height above the floor',
}

/** The ways a place is written down, whatever it is the place of. */
const WRITTEN: Readonly<Record<string, string>> = {
  at: 'place along the wall',
  from: 'starting end of the measurement',
  face: 'wall face of the measurement',
  up: 'height above the line',
  down: 'drop below the line',
  line: 'line of the measurement',
  aboveFloor: 'height above the floor',
}

/** A field of the kitchen file as words: `massStripped` is "mass stripped". */
export const spaced = (key: string): string =>
  key.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)

function fieldName(fields: readonly string[]): string {
  const whole = fields.join('.')
  const named = FIELD[whole] ?? FIELD[fields.slice(-2).join('.')] ?? FIELD[fields.at(-1) ?? '']
  if (named !== undefined) return named
  const said = fields.map((key, i) => (i === fields.length - 1 ? WRITTEN[key] : undefined) ?? spaced(key))
  return said.reverse().join(' of its ')
}

/**
 * A fact in words, what it is first and where it is after: `units.base-1.legs.min` is "shortest length of the legs of base
 * unit 1". A thing without a name of its own is called by its id, in quotes where that says something else than what it is; an entry of
 * the day log by its id.
 */
export function factName(id: InputId, names: FactNames): string {
  const whole = FIELD[id]
  if (whole !== undefined) return whole
  const parts = id.split('.')
  const things: string[] = []
  const fields: string[] = []
  let wall: string | null = null
  let unit = ''
  for (let i = 0; i < parts.length; i++) {
    const key = parts[i] as string
    const next = parts[i + 1]
    if (next !== undefined && key === 'units') {
      unit = next
      things.unshift(names.unit(next))
    } else if (next !== undefined && key === 'walls') {
      wall = next
      things.unshift(names.wall(next))
    } else if (next !== undefined && key === 'feet') {
      things.unshift(`the ${names.foot?.(unit, next) ?? footName(next)} ${names.bearsOn?.(unit) ?? 'foot'}`)
    } else if (next !== undefined && key === 'log') things.unshift(`entry ${next} of the day log`)
    else if (next !== undefined && ONE_OF[key] !== undefined)
      things.unshift(names.thing?.(key, next, wall) ?? byMark(ONE_OF[key], next))
    else {
      if (!['floor', 'survey', 'wishes', 'crew', 'order'].includes(key)) fields.push(key)
      continue
    }
    i += 1
  }
  const where = things.join(' of ')
  if (fields.length === 0) return where
  const field = fieldName(fields)
  return where === '' ? field : `${field} of ${where}`
}

function byMark(one: string, mark: string): string {
  const said = saidOnce(one, mark)
  return said === undefined ? `${one} “${mark}”` : said === one ? `the ${one}` : said
}

/** Facts in words as a list, each said once. */
export function factNames(ids: readonly InputId[], names: FactNames): string {
  return [...new Set(ids.map((id) => factName(id, names)))].join(', ')
}
