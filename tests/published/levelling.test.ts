/**
 * Levels carried from line to line, against a published booking by rise and fall of the staff.
 *
 * Source: a university lecture on levelling, its worked example (re-computed). Metres there, millimetres here; the first
 * line is height 0 here, and 46.482 there: BM1 40.000 and the back sight 6.482 on it.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { hasValue } from '../../src/core/figure'
import type { Kitchen } from '../../src/core/kitchen/schema'
import { workThrough } from '../../src/core/plan/entry'
import { heightFromLine } from '../../src/core/survey/height'
import { lineOffset } from '../../src/core/survey/line-offset'
import { say } from '../../src/core/words/say'
import { exact, kitchenOf, plain, wallFile } from '../support/fixed-wall'
import { ROOT } from '../support/root'

const FIRST = 46_482
const down = (mm: number) => ({ down: exact(mm) })
const up = (mm: number) => ({ up: exact(mm) })

/** The three set-ups: CP1 is read 2.159 and then 5.844, CP2 7.318 and then 4.298. */
const LINES = [
  { id: 'line', offset: exact(0) },
  { id: 'second', carried: [{ id: 'cp1', line: 'line', there: down(2159), here: down(5844) }] },
  { id: 'third', carried: [{ id: 'cp2', line: 'second', there: down(7318), here: down(4298) }] },
]

const booked = (lines: readonly object[] = LINES): Kitchen => kitchenOf(wallFile({ rest: { lines } }))

/** A reduced level in mm: of a line, or of a point read down from it or, with the staff inverted, up. */
function reduced(line: string, reading?: { readonly down?: number; readonly up?: number }): number {
  const kitchen = booked()
  if (reading === undefined) return FIRST + Number(plain(lineOffset(kitchen, line)))
  const typed = (mm: number | undefined) =>
    mm === undefined
      ? ({ state: 'unknown', unit: 'mm', basis: { kind: 'survey' }, from: [], missing: [] } as const)
      : ({ state: 'known', value: mm, pm: 0, unit: 'mm', basis: { kind: 'survey' }, from: [] } as const)
  const position = { line, up: typed(reading.up), down: typed(reading.down), aboveFloor: typed(undefined) }
  return FIRST + Number(plain(heightFromLine(kitchen, position, null)))
}

describe('the published booking', () => {
  test.each([
    ['line', 46_482],
    ['second', 50_167],
    ['third', 47_147],
  ])('the line called “%s”: %d mm', (line, printed) => {
    expect(reduced(line)).toBe(printed)
  })

  test.each<[string, string, { down?: number; up?: number }, number]>([
    ['BM1, back sight 6.482', 'line', { down: 6482 }, 40_000],
    ['CP1, fore sight 2.159', 'line', { down: 2159 }, 44_323],
    ['CP1, back sight 5.844', 'second', { down: 5844 }, 44_323],
    ['intermediate 3.141', 'second', { down: 3141 }, 47_026],
    ['intermediate −2.956, staff inverted under a soffit', 'second', { up: 2956 }, 53_123],
    ['intermediate 5.600', 'second', { down: 5600 }, 44_567],
    ['CP2, fore sight 7.318', 'second', { down: 7318 }, 42_849],
    ['CP2, back sight 4.298', 'third', { down: 4298 }, 42_849],
    ['intermediate 3.015', 'third', { down: 3015 }, 44_132],
    ['BM2, fore sight 4.264', 'third', { down: 4264 }, 42_883],
  ])('%s, from “%s”', (_, line, reading, printed) => {
    expect(reduced(line, reading)).toBe(printed)
  })

  // ΣBS 16.624 − ΣFS 13.741 = 2.883 = last − first.
  test('back sights less fore sights are the last less the first: 2.883', () => {
    expect(6482 + 5844 + 4298 - (2159 + 7318 + 4264)).toBe(2883)
    expect(reduced('third', { down: 4264 }) - reduced('line', { down: 6482 })).toBe(2883)
  })

  // The same, with the two lines tied by the soffit, over both: read up 2.956 from the second, so 6.641 up from the first.
  test('a mark overhead, read upside down from both lines, puts them where the mark below did', () => {
    const kitchen = booked([
      { id: 'line', offset: exact(0) },
      { id: 'second', carried: [{ id: 'soffit', line: 'line', there: up(6641), here: up(2956) }] },
    ])
    expect(FIRST + Number(plain(lineOffset(kitchen, 'second')))).toBe(50_167)
  })
})

describe('two marks', () => {
  // By CP1 the second line lies 3685 above the first, by the soffit 3689: midway 3687, and 2 either way.
  const two = (typed: object = {}) =>
    booked([
      { id: 'line', offset: exact(0) },
      {
        id: 'second',
        ...typed,
        carried: [
          { id: 'cp1', line: 'line', there: down(2159), here: down(5844) },
          { id: 'soffit', line: 'line', there: up(6645), here: up(2956) },
        ],
      },
    ])

  test('that miss one another by 4 leave the line midway, ±2', () => {
    expect(lineOffset(two(), 'second')).toMatchObject({ state: 'known', value: 3687, pm: 2 })
  })

  test('readings good to ±1 add their own: two of each mark, ±4', () => {
    const rough = { value: 2159, pm: 1 }
    const kitchen = booked([
      { id: 'line', offset: exact(0) },
      {
        id: 'second',
        carried: [
          { id: 'cp1', line: 'line', there: { down: rough }, here: { down: { value: 5844, pm: 1 } } },
          { id: 'soffit', line: 'line', there: up(6645), here: up(2956) },
        ],
      },
    ])
    expect(lineOffset(kitchen, 'second')).toMatchObject({ value: 3687, pm: 4 })
  })

  test('what was typed holds, and a mark that was read from one line only says nothing', () => {
    expect(lineOffset(two({ offset: exact(3680) }), 'second')).toMatchObject({ value: 3680, pm: 0 })
    const half = booked([
      { id: 'line', offset: exact(0) },
      { id: 'second', carried: [{ id: 'cp1', line: 'line', there: down(2159) }] },
    ])
    expect(plain(lineOffset(half, 'second'))).toContain('lacks lines.second.carried.cp1.here')
  })
})

describe('a kitchen', () => {
  type Reading = { line?: string; drop: number }
  type File = { lines: object[]; floor: { readings: Reading[] } }

  /** Mill-lane's floor read from a second line 150 higher than the first; `lines` says how the two are tied. */
  function fromSecond(second: object): File {
    const file = JSON.parse(readFileSync(join(ROOT, 'scenes', 'one-wall.dryrun.json'), 'utf8')) as File
    const [first] = file.lines
    const readings = file.floor.readings.map((r) => ({ ...r, line: 'second', drop: r.drop + 150 }))
    return {
      ...file,
      lines: [first ?? { id: 'line' }, { id: 'second', ...second }],
      floor: { ...file.floor, readings },
    }
  }
  function planned(file: unknown) {
    const outcome = workThrough(file)
    if (outcome.kind !== 'plan') throw new Error(`no plan: ${outcome.kind}`)
    return outcome.plan
  }
  const zs = (file: unknown) => planned(file).floor.points.map(({ z }) => plain(z))

  // The underside of a board, 1100 up from the first line and 950 from the second.
  const board = { id: 'board', line: 'line', there: up(1100), here: up(950) }

  test('whose second line was tied to the first by a board overhead has the floor of one whose offset was typed', () => {
    expect(zs(fromSecond({ carried: [board] }))).toEqual(zs(fromSecond({ offset: exact(150) })))
  })

  test('moves with the reading, and cites it', () => {
    const before = planned(fromSecond({ carried: [board] })).floor.points[0]?.z
    const after = planned(fromSecond({ carried: [{ ...board, here: up(940) }] })).floor.points[0]?.z
    if (before === undefined || after === undefined || !hasValue(before) || !hasValue(after)) {
      throw new Error('no floor')
    }
    expect(after.value - before.value).toBe(10)
    expect(after.from).toEqual(
      expect.arrayContaining([
        'lines.second.carried.board.here.up',
        'lines.second.carried.board.line',
        'lines.second.carried.board.there.up',
      ]),
    )
  })

  test.each([
    ['one mark', [board]],
    ['two marks, 1 apart', [board, { id: 'nail', line: 'line', there: down(200), here: down(351) }]],
  ])('with %s is accepted by the checker', (_, carried) => {
    const file = fromSecond({ carried })
    expect(checkPlan(file, planned(file))).toEqual({ ok: true, refusals: [] })
  })

  // By the nail the lines are 155 apart, by the board 150.
  test('whose marks miss one another by 5 is told so', () => {
    const nail = { id: 'nail', line: 'line', there: down(200), here: down(355) }
    const found = planned(fromSecond({ carried: [board, nail] })).findings.find(
      (f) => f.id === 'line-out-of-true:marks+second',
    )
    expect(found?.weight).toBe('stop')
    expect(found && say(found.say)).toContain('put it 5 mm apart')
  })

  test('that ties a line to one listed after it is refused', () => {
    const outcome = workThrough(fromSecond({ carried: [{ ...board, line: 'second' }] }))
    expect(outcome.kind).toBe('refused')
  })
})
