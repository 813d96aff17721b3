import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import type { Field, Things } from '../../../src/core/form/field'
import { PAGES } from '../../../src/core/form/pages'
import { markGoneAlong, renamed, thingsAt } from '../../../src/core/form/rename'
import {
  askedOf,
  calledIn,
  droppedBy,
  furtherThing,
  isOwnMark,
  listAt,
  neededFirst,
  nextMark,
} from '../../../src/core/form/things'
import { withEdits } from '../../../src/core/kitchen/edit'
import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import { ROOT } from '../../support/root'

const empty = { format: 'dryrun-kitchen', version: 1, name: 'A kitchen' }

/** Every list there is, with a path to it through the first thing of each list it lies in. */
function listsOf(fields: readonly Field[], under = ''): readonly (readonly [string, Things])[] {
  return fields.flatMap((field) => {
    if (field.kind !== 'list') return []
    const path = `${under}${field.key}`
    const own: readonly [string, Things] = [path, field.things]
    return [own, ...listsOf(field.things.fields, `${path}.*.`)]
  })
}

const LISTS = PAGES.flatMap((page) => listsOf(page.fields))

/** A file in which one further thing has been put into each list on the way. */
function withOneMore(file: unknown, path: string): { readonly file: unknown; readonly path: string } {
  const parts = path.split('.*.')
  let now = file
  let here = ''
  for (const part of parts) {
    here = here === '' ? part : `${here}.${part}`
    const thing = furtherThing(thingsAt(here) as Things, now, here)
    now = withEdits(now, [{ add: here, item: thing }])
    here = `${here}.${String(thing['id'])}`
  }
  return { file: now, path: here }
}

const room = ['walls', 'lines', 'units', 'appliances'].reduce<unknown>(
  (file, path) => withOneMore(file, path).file,
  empty,
)

const problemsOf = (file: unknown): readonly string[] => {
  const read = parseKitchen(file)
  return read.ok ? [] : read.error.map((p) => `${p.path}: ${p.message}`)
}

describe('a further thing', () => {
  test.each(LISTS.map(([path]) => path))('of %s can be read before anything is typed into it', (path) => {
    const once = withOneMore(room, path)
    expect(problemsOf(once.file)).toEqual([])
    expect(problemsOf(withOneMore(once.file, path).file)).toEqual([])
  })

  test('waits for the walls it would stand at', () => {
    const units = thingsAt('units') as Things
    expect(neededFirst(units, empty)).toBe('walls')
    expect(neededFirst(units, room)).toBeUndefined()
    expect(neededFirst(thingsAt('worktops') as Things, empty)).toBeUndefined()
    expect(neededFirst(thingsAt('ceiling') as Things, empty)).toBe('walls')
  })

  test('takes over what the one before it has, and stands to the right of it', () => {
    const typed = withEdits(room, [
      { set: 'units.base-1.height', to: 720 },
      { set: 'units.base-1.legs.min', to: 130 },
      { set: 'units.base-1.width', to: 600 },
    ])
    expect(furtherThing(thingsAt('units') as Things, typed, 'units')).toMatchObject({
      id: 'base-2',
      kind: 'base',
      wall: 'a',
      height: 720,
      legs: { min: 130 },
      order: { rightOf: 'base-1' },
    })
    expect(furtherThing(thingsAt('units') as Things, typed, 'units')).not.toHaveProperty('width')
  })
})

describe('what is asked', () => {
  const units = (thingsAt('units') as Things).fields

  test('of a unit that hangs are its hangers and no feet; what is asked no more is left out', () => {
    const base = { stands: 'legs', feet: [{ id: 'foot-1' }], legs: { min: 130 } }
    const keys = (stands: string | null): readonly string[] =>
      askedOf(units, { ...base, stands }).map((f) => f.key)
    expect(keys('legs')).toContain('feet')
    expect(keys('rail')).not.toContain('feet')
    expect(keys('rail')).toContain('hanging.plateBelowTop')
    expect(keys(null)).toEqual(expect.arrayContaining(['feet', 'legs.min', 'hanging.plateBelowTop']))
    expect([...droppedBy(units, base, 'stands', 'rail')].sort()).toEqual(['feet', 'legs'])
    expect(droppedBy(units, base, 'stands', '')).toEqual([])
    expect(droppedBy(units, { stands: 'rail' }, 'stands', 'legs')).toEqual(['hanging'])
  })

  test.each(['one-wall', 'l-shape', 'galley', 'north-american', 'no-order'])(
    'of every unit of %s is all that its file says of it',
    (name) => {
      const file = JSON.parse(readFileSync(join(ROOT, `scenes/${name}.dryrun.json`), 'utf8')) as unknown
      for (const unit of listAt(file, 'units')) {
        const asked = new Set(askedOf(units, unit).map((f) => f.key.split('.')[0]))
        expect(Object.keys(unit).filter((key) => key !== 'id' && !asked.has(key))).toEqual([])
      }
    },
  )
})

test('a layer of a wall begins with nothing said of what it is made of, and is called by no make', () => {
  const file = { ...empty, walls: [{ id: 'a', layers: [] }] }
  const layer = furtherThing(thingsAt('walls.a.layers') as Things, file, 'walls.a.layers')
  expect(layer).toEqual({ id: 'layer-1' })
  expect(calledIn(thingsAt('walls.a.layers') as Things, layer.id)).toBe('Layer 1')
  const read = parseKitchen(withEdits(file, [{ add: 'walls.a.layers', item: layer }]))
  expect(read.ok && read.value.kitchen.walls[0]?.layers[0]?.material).toBeNull()
})

describe('what a thing is called over its fields', () => {
  test.each([
    ['line', 'line', 'Line'],
    ['line', 'line-2', 'Line 2'],
    ['line', 'back', 'Line back'],
    ['wall', 'a', 'Wall a'],
    ['stud', 'a-s4', 'Stud a-s4'],
    ['floor reading', 'floor-3', 'Floor reading 3'],
    ['door or window', 'window-1', 'Window 1'],
    ['socket, switch or outlet', 'outlet-2', 'Outlet 2'],
    ['socket, switch or outlet', 'spur-1', 'Socket, switch or outlet spur-1'],
    ['unit', 'corner-base-1', 'Unit corner-base-1'],
  ])('of a %s marked %s', (one, mark, called) => {
    expect(calledIn({ one }, mark)).toBe(called)
  })

  test('is never one word twice, whatever marks the survey itself gives', () => {
    const lists = (fields: readonly Field[]): readonly Things[] =>
      fields.flatMap((f) => (f.kind === 'list' ? [f.things, ...lists(f.things.fields)] : []))
    for (const things of lists(PAGES.flatMap((page) => page.fields))) {
      const kind = things.fields.find((f) => f.key === 'kind')
      const kinds = kind?.kind === 'choice' ? kind.options.map(([word]) => word) : [things.mark]
      for (const stem of kinds) {
        const said = calledIn(things, nextMark(things, [], stem))
          .toLowerCase()
          .split(/[\s-]+/)
        expect(said).toEqual([...new Set(said)])
      }
    }
  })
})

describe('marks', () => {
  test('are letters for walls, and a sort and a number for the rest; the next free one', () => {
    const walls = thingsAt('walls') as Things
    expect(nextMark(walls, [], 'wall')).toBe('a')
    expect(nextMark(walls, [{ id: 'a' }, { id: 'c' }], 'wall')).toBe('b')
    const units = thingsAt('units') as Things
    expect(nextMark(units, [{ id: 'base-1' }, { id: 'base-3' }], 'base')).toBe('base-2')
    expect(isOwnMark(units, { id: 'base-2', kind: 'base' })).toBe(true)
    expect(isOwnMark(units, { id: 'sink-base', kind: 'base' })).toBe(false)
  })

  test('that were given go along with the sort of their thing, and what points at them too; those typed stay', () => {
    const file = {
      ...empty,
      walls: [{ id: 'a', lintels: [{ id: 'lintel-1' }], openings: [{ id: 'door-1', kind: 'door' }] }],
      units: [
        { id: 'base-1', kind: 'base', wall: 'a' },
        { id: 'tall-1', kind: 'tall', wall: 'a', order: { rightOf: 'base-1' } },
        { id: 'pantry', kind: 'base', wall: 'a', order: { rightOf: 'tall-1' } },
      ],
    }
    const chosen = (path: string, to: string) => markGoneAlong(file, path, [{ set: path, to }])
    const tall = chosen('units.base-1.kind', 'tall')
    expect(tall?.mark).toBe('tall-2')
    expect(listAt(tall?.file, 'units').map(({ id, kind, order }) => [id, kind, order])).toEqual([
      ['tall-2', 'tall', undefined],
      ['tall-1', 'tall', { rightOf: 'tall-2' }],
      ['pantry', 'base', { rightOf: 'tall-1' }],
    ])
    expect(chosen('units.base-1.kind', 'corner-base')?.mark).toBe('corner-base-1')
    expect(chosen('walls.a.openings.door-1.kind', 'window')?.mark).toBe('window-1')
    expect(chosen('units.pantry.kind', 'tall')).toBeUndefined()
    // What a lintel is made of is no sort of it.
    expect(chosen('walls.a.lintels.lintel-1.kind', 'timber')).toBeUndefined()
  })

  test('are changed together with everything that points at them', () => {
    const file = JSON.parse(readFileSync(join(ROOT, 'scenes/l-shape.dryrun.json'), 'utf8')) as unknown
    const lists: readonly (readonly [string, string])[] = [
      ['walls', 'a'],
      ['units', 'base-1'],
      ['appliances', 'hob-1'],
      ['finishing', 'filler-left'],
      ['lines', 'line'],
    ]
    for (const [path, mark] of lists) {
      const now = renamed(file, path, mark, 'quite-another')
      expect(JSON.stringify(now)).not.toBe(JSON.stringify(file))
      // The first line is what is meant where no line is named: renamed, it has to be named, and is not here.
      if (path !== 'lines') expect(problemsOf(now)).toEqual([])
      expect(renamed(now, path, 'quite-another', mark)).toEqual(file)
    }
  })

  test('that are taken or cannot be one are refused', () => {
    const file = JSON.parse(readFileSync(join(ROOT, 'scenes/l-shape.dryrun.json'), 'utf8')) as unknown
    expect(renamed(file, 'walls', 'a', 'b')).toBeUndefined()
    expect(renamed(file, 'walls', 'a', 'A wall')).toBeUndefined()
    expect(renamed(file, 'walls', 'a', '__proto__')).toBeUndefined()
    expect(renamed(file, 'walls.a.studs', 'a-s1', 'a-s2')).toBeUndefined()
    const now = renamed(file, 'walls.a.studs', 'a-s1', 'stud-1')
    expect(listAt(now, 'walls.a.studs')[0]?.['id']).toBe('stud-1')
    expect(renamed(now, 'walls.a.studs', 'stud-1', 'a-s1')).toEqual(file)
  })
})
