import { describe, expect, test } from 'vitest'
import { standingAt } from '../../src/core/plan/standing-at'
import { shelfHeights } from '../../src/core/views/carcass'
import { nothingLeftOut } from '../../src/core/views/kept'
import { roomShape } from '../../src/core/views/room-shape'
import { partsIn } from '../../src/scene/sketch'
import { sketchScene } from '../../src/scene/sketch-scene'
import { planOf } from '../support/kitchens'

const plan = planOf('l-shape')
const room = roomShape(plan)

function sketched(id: string, t = 0) {
  const index = plan.operations.findIndex((o) => o.id === id)
  if (index < 0) throw new Error(`no operation ${id}`)
  const { still, moving } = sketchScene(plan, standingAt(plan, index, t), room, nothingLeftOut)
  return { still, moving, parts: partsIn(moving === null ? [still] : [still, moving.sketch]) }
}

/** Heights, in the unit's own frame, at which the travelling unit has something flat. */
function heightsOf(id: string): ReadonlySet<number> {
  const points = sketched(id).moving?.sketch.faces.points ?? []
  return new Set(points.filter((_, i) => i % 3 === 2).map((z) => Math.round(z)))
}

describe('a unit in hand is drawn in the state its step says', () => {
  test.each(['stand-up:tall-1', 'place:tall-1', 'hang:wall-1'])('%s: its shelves are out', (id) => {
    const unit = plan.units.find((u) => id.endsWith(u.unit))
    if (unit === undefined) throw new Error(id)
    const height = Math.max(...unit.solid.map((b) => b.z1))
    const shelves = shelfHeights(unit, height).map(Math.round)
    expect(shelves.length).toBeGreaterThan(1)
    expect(shelves.filter((z) => heightsOf(id).has(z))).toEqual([])
  })

  test('a tall lies on blocks under its edge and its head, and is turned over the edge’s', () => {
    const blocks = (id: string, t: number) => {
      const { faces } = sketched(id, t).still
      return faces.parts.filter((p) => p === 'blocks:tall-1').length / (6 * 6)
    }
    expect(blocks('set-legs:tall-1', 0)).toBe(4)
    expect(blocks('stand-up:tall-1', 0)).toBe(4)
    expect(blocks('stand-up:tall-1', 1)).toBe(2)
    expect(blocks('place:tall-1', 0)).toBe(0)
  })

  test('blocks stand on the floor and reach the unit they bear', () => {
    const { still } = sketched('stand-up:tall-1')
    const { points, parts } = still.faces
    const heights = parts.flatMap((p, i) => (p === 'blocks:tall-1' ? [points[i * 3 + 2] ?? 0] : []))
    const upright = plan.paths.flatMap((p) => p.segments).find((s) => s.kind === 'stand-up')
    expect(upright?.kind).toBe('stand-up')
    if (upright?.kind !== 'stand-up') return
    expect(Math.max(...heights)).toBeCloseTo(upright.upright.z, 6)
    expect(Math.max(...heights) - Math.min(...heights)).toBeGreaterThan(100)
  })
})

describe('while the delivery is checked', () => {
  test('every unit with a place has its outline, and there is none once work begins', () => {
    const planned = (id: string) => sketched(id).parts.filter((p) => p.startsWith('planned:'))
    const placed = plan.units.filter((u) => u.pose !== null).map((u) => `planned:${u.unit}`)
    expect(planned('check-delivery:room')).toEqual([...placed].sort())
    expect(placed.length).toBeGreaterThan(8)
    expect(planned('trace:a')).toEqual([])
    expect(planned('hang:wall-1')).toEqual([])
  })

  test('an outline stands where its unit will', () => {
    const { faces } = sketched('check-delivery:room').still
    expect(faces.parts.filter((p) => p.startsWith('unit:'))).toEqual([])
    const { washes } = sketched('check-delivery:room').still
    const tall = plan.units.find((u) => u.unit === 'tall-1')
    const heights = washes.parts.flatMap((p, i) =>
      p === 'planned:tall-1' ? [washes.points[i * 3 + 2] ?? 0] : [],
    )
    const top = tall === undefined || tall.top.state === 'unknown' ? Number.NaN : tall.top.value
    expect(Math.max(...heights)).toBeCloseTo(top, 6)
  })
})

describe('where a unit is drilled through, what lies in the wall behind its back shows on it', () => {
  /** Parts washed over more than 20 mm out from wall a, which runs along y = 0: on the inside of a unit. */
  const onTheBack = (id: string) => {
    const { points, parts } = sketched(id).still.washes
    return new Set(
      parts
        .filter((p, i) => /^(band:.*\.a\.|stud:a\b)/.test(p) && (points[i * 3 + 1] ?? 0) < -15)
        .map((p) => p),
    )
  }

  test('of wall unit 3 the two studs its screws go into, and the band of the switch between them', () => {
    const shown = onTheBack('second-fix:wall-3')
    expect([...shown].sort()).toEqual(['band:accessory-vertical.a.hob-switch', 'stud:a.a-s7', 'stud:a.a-s8'])
    const by = plan.bands.find((b) => shown.has(`band:${b.id}`))
    expect(by?.left).toBeGreaterThan(1690)
    expect(by?.right).toBeLessThan(2092)
  })

  test('where nothing is drilled through a unit, its back is a board', () => {
    expect([...onTheBack('level:wall-3')]).toEqual([])
    expect([...onTheBack('join:wall-2+wall-3')]).toEqual([])
  })
})

test('hangers are in the top corners of a unit from the step they are fitted at, and the picture of it shows them', () => {
  const hangers = (id: string, unit: string) =>
    new Set(sketched(id).parts.filter((p) => p.startsWith(`hanger:${unit}.`)))
  expect([...hangers('fit-hangers:wall-2', 'wall-2')].sort()).toEqual([
    'hanger:wall-2.left',
    'hanger:wall-2.right',
  ])
  for (const id of ['hang:wall-1', 'lock:wall-1']) expect([...hangers(id, 'wall-1')], id).toHaveLength(2)
  expect([...hangers('place:base-1', 'base-1')]).toEqual([])
})
