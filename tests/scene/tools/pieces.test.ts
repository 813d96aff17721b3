/** Where the pieces of a tool are: its tip meets the work, goes in by the figure of the plan and no further. */
import { Vector3 } from 'three'
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
