import { beforeAll, describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { workOutOperations } from '../../../src/core/operations/operations'
import { SIGNS } from '../../../src/core/operations/signs'
import { type Operation, STAGES, STANDING_STATES } from '../../../src/core/plan/types'
import { english } from '../../../src/core/words/en'
import { say } from '../../../src/core/words/say'
import { base, contextOf, hung, tall, workKitchen } from '../../support/work-kitchen'

const operationsOf = (file: KitchenFile): readonly Operation[] => workOutOperations(contextOf(file).context)
const idsOf = (file: KitchenFile) => operationsOf(file).map((operation) => operation.id)

/** The same kitchen with other units, and nothing that belongs to units that are gone. */
function withUnits(units: KitchenFile['units'], more: Partial<KitchenFile> = {}): KitchenFile {
  return { ...workKitchen(), units, rails: [], appliances: [], finishing: [], worktops: [], ...more }
}

let all: readonly Operation[]
const get = (id: string) => all.find((operation) => operation.id === id) as Operation
beforeAll(() => {
  all = operationsOf(workKitchen())
})

describe('the work of a whole kitchen', () => {
  test('is everything it calls for, each under its own id', () => {
    const ids = all.map((operation) => operation.id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids).toEqual(
      expect.arrayContaining([
        'check-delivery:room',
        'isolate:room',
        'asbestos-check:room',
        'call-trade:gas',
        'trace:a',
        'trace:b',
        'strike:line',
        'read-floor:room',
        'set-out-heights:a',
        'set-out-widths:b',
        'find-studs:b',
        'mark-holes:a',
        'assemble:t1',
        'set-legs:b1',
        'fit-hangers:w1',
        'stand-up:t1',
        'place:t1',
        'level:t1',
        'restrain:t1',
        'drill-plates:w1',
        'fix-plates:w1',
        'drill-rail:r1',
        'fix-rail:r1',
        'hang:w1',
        'lock:w1',
        'second-fix:w3',
        'join:w1+w2',
        'join:b4+b5',
        'place:c1',
        'fix:b1',
        'panel:end',
        'prove:room',
        'worktop:top',
        'connect:hob',
        'hang-fronts:b1',
        'plinth:kick',
        'finish:top-trim',
        'finish:back',
        'snag:room',
      ]),
    )
  })

  test('leaves out what nothing calls for', () => {
    const ids = idsOf(withUnits([base('b1', 'a', 600, 600, { assembled: 'built', doors: [] })]))
    for (const kind of [
      'stand-up',
      'hang',
      'drill-plates',
      'drill-rail',
      'join',
      'assemble',
      'worktop',
      'prove',
      'connect',
      'hang-fronts',
      'find-studs',
      'call-trade',
      'fit-nogging',
      'second-fix',
      'panel',
      'plinth',
      'finish',
    ]) {
      expect(ids.filter((id) => id.startsWith(`${kind}:`))).toEqual([])
    }
    expect(ids).toContain('set-legs:b1')
    expect(idsOf(withUnits([]))).toEqual([])
  })

  test('is said in short sentences, with words for all of it', () => {
    for (const operation of all) {
      // Drilling through a hung unit takes most: each action is a sentence of its own.
      expect([operation.id, operation.does.length >= 1 && operation.does.length <= 14]).toEqual([
        operation.id,
        true,
      ])
      const long = operation.does.map((m) => say(m)).filter((words) => words.split(' ').length > 45)
      expect(long).toEqual([])
      const said = [
        operation.title,
        ...operation.does,
        ...operation.figures.map((f) => f.label),
        ...operation.checks.map((c) => c.ask),
        ...operation.cautions.map((c) => c.say),
      ].map((message) => say(message))
      expect(said.filter((words) => words.includes('[no ') || words.includes('!'))).toEqual([])
      expect(operation.tools.filter((tool) => english[`tool.${tool}`] === undefined)).toEqual([])
    }
  })

  test('gives every figure what it is measured from, and every check its own id', () => {
    for (const operation of all) {
      expect(operation.figures.every((f) => f.label.key.startsWith('label.'))).toBe(true)
      const ids = operation.checks.map((c) => c.id)
      expect(new Set(ids).size).toBe(ids.length)
      const names = operation.figures.map((f) => f.name)
      expect(new Set(names).size).toBe(names.length)
    }
  })

  test('takes time, more for a first-timer than for a fitter, and low ≤ typical ≤ high', () => {
    for (const { minutes } of all) {
      expect(minutes.low).toBeGreaterThanOrEqual(1)
      expect(minutes.typical).toBeGreaterThanOrEqual(minutes.low)
      expect(minutes.high).toBeGreaterThanOrEqual(minutes.typical)
    }
    // A tall takes one fitter 30 to 75 minutes from lying to restrained; a first-timer 1.7 times that.
    const steps = ['stand-up', 'place', 'level', 'restrain'].map((kind) => get(`${kind}:t1`).minutes.typical)
    expect(steps.reduce((a, b) => a + b)).toBeCloseTo(45 * 1.7, -0.5)
  })

  test('uses only signs of the list, and stages of the list', () => {
    for (const operation of all) {
      expect(STAGES).toContain(operation.stage)
      for (const { sign } of operation.cautions) expect(Object.keys(SIGNS)).toContain(sign)
    }
  })

  test('names facts for every operation', () => {
    expect(all.filter((operation) => operation.from.length === 0).map((o) => o.id)).toEqual([])
  })
})

describe('how far each unit comes', () => {
  const chainOf = (unit: string) =>
    all
      .flatMap((operation) => operation.changes)
      .filter((change) => change.unit === unit)
      .map((change) => `${change.from}→${change.to}`)

  test.each([
    ['t1', ['delivered→assembled', 'carried→held', 'held→standing', 'standing→levelled', 'levelled→secured']],
    ['b1', ['delivered→assembled', 'carried→standing', 'standing→levelled', 'levelled→secured']],
    ['w1', ['delivered→assembled', 'carried→hooked', 'hooked→levelled', 'levelled→secured']],
    ['w3', ['delivered→assembled', 'carried→hooked', 'hooked→levelled', 'levelled→locked', 'locked→secured']],
  ])('%s', (unit, states) => {
    expect(chainOf(unit)).toEqual(states)
    for (const state of states.flatMap((change) => change.split('→')))
      expect(STANDING_STATES).toContain(state)
  })

  test('a tall and a hung unit are held at every step until they are secured', () => {
    for (const id of [
      'stand-up:t1',
      'place:t1',
      'level:t1',
      'restrain:t1',
      'hang:w3',
      'level:w3',
      'lock:w3',
      'second-fix:w3',
    ]) {
      expect(get(id).holding).toEqual([id.split(':')[1]])
      expect(get(id).people).toBeGreaterThanOrEqual(2)
    }
  })

  test('a unit screwed through its back rail is held, not hooked, and has no lock', () => {
    const ids = idsOf(
      withUnits(
        [base('b9', 'a', 600, 600), hung('w9', 'a', 600, 600, { stands: 'back-rail-screws', hanging: {} })],
        {
          worktops: [{ id: 'top', over: ['b9'], thickness: 38 }],
        },
      ),
    )
    expect(ids.filter((id) => id.endsWith(':w9'))).toEqual([
      'assemble:w9',
      'hang:w9',
      'level:w9',
      'second-fix:w9',
      'hang-fronts:w9',
    ])
  })

  test('nobody has said what it hangs by: it is held up there, and the step is a hold point', () => {
    const operations = operationsOf(withUnits([hung('w9', 'a', 600, 600, { stands: null })]))
    const step = operations.find((o) => o.id === 'hang:w9')
    expect(step?.holdPoint).toBe(true)
    expect(operations.map((o) => o.kind)).not.toContain('fit-hangers')
  })
})

describe('what is said where it matters', () => {
  const words = (id: string) => {
    const operation = get(id)
    return [...operation.does, ...operation.cautions.map((c) => c.say)].map((m) => say(m)).join(' ')
  }

  test.each([
    ['isolate:room', /proved dead by someone competent with the right instrument/],
    ['isolate:room', /plug-in tester.*proves nothing/],
    ['asbestos-check:room', /before any strip-out and before the first hole/],
    ['call-trade:gas', /registered gas engineer/],
    ['connect:hob', /registered gas engineer connects.*Nobody else/],
    ['trace:a', /Bands show where cables should be/],
    ['strike:line', /height 0/],
    ['set-out-heights:a', /allows for the worktop/],
    ['find-studs:b', /400 mm apart and 38 to 50 mm wide/],
    ['fit-hangers:w1', /each top corner/],
    ['drill-plates:w1', /No gloves.*drill/],
    ['drill-plates:w1', /bit 8 mm, the size of the plug.*no deeper than needed/],
    ['drill-plates:w1', /stepladder, never a stool or chair/],
    ['drill-plates:w1', /Read the telephone off the steps/],
    ['hang:w1', /Nobody stands under it/],
    ['hang:w1', /hooked is not secured/],
    ['second-fix:w3', /timber between its back and the wall/],
    ['join:b2+b3', /3 mm pilot behind the front edge.*about 4 mm into the next.*30 mm screws/],
    ['place:b1', /never drag it on its legs/],
    ['fix:b1', /L bracket at each side.*with 15 mm screws/],
    ['restrain:t1', /Let go of tall unit 1 only now/],
    ['level:b1', /Lay the level on its top/],
    ['level:w1', /Lay the level inside along the front edge/],
    ['level:t1', /Hold the long level upright/],
    ['prove:room', /nothing can be put right under a worktop/],
  ])('%s says %s', (id, pattern) => {
    expect(words(id)).toMatch(pattern)
  })

  test('drilling cautions stand at drilling, falling loads at hanging', () => {
    const signs = (id: string) => get(id).cautions.map((c) => c.sign)
    for (const id of ['drill-plates:w1', 'drill-rail:r1', 'restrain:t1', 'fix:b1', 'second-fix:w3']) {
      expect(signs(id)).toEqual(expect.arrayContaining(['W012', 'M004', 'P001']))
    }
    for (const id of ['hang:w1', 'level:w1', 'lock:w1']) expect(signs(id)).toContain('W035')
    expect(signs('set-out-widths:a')).toEqual([])
  })

  test('nobody is told to alter a circuit, gas or a main', () => {
    const told = all.flatMap((o) => o.does.map((m) => say(m)))
    const alters = told.filter((words) =>
      /\b(rewire|re-route|extend|alter|cut off|disconnect)\b.*\b(circuit|cable|gas|main)/i.test(words),
    )
    expect(alters).toEqual([])
  })

  test('each trade does its own', () => {
    expect(get('connect:hob').trade).toBe('gas-engineer')
    expect(get('connect:sink').trade).toBe('plumber')
    expect(get('asbestos-check:room').trade).toBe('asbestos-surveyor')
  })
})

describe('what the work rests on', () => {
  test('a house of 2006 is not asked about asbestos, one of unknown age is', () => {
    const of = (houseBuilt: number | null) => idsOf({ ...workKitchen(), survey: { houseBuilt, gas: false } })
    expect(of(2006)).not.toContain('asbestos-check:room')
    expect(of(2000)).not.toContain('asbestos-check:room')
    expect(of(1999)).toContain('asbestos-check:room')
    expect(of(null)).toContain('asbestos-check:room')
    expect(of(1999)).not.toContain('call-trade:gas')
  })

  test('on brick the lock secures; on studs, and where nobody knows, a second fixing does', () => {
    const on = (construction: 'masonry' | 'timber-stud' | null) => {
      const file = withUnits([hung('w9', 'a', 600, 600)])
      const [wall] = file.walls ?? []
      return idsOf({ ...file, walls: wall === undefined ? [] : [{ ...wall, construction }] })
    }
    expect(on('masonry')).not.toContain('second-fix:w9')
    expect(on('timber-stud')).toContain('second-fix:w9')
    expect(on(null)).toContain('second-fix:w9')
  })

  test('units side by side are joined, those apart are not', () => {
    const joins = (right: number) =>
      idsOf(withUnits([base('b1', 'a', 600, 600), base('b2', 'a', right, 600)])).filter((id) =>
        id.startsWith('join:'),
      )
    expect(joins(1200)).toEqual(['join:b1+b2'])
    expect(joins(1230)).toEqual([])
  })

  test('the corner unit is joined to its neighbour round the corner', () => {
    expect(all.map((o) => o.id)).toEqual(expect.arrayContaining(['join:b3+c1', 'join:b4+c1']))
  })

  test('two thin sides together want a shorter joining screw', () => {
    const does = operationsOf(
      withUnits([base('b1', 'a', 600, 600, { board: 12 }), base('b2', 'a', 1200, 600, { board: 12 })]),
    ).find((o) => o.id === 'join:b1+b2')?.does
    expect(does?.map((m) => m.key)).toContain('operation.join.screw-shorter')
  })

  test('is the same whichever way the units are listed', () => {
    const file = workKitchen()
    const turned = { ...file, units: [...(file.units ?? [])].reverse() }
    const names = { t1: 'tall unit 1', w1: 'one', w2: 'two' }
    const named = (f: KitchenFile): KitchenFile => ({
      ...f,
      units: f.units?.map((u) => ({ ...u, name: (names as Record<string, string>)[u.id] ?? u.id })),
    })
    const sorted = (f: KitchenFile) =>
      JSON.stringify([...operationsOf(named(f))].sort((a, b) => (a.id < b.id ? -1 : 1)))
    expect(sorted(turned)).toBe(sorted(file))
  })

  test('a tall is two people’s work at least, however light', () => {
    const operations = operationsOf(withUnits([tall('t9', 'a', 0, { massStripped: 5 })]))
    expect(operations.find((o) => o.id === 'place:t9')?.people).toBe(2)
  })
})
