/** Where the pieces of a tool are: its tip meets the work, goes in by the figure of the plan and no further. */
import { Matrix4, Vector3 } from 'three'
import { describe, expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import type { Act, Contact, Motion } from '../../../src/core/staging/staging'
import { piecesOf } from '../../../src/scene/tools/pieces'

/** On a wall whose room side faces −y, 700 along and 1062 up. */
const contact: Contact = {
  at: { x: 700, y: -12, z: 1062 },
  into: { x: 0, y: 1, z: 0 },
  across: { x: 1, y: 0, z: 0 },
}
const mm = (value: number) => known(value, 0, 'mm', ['a'], { kind: 'survey' })
const act = (tool: Act['tool'], motion: Motion): Act => ({ tool, on: 'hole:a', contact, motion })

/** Where a point of the tool's own frame is in the room, half way through the work or at its end. */
function placed(
  of: Act,
  progress: number,
  piece = 0,
  own: readonly [number, number, number] = [0, 0, 0],
): readonly number[] {
  const found = piecesOf(of)[piece]
  if (found === undefined) throw new Error(`no piece ${piece}`)
  return new Vector3(...own)
    .applyMatrix4(found.at(progress))
    .toArray()
    .map((v) => Math.round(v * 100) / 100)
}
const DEEPEST = 0.82

describe('a bit', () => {
  const bore = act('drill-driver', { kind: 'bore', by: mm(48) })

  test('waits below and off the wall, meets it, is in by its depth, and comes out again', () => {
    expect(placed(bore, 0)).toEqual([700, -102, 1002])
    expect(placed(bore, 0.2)).toEqual([700, -12, 1062])
    expect(placed(bore, DEEPEST)).toEqual([700, 36, 1062])
    expect(placed(bore, 1)).toEqual([700, -102, 1002])
  })

  test('its collar touches the wall when the bit is as deep as it may be', () => {
    expect(placed(bore, DEEPEST, 0, [0, 0, 48])).toEqual([700, -12, 1062])
    // The collar is drawn there: brass, from the depth on.
    const { sketch } = piecesOf(bore)[0] as ReturnType<typeof piecesOf>[number]
    const brass = sketch.faces.points.filter(
      (_, i) => i % 3 === 2 && /^#(B08A42|96712F|7C5413)$/.test(sketch.faces.colours[(i - 2) / 3] ?? ''),
    )
    expect(Math.min(...brass)).toBe(48)
  })

  test('of a depth nobody knows stays at the mark', () => {
    const open = act('drill-driver', {
      kind: 'bore',
      by: { state: 'unknown', unit: 'mm', missing: ['walls.a.layers'] } as never,
    })
    expect(placed(open, DEEPEST)).toEqual([700, -12, 1062])
  })
})

test('a screw goes in by its whole length, with the driver on its head', () => {
  const drive = act('screwdriver', { kind: 'drive', by: mm(50) })
  expect(placed(drive, 0.2, 1)).toEqual([700, -12, 1062])
  expect(placed(drive, 1, 1)).toEqual([700, 38, 1062])
  expect(placed(drive, DEEPEST, 0, [0, 0, 50])).toEqual([700, -12, 1062])
})

test('a blade reaches as far as is measured, and its case stays at the end it is measured from', () => {
  const measure = act('tape', { kind: 'measure', to: { x: 1300, y: -12, z: 1062 }, by: mm(600) })
  expect(placed(measure, DEEPEST, 1, [1, 0, 0])).toEqual([1300, -12, 1062])
  expect(placed(measure, 0.51, 1, [1, 0, 0])).toEqual([1000, -12, 1062])
  expect(placed(measure, DEEPEST)).toEqual([700, -12, 1062])
})

test('a pencil touches the wall from one end of its line to the other', () => {
  const draw = act('pencil', { kind: 'draw', to: { x: 3700, y: -12, z: 1062 }, by: null })
  expect([0.2, 0.51, DEEPEST].map((p) => placed(draw, p))).toEqual([
    [700, -12, 1062],
    [2200, -12, 1062],
    [3700, -12, 1062],
  ])
})

test('an adjuster is turned by the turns of its figure, seen clockwise by whoever turns it', () => {
  const turns = known(0.25, 0, 'turn', ['a'], { kind: 'survey' })
  const turn = act('screwdriver', { kind: 'turn', turns, raises: null })
  // A quarter turn clockwise, seen from the room, takes what points right to pointing down.
  expect(placed(turn, DEEPEST, 0, [10, 0, 0])).toEqual([700, -12, 1052])
  expect(placed(turn, 0.2, 0, [10, 0, 0])).toEqual([710, -12, 1062])
})

test('what is done somewhere else, or drawn with the room, has no piece', () => {
  expect(piecesOf({ tool: 'telephone', on: 'room', contact: null, motion: { kind: 'elsewhere' } })).toEqual(
    [],
  )
  expect(piecesOf({ tool: 'level', on: 'level:wall-1', contact, motion: { kind: 'rest' } })).toEqual([])
})

describe('a hand', () => {
  const cornersOf = (of: Act, progress: number) =>
    piecesOf(of)
      .filter(({ name }) => !name.endsWith('.turn'))
      .flatMap(({ sketch, at }) =>
        Array.from({ length: sketch.faces.points.length / 3 }, (_, i) =>
          new Vector3(...sketch.faces.points.slice(3 * i, 3 * i + 3)).applyMatrix4(at(progress)),
        ),
      )
  const leg: Contact = {
    at: { x: 700, y: -300, z: -900 },
    into: { x: 0, y: 0, z: -1 },
    across: { x: 1, y: 0, z: 0 },
  }
  const turning: Act = {
    tool: 'hands',
    on: 'leg:a.b',
    contact: leg,
    motion: { kind: 'turn', turns: null, raises: null },
  }

  test('lies on what it presses and reaches into it nowhere, fingers up', () => {
    const corners = cornersOf(act('hands', { kind: 'press' }), 0.5)
    expect(Math.max(...corners.map((c) => c.y))).toBeCloseTo(contact.at.y, 6)
    const thick = Math.max(...corners.map((c) => contact.at.y - c.y))
    expect(thick).toBeGreaterThan(15)
    expect(thick).toBeLessThan(45)
    // From the tips to the end of the cuff, and wider across the thumb than across the wrist.
    const [up, down] = [Math.max(...corners.map((c) => c.z)), Math.min(...corners.map((c) => c.z))]
    expect(up - contact.at.z).toBeCloseTo(100, 6)
    expect(contact.at.z - down).toBeCloseTo(150, 6)
  })

  test.each([0.2, 0.4, 0.5, 0.7])('is round the leg it turns and not in it, at %s of the way', (progress) => {
    const corners = cornersOf(turning, progress)
    const off = corners.map((c) => [c.x - leg.at.x, c.y - leg.at.y] as const)
    const round = Math.min(...off.map(([x, y]) => Math.hypot(x, y)))
    expect(round).toBeGreaterThan(20)
    expect(round).toBeLessThan(35)
    for (const way of [0, 1, 2, 3].map((k) => (k * Math.PI) / 2)) {
      const along = off.map(([x, y]) => x * Math.cos(way) + y * Math.sin(way))
      expect(Math.max(...along)).toBeGreaterThan(20)
    }
  })

  test('goes as far as a wrist does and comes back, and is few triangles', () => {
    const [start, most, end] = [0.2, 0.355, DEEPEST].map((p) => {
      const [piece] = piecesOf(turning)
      return new Vector3(0, -1, 0).transformDirection(piece?.at(p) ?? new Matrix4())
    }) as [Vector3, Vector3, Vector3]
    expect(start.angleTo(most)).toBeCloseTo(Math.PI / 3, 3)
    expect(start.angleTo(end)).toBeCloseTo(0, 3)
    expect(cornersOf(turning, 0.5).length / 3).toBeLessThan(150)
  })

  test('of two that carry, each is under its own edge, its fingers towards the other', () => {
    const under: Contact = { ...leg, into: { x: 0, y: 0, z: 1 } }
    const carry: Act = {
      tool: 'hands',
      on: 'unit:a',
      contact: under,
      motion: { kind: 'carry', unit: 'a', segments: [], lift: 0, spread: 680 },
    }
    const sides = piecesOf(carry).map(({ sketch, at }) => {
      const light = sketch.faces.colours.flatMap((colour, i) => (HAND.test(colour) ? [i] : []))
      return light.map((i) =>
        new Vector3(...sketch.faces.points.slice(3 * i, 3 * i + 3)).applyMatrix4(at(0.5)),
      )
    })
    const middles = sides.map((s) => s.reduce((sum, c) => sum + c.x, 0) / s.length - leg.at.x)
    expect(middles[0]).toBeCloseTo(-(middles[1] ?? 0), 6)
    expect(middles[0]).toBeLessThan(-250)
    for (const corners of sides) {
      // Under the edge, which is 40 mm in from where the hand is, and no higher.
      expect(Math.min(...corners.map((c) => Math.abs(c.x - leg.at.x)))).toBeLessThan(300)
      expect(Math.max(...corners.map((c) => c.z))).toBeCloseTo(leg.at.z, 6)
    }
  })
})
const HAND = /^#(F6E9D6|EBD8BD|CFB390)$/
