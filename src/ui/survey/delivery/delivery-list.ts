import type { Field } from '../../../core/form/field'
import { thingsAt } from '../../../core/form/rename'
import { askedOf, calledIn, listAt, thingAt } from '../../../core/form/things'
import { assumedBecause, shownTyped } from '../../../core/form/typed'
import type { Plan } from '../../../core/plan/types'
import { unitName } from '../../../core/words/plan-names'
import { upperFirst } from '../../../core/words/upper-first'

/** Something that was bought: a row to tick off, and what to hold it against. */
export interface Row {
  /** The thing in the kitchen file: `units.base-1`. */
  readonly path: string
  readonly name: string
  readonly come: boolean | undefined
  /** "600 × 720 × 560 mm (wide, high, deep)". */
  readonly size: string
  /** What else is to be compared: "Came: built". */
  readonly others: readonly string[]
  /** The survey fields it is held against, to be typed where it is otherwise. */
  readonly fields: readonly Field[]
}

export interface Part {
  readonly title: string
  readonly rows: readonly Row[]
}

interface Kind {
  readonly list: string
  readonly title: string
  /** Fields that make its size, and the word of each. */
  readonly size: readonly (readonly [key: string, word: string])[]
  readonly others: readonly string[]
}

const KINDS: readonly Kind[] = [
  {
    list: 'units',
    title: 'Units',
    size: [
      ['width', 'wide'],
      ['height', 'high'],
      ['depth', 'deep'],
    ],
    others: ['hand', 'assembled', 'legs.delivered'],
  },
  {
    list: 'appliances',
    title: 'Appliances',
    size: [
      ['widthNeeded', 'wide for its space'],
      ['heightMin', 'high with its feet in'],
      ['heightMax', 'with its feet out'],
    ],
    others: ['hinge', 'leadLength', 'hoseLength'],
  },
  {
    list: 'finishing',
    title: 'Panels, fillers, plinths',
    size: [
      ['length', 'long'],
      ['width', 'wide'],
      ['height', 'high'],
      ['depth', 'deep'],
    ],
    others: [],
  },
  {
    list: 'worktops',
    title: 'Worktops',
    size: [
      ['depth', 'deep'],
      ['thickness', 'thick'],
    ],
    others: ['material'],
  },
  {
    list: 'rails',
    title: 'Hanging rails',
    size: [
      ['length', 'long'],
      ['thickness', 'thick'],
    ],
    others: [],
  },
  {
    list: 'fixings',
    title: 'Screws and plugs',
    size: [
      ['diameter', 'thick'],
      ['length', 'long'],
    ],
    others: [],
  },
]

/** What need not be in the file for its row to be whole: a filler has no depth to compare. */
const MAY_BE_OPEN: readonly string[] = ['finishing']

/** All that was bought, list by list; spaces are not bought, nor a boiler that hangs there already. */
export function deliveryOf(kitchen: unknown, plan: Plan | null): readonly Part[] {
  const unit = thingAt(kitchen, 'display') === 'inch' ? 'in' : 'mm'
  return KINDS.map((kind) => ({
    title: kind.title,
    rows: listAt(kitchen, kind.list)
      .filter((thing) => thing['kind'] !== 'appliance-space' && typeof thing['case'] !== 'string')
      .map((thing) => rowOf(kind, thing, plan, unit)),
  })).filter(({ rows }) => rows.length > 0)
}

function rowOf(
  { list, size, others }: Kind,
  thing: Readonly<Record<string, unknown>>,
  plan: Plan | null,
  unit: string,
): Row {
  const asked = askedOf(thingsAt(list)?.fields ?? [], thing)
  const field = (key: string) => asked.find((one) => one.key === key)
  const sizes = size.map(([key, word]) => ({ word, value: thingAt(thing, key) }))
  const come = thing['delivered']
  return {
    path: `${list}.${String(thing['id'])}`,
    name: nameOf(list, thing, plan),
    come: typeof come === 'boolean' ? come : undefined,
    size: sizeText(sizes, unit, MAY_BE_OPEN.includes(list)),
    others: others.flatMap((key) => otherText(field(key), thingAt(thing, key), unit)),
    fields: [...size.map(([key]) => key), ...others].flatMap((key) => field(key) ?? []),
  }
}

/** "600 × 720 × 560 mm (wide, high, deep)": as typed, in the order of its sheet. */
function sizeText(
  sizes: readonly { readonly word: string; readonly value: unknown }[],
  unit: string,
  mayBeOpen: boolean,
): string {
  const asked = sizes.filter(({ value }) => !mayBeOpen || shownTyped(value) !== '')
  if (asked.length === 0) return ''
  const figures = asked.map(({ value }) => {
    const shown = shownTyped(value)
    return shown === '' ? '?' : `${shown}${assumedBecause(value) === undefined ? '' : ' (assumed)'}`
  })
  return `${withUnit(figures.join(' × '), unit)} (${asked.map(({ word }) => word).join(', ')})`
}

/** What was typed with its own unit keeps it. */
const withUnit = (shown: string, unit: string): string =>
  /(mm|cm|in|ft|["'])/.test(shown) ? shown : `${shown} ${unit}`

function otherText(field: Field | undefined, value: unknown, unit: string): readonly string[] {
  if (field === undefined) return []
  if (field.kind === 'choice') {
    const said = field.options.find(([option]) => option === value)?.[1]
    return said === undefined ? [] : [`${field.label} ${said}`]
  }
  const shown = shownTyped(value)
  return shown === '' ? [] : [`${field.label} ${field.kind === 'length' ? withUnit(shown, unit) : shown}`]
}

/** The user's own name, else what the plan calls it, else what it is. */
function nameOf(list: string, thing: Readonly<Record<string, unknown>>, plan: Plan | null): string {
  const id = String(thing['id'])
  const own = thing['name']
  if (typeof own === 'string' && own !== '') return upperFirst(own)
  const planned =
    list === 'units' && plan?.units.some((u) => u.unit === id)
      ? unitName(id, plan)
      : plan?.parts?.find((p) => p.part === id)?.name
  return planned === undefined ? calledIn({ one: kindText(list, thing) }, id) : upperFirst(planned)
}

function kindText(list: string, thing: Readonly<Record<string, unknown>>): string {
  const kind = thingsAt(list)?.fields.find(({ key }) => key === 'kind')
  const word = kind?.kind === 'choice' && kind.options.find(([option]) => option === thing['kind'])?.[1]
  return typeof word === 'string' ? word : (thingsAt(list)?.one ?? '')
}
