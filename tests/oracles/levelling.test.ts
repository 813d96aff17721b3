/**
 * Levelling a second way. The core says how a unit lies, which way the bubble goes and what to turn by formulas; here a
 * rigid box is let down on its adjusters and comes to rest by itself.
 *
 * The box: a plane z = c + a·x + b·y, its weight in one point, and under each foot a stiff spring that only pushes (a
 * hanger's hook pulls and pushes). It rests where its energy is least; that is found by Newton's method with 3 × 3
 * matrices. Nobody says which feet carry: those whose springs are pressed do. The vial: an arc of radius R on the tilted
 * box, its bubble at whichever point of the arc is highest, found by looking at all of it.
 *
 * Worked by hand first:
 * - Level of 600 mm, right end 1.6 mm high: it rises 1.6/600 = 1/375. A vial of 2 mm in a metre for 2 mm of bubble has
 *   R = 2/0.002 = 1000 mm; its highest point is R/375 = 2.67 mm to the right. R = 200 mm for a usual one: 0.53 mm.
 * - Two hangers 500 mm apart, 1 mm a turn, the right end 1.6 mm high in 600 mm: the left hanger is 500/375 = 1.33 mm low,
 *   so 1⅓ turns up. With only 1 mm of travel up left, both come down by 0.33: left 1 mm up, right 0.33 turns down.
 * - Four legs at (0,0) (500,0) (0,400) (500,400), back right 2 mm long, weight at (250,170): it stands on the diagonal that
 *   is higher in the middle (back left 0, front right 0: 0; back right 2, front left 0: 1), so on back right and front
 *   left, and tips to the back: onto back left. Plane: along 2/500, out 0 − 0 = 0 by back left and front left; so front
 *   right is 2 mm off the floor.
 */
import { Matrix, solve } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import { type LevelReading, type TurnOrder, turnsFor } from '../../src/core/daylog/turns'
import { assumed, known, unknown } from '../../src/core/figure'
import { type Bearing, type Heights, hungOn, standingOn } from '../../src/core/levelling/lie'
import { bubbleAt, VIALS } from '../../src/core/levelling/vial'
import type { Adjuster } from '../../src/core/plan/types'
import { type Random, randomFrom } from '../support/prng'

// ------------------------------------------------------------------ the rigid body

interface Body {
  readonly points: readonly {
    readonly id: string
    readonly x: number
    readonly y: number
    readonly z: number
  }[]
  readonly weightAt: { readonly x: number; readonly y: number }
  readonly newtons: number
  /** Hooks hold both ways, feet only push. */
  readonly isHooked: boolean
}
interface Rest {
  readonly a: number
  readonly b: number
  readonly pressed: readonly string[]
}

/** N/mm: 300 N press it in by some millionths of a millimetre. */
const STIFF = 1e7

function comesToRest(body: Body): Rest {
  const { points, weightAt, newtons, isHooked } = body
  const near = weightAt
  // About the weight: z = p[0] + p[1]·(x − x₀) + p[2]·(y − y₀), so that the weight pushes p[0] alone.
  const rows = points.map((q) => [1, q.x - near.x, isHooked ? 0 : q.y - near.y])
  const into = (p: readonly number[], i: number): number => {
    const [r, q] = [rows[i], points[i]]
    if (r === undefined || q === undefined) throw new Error('no such point')
    return q.z - r.reduce((sum, v, k) => sum + v * (p[k] ?? 0), 0)
  }
  const works = (p: readonly number[], i: number) => isHooked || into(p, i) > 0
  const energy = (p: readonly number[]): number =>
    points.reduce(
      (sum, _, i) => sum + (works(p, i) ? 0.5 * STIFF * into(p, i) ** 2 : 0),
      newtons * (p[0] ?? 0),
    )
  let p: readonly number[] = [Math.min(...points.map((q) => q.z)) - 1, 0, 0]
  for (let round = 0; round < 200; round++) {
    const slope = [newtons, 0, 0]
    const bend = [0, 1, 2].map((i) => [0, 1, 2].map((j) => (i === j ? 1e-3 : 0)))
    for (const [i, row] of rows.entries()) {
      if (!works(p, i)) continue
      const press = into(p, i)
      for (let k = 0; k < 3; k++) {
        slope[k] = (slope[k] ?? 0) - STIFF * press * (row[k] ?? 0)
        for (let l = 0; l < 3; l++) {
          const line = bend[k] as number[]
          line[l] = (line[l] ?? 0) + STIFF * (row[k] ?? 0) * (row[l] ?? 0)
        }
      }
    }
    const step = solve(new Matrix(bend), Matrix.columnVector(slope)).to1DArray()
    let size = 1
    const after = (f: number) => p.map((v, k) => v - f * (step[k] ?? 0))
    while (size > 1e-9 && energy(after(size)) > energy(p)) size /= 2
    p = after(size)
    if (Math.hypot(...step.map((v, k) => v * (k === 0 ? 1 : 300))) < 1e-9) break
  }
  return {
    a: p[1] ?? 0,
    b: p[2] ?? 0,
    pressed: points.filter((_, i) => isHooked || into(p, i) > 1e-9).map((q) => q.id),
  }
}

/** Where on a vial tilted so the highest point of its arc is, mm from its middle: every hundredth of it is looked at. */
function highestOfArc(slope: number, radius: number): number {
  const [c, s] = [Math.cos(Math.atan(slope)), Math.sin(Math.atan(slope))]
  let best = { at: 0, z: Number.NEGATIVE_INFINITY }
  for (let i = -700; i <= 700; i++) {
    const at = i / 100
    const sag = Math.sqrt(radius * radius - at * at) - radius
    const z = at * s + sag * c
    if (z > best.z) best = { at, z }
  }
  return best.at
}

// ------------------------------------------------------------------ random units out of level

interface Case {
  readonly adjusters: readonly Adjuster[]
  readonly points: readonly Bearing[]
  readonly heights: Heights
  readonly weightAt: { readonly x: number; readonly y: number }
  readonly newtons: number
  readonly isHooked: boolean
  readonly axis: 'along' | 'out'
  readonly length: number
}

const mm = (value: number) => known(value, 0, 'mm', ['a'])
const adjuster = (
  kind: Adjuster['kind'],
  at: Bearing,
  perTurn: number,
  up: number,
  down: number,
): Adjuster => ({
  kind,
  id: at.id,
  x: mm(at.x),
  y: mm(at.y),
  perTurn: known(perTurn, 0, 'mm/turn', ['b']),
  clockwise: kind === 'leg' ? null : 'raises',
  place: null,
  upLeft: mm(up),
  downLeft: mm(down),
})

const PER_TURN = [0.8, 1, 1.25, 1.5, 2] as const

function onFourFeet(random: Random, isTall: boolean): Case {
  const [width, depth] = [random.step(300, 1200, 1), random.step(300, 650, 1)]
  const inset = random.step(30, 60, 1)
  const points = [
    { id: 'back-left', x: inset, y: inset },
    { id: 'back-right', x: width - inset, y: inset },
    { id: 'front-left', x: inset, y: depth - inset },
    { id: 'front-right', x: width - inset, y: depth - inset },
  ]
  const perTurn = random.pick(PER_TURN)
  return {
    adjusters: random.shuffled(points.map((p) => adjuster('leg', p, perTurn, 40, 40))),
    points,
    heights: Object.fromEntries(points.map((p) => [p.id, random.step(-4, 4, 0.01)])),
    // Never on a diagonal, where it may lie either way.
    weightAt: { x: width / 2 + random.step(3, 20, 0.1), y: depth / 2 - random.step(25, 40, 0.1) },
    newtons: random.step(100, 700, 1),
    isHooked: false,
    axis: random.pick(['along', 'out'] as const),
    length: isTall ? 1000 : 600,
  }
}

function onTwoHangers(random: Random): Case {
  const [width, inset] = [random.step(250, 1200, 1), random.step(20, 60, 1)]
  const points = [
    { id: 'left', x: inset, y: 0 },
    { id: 'right', x: width - inset, y: 0 },
  ]
  const perTurn = random.pick(PER_TURN)
  return {
    adjusters: random.shuffled(
      points.map((p) => adjuster('height-screw', p, perTurn, random.step(0.5, 6, 0.1), 12)),
    ),
    points,
    heights: Object.fromEntries(points.map((p) => [p.id, random.step(-3, 3, 0.01)])),
    weightAt: { x: width / 2, y: 150 },
    newtons: random.step(80, 500, 1),
    isHooked: true,
    axis: 'along',
    length: random.pick([250, 400, 600]),
  }
}

const rests = (c: Case, heights: Heights): Rest =>
  comesToRest({ ...c, points: c.points.map((p) => ({ ...p, z: heights[p.id] ?? 0 })) })

/** What somebody reads: the bubble at one end, and the packer that brings it back under the other. */
function readOff(c: Case, rest: Rest): LevelReading {
  const slope = c.axis === 'along' ? rest.a : rest.b
  const bubble = highestOfArc(slope, 1000)
  const [less, more] = c.axis === 'along' ? (['left', 'right'] as const) : (['back', 'front'] as const)
  return {
    axis: c.axis,
    low: bubble === 0 ? 'neither' : bubble > 0 ? less : more,
    packer: mm(Math.abs(slope) * c.length),
    levelLength: mm(c.length),
  }
}

/** The adjusters after somebody has done what they were told, to the quarter of a turn or exactly. */
function afterTurning(heights: Heights, orders: readonly TurnOrder[], isToQuarter: boolean): Heights {
  const after: Record<string, number> = { ...heights }
  for (const { adjuster: a, turns, way } of orders) {
    if (turns.state === 'unknown' || a.perTurn.state === 'unknown') throw new Error('not known')
    const made = isToQuarter ? Math.round(turns.value * 4) / 4 : turns.value
    const sign = way === 'up' ? 1 : way === 'down' ? -1 : 0
    after[a.id] = (after[a.id] ?? 0) + sign * made * a.perTurn.value
  }
  return after
}

/** How far apart the outermost adjusters stand, the way the level lies. */
function apart({ points, axis }: Case): number {
  const at = points.map((p) => (axis === 'along' ? p.x : p.y))
  return Math.max(...at) - Math.min(...at)
}

const CASES = 1000
const caseOf = (seed: number): Case => {
  const random = randomFrom(seed)
  return seed % 3 === 0 ? onTwoHangers(random) : onFourFeet(random, seed % 3 === 1)
}

/** mm out of level over the length of the level, after what was said was done; `spoil` spoils what was said. */
function offAfter(
  c: Case,
  isToQuarter: boolean,
  spoil: (orders: readonly TurnOrder[]) => readonly TurnOrder[] = (o) => o,
): number {
  const before = rests(c, c.heights)
  const orders = spoil(turnsFor(c.adjusters, readOff(c, before)))
  const rest = rests(c, afterTurning(c.heights, orders, isToQuarter))
  return Math.abs(c.axis === 'along' ? rest.a : rest.b) * c.length
}

// ------------------------------------------------------------------ the tests

test(`${CASES} readings: what the core says to turn brings the reading to level`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const c = caseOf(seed)
    // An adjuster that has less than a twentieth of a millimetre to go is left alone.
    expect(offAfter(c, false), `seed ${seed}`).toBeLessThan((0.05 / apart(c)) * c.length + 0.001)
  }
})

test(`${CASES} readings: turned to the quarter that is said, it is within what the quarters leave`, () => {
  let worst = 0
  for (let seed = 0; seed < CASES; seed++) {
    const c = caseOf(seed)
    const [first] = c.adjusters
    if (first === undefined || first.perTurn.state === 'unknown') throw new Error(`seed ${seed}`)
    // Two adjusters, each an eighth of a turn out at most, as far apart as they stand that way.
    const left = ((2 * first.perTurn.value) / 8 / apart(c)) * c.length
    const off = offAfter(c, true)
    expect(off, `seed ${seed}`).toBeLessThan(left + 0.01)
    if (first.perTurn.value <= 1.5 && apart(c) >= c.length * 0.5) worst = Math.max(worst, off)
  }
  // With screws of 1.5 mm a turn at most and a level no longer than twice their distance, within 1 mm.
  expect(worst).toBeGreaterThan(0.2)
  expect(worst).toBeLessThan(1)
})

test(`${CASES} units: the core lays them as they come to rest, on the same adjusters, and sends the bubble the same way`, () => {
  let hanging = 0
  for (let seed = 0; seed < CASES; seed++) {
    const c = caseOf(seed)
    const rest = rests(c, c.heights)
    const lie = c.isHooked ? hungOn(c.points, c.heights) : standingOn(c.points, c.heights, c.weightAt)
    if (lie === null) throw new Error(`seed ${seed}`)
    expect(Math.abs(lie.along - rest.a), `seed ${seed} along`).toBeLessThan(1e-6)
    expect(Math.abs(lie.out - rest.b), `seed ${seed} out`).toBeLessThan(1e-6)
    if (!c.isHooked) {
      // A leg within two hundredths of the plane bears, to the core; its spring need not be pressed.
      hanging += lie.hanging.length
      expect(rest.pressed, `seed ${seed}`).toHaveLength(3)
      expect(lie.carrying, `seed ${seed}`).toEqual(expect.arrayContaining([...rest.pressed]))
    }
    const slope = c.axis === 'along' ? rest.a : rest.b
    for (const [vial, radius] of [
      [VIALS.usual, 200],
      [VIALS.fine, 1000],
    ] as const) {
      const bubble = bubbleAt(c.axis === 'along' ? lie.along : lie.out, c.axis, vial)
      expect(Math.abs(bubble.offset - highestOfArc(slope, radius)), `seed ${seed}`).toBeLessThan(0.01)
    }
  }
  expect(hanging).toBeGreaterThan(500)
})

describe('a wrong sign and swapped ends are seen', () => {
  const flip = { up: 'down', down: 'up', none: 'none', 'not-known': 'not-known' } as const
  const wrongSign = (orders: readonly TurnOrder[]) => orders.map((o) => ({ ...o, way: flip[o.way] }))
  const swapped = (orders: readonly TurnOrder[]) =>
    orders.map((o) => {
      const least = (v: Adjuster) =>
        v.x.state === 'unknown' || v.y.state === 'unknown' ? 0 : v.x.value + v.y.value
      const mirrored = [...orders].sort((p, q) => least(p.adjuster) - least(q.adjuster))
      const other = mirrored[orders.length - 1 - mirrored.indexOf(o)] as TurnOrder
      return { ...o, adjuster: other.adjuster }
    })
  test.each([
    ['a wrong sign', wrongSign],
    ['swapped ends', swapped],
  ])('%s', (_, spoil) => {
    let seen = 0
    for (let seed = 0; seed < 300; seed++) {
      const c = caseOf(seed)
      const [before, after] = [offAfter(c, false, () => []), offAfter(c, false, spoil)]
      if (before > 0.1 && after > before * 1.5) seen++
    }
    expect(seen).toBeGreaterThan(270)
  })
})

describe('by hand', () => {
  const reading: LevelReading = { axis: 'along', low: 'left', packer: mm(1.6), levelLength: mm(600) }
  const hangers = (upLeft: number) =>
    [
      { id: 'left', x: 50, y: 0 },
      { id: 'right', x: 550, y: 0 },
    ].map((p) => adjuster('height-screw', p, 1, upLeft, 8))
  const said = (orders: readonly TurnOrder[]) =>
    orders.map((o) => [o.adjuster.id, o.turns.state === 'unknown' ? null : o.turns.value, o.way, o.hand])

  test('level of 600, right end 1.6 high: the bubble is right of the middle', () => {
    const fine = bubbleAt(1.6 / 600, 'along', VIALS.fine)
    expect(fine.towards).toBe('right')
    expect(fine.offset).toBeCloseTo(2.667, 3)
    expect(fine.divisions).toBeCloseTo(1.333, 3)
    expect(bubbleAt(1.6 / 600, 'along', VIALS.usual).offset).toBeCloseTo(0.533, 3)
    expect(bubbleAt(-1.6 / 600, 'along', VIALS.fine).towards).toBe('left')
    expect(bubbleAt(0.01, 'out', VIALS.fine)).toMatchObject({ offset: 7, towards: 'front', isAtEnd: true })
  })

  test('two hangers 500 apart, 1 mm a turn', () => {
    expect(said(turnsFor(hangers(6), reading))).toEqual([
      ['left', 1.333, 'up', 'clockwise'],
      ['right', 0, 'none', null],
    ])
    expect(said(turnsFor(hangers(1), reading))).toEqual([
      ['left', 1, 'up', 'clockwise'],
      ['right', 0.333, 'down', 'anticlockwise'],
    ])
  })

  test('nobody has said what a turn does: no turns are said; assumed, they are assumed', () => {
    const with_ = (perTurn: Adjuster['perTurn']) => hangers(6).map((a) => ({ ...a, perTurn }))
    const [left] = turnsFor(with_(unknown('mm/turn', ['units.a.hanging'])), reading)
    expect(left?.turns.state).toBe('unknown')
    expect(left?.way).toBe('up')
    const [guessed] = turnsFor(
      with_(
        assumed(1, 0.1, 'mm/turn', ['units.a.hanging'], { kind: 'common-practice', why: 'a usual screw' }),
      ),
      reading,
    )
    expect(guessed?.turns).toMatchObject({ state: 'assumed', value: 1.333 })
  })

  test('four legs, the back right one 2 mm long: three carry, the front right one hangs', () => {
    const feet = [
      { id: 'bl', x: 0, y: 0 },
      { id: 'br', x: 500, y: 0 },
      { id: 'fl', x: 0, y: 400 },
      { id: 'fr', x: 500, y: 400 },
    ]
    const weightAt = { x: 250, y: 170 }
    const lie = standingOn(feet, { br: 2 }, weightAt)
    expect(lie).toMatchObject({ along: 0.004, out: 0, corner: 0, carrying: ['bl', 'br', 'fl'] })
    expect(lie?.hanging).toEqual([{ id: 'fr', gap: 2 }])
    const rest = comesToRest({
      points: feet.map((f) => ({ ...f, z: f.id === 'br' ? 2 : 0 })),
      weightAt,
      newtons: 300,
      isHooked: false,
    })
    expect(rest.a).toBeCloseTo(0.004, 6)
    expect(rest.pressed).toEqual(['bl', 'br', 'fl'])
  })
})
