import type { Plan } from '../core/plan/types'

type Names = Pick<Plan, 'walls' | 'units'> & Partial<Pick<Plan, 'parts'>>

const FEET: Readonly<Record<string, string>> = {
  fl: 'front left',
  fr: 'front right',
  bl: 'back left',
  br: 'back right',
}

export function footName(foot: string): string {
  return FEET[foot] ?? foot.replaceAll('-', ' ')
}

export function unitName(id: string, { units }: Names): string {
  return units.find((u) => u.unit === id)?.name ?? id.replaceAll('-', ' ')
}

export function wallName(id: string, { walls }: Names): string {
  const name = walls.find((w) => w.wall === id)?.name ?? id
  return /\bwall\b|partition/i.test(name) ? name : `wall ${name}`
}

/** What one thing of each list of the kitchen file is called. */
const ONE_OF: Readonly<Record<string, string>> = {
  walls: 'wall',
  units: 'unit',
  studs: 'stud',
  noggings: 'nogging',
  pattresses: 'pattress',
  accessories: 'accessory',
  services: 'service',
  openings: 'opening',
  lintels: 'lintel',
  layers: 'layer',
  readings: 'reading',
  feet: 'foot',
  lines: 'line',
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
  order: 'wish for the order',
  overrides: 'override',
  path: 'point',
  plumb: 'plumb reading',
}

const FIELD: Readonly<Record<string, string>> = {
  cornerRight: 'corner at its right end',
  perTurn: 'mm a turn',
  drop: 'drop from the line',
  houseBuilt: 'year the house was built',
  region: 'the country whose rules apply',
  closed: 'whether the walls go all the way round',
  confirmed: 'how it was confirmed',
  stands: 'how it stands or hangs',
  clockwise: 'what clockwise does',
}

const spaced = (key: string): string =>
  key.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)

/**
 * A fact in words: `walls.b.studs.s3.centre` is "centre of stud s3, wall B". What it is comes first, where it is after;
 * things are called by their own names where they have one.
 */
export function inputName(id: string, plan: Names): string {
  const parts = id.split('.')
  const things: string[] = []
  const fields: string[] = []
  for (let i = 0; i < parts.length; i++) {
    const key = parts[i] as string
    const next = parts[i + 1]
    const noun = ONE_OF[key]
    if (key === 'log' && next !== undefined) {
      things.unshift(`entry ${next} of the day log`)
      i += 1
    } else if (noun !== undefined && next !== undefined) {
      things.unshift(thingName(key, noun, next, plan))
      i += 1
    } else if (key !== 'floor' && key !== 'survey' && key !== 'order') {
      fields.push(FIELD[key] ?? spaced(key))
    } else if (key === 'floor') {
      things.unshift('the floor')
    }
  }
  const field = fields.join(', ')
  const where = things.join(', ')
  return field === '' ? where : where === '' ? field : `${field} of ${where}`
}

function thingName(list: string, noun: string, id: string, plan: Names): string {
  if (list === 'walls') return wallName(id, plan)
  if (list === 'units') return unitName(id, plan)
  if (list === 'feet') return `foot ${footName(id)}`
  const part =
    list === 'finishing' || list === 'worktops' ? plan.parts?.find((p) => p.part === id) : undefined
  if (part !== undefined) return part.name
  return `${noun} ${id}`
}
