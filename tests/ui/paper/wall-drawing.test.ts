import { describe, expect, test } from 'vitest'
import type { Plan, WallFrame } from '../../../src/core/plan/types'
import { levelsOf } from '../../../src/ui/paper/wall/HeightLines'
import { markBoxes, placeHoles } from '../../../src/ui/paper/wall/Holes'
import { thingBoxes } from '../../../src/ui/paper/wall/InWall'
import { type Pen, penFor, reachingInto, unitsOn } from '../../../src/ui/paper/wall/pen'
import { overlaps } from '../../../src/ui/paper/wall/spread'
import { nameBox } from '../../../src/ui/paper/wall/UnitFronts'
import { planOf } from '../../support/kitchens'

const walls = (['l-shape', 'one-wall'] as const).flatMap((name) => {
  const plan = planOf(name)
  return plan.walls
    .filter((w) => unitsOn(plan, w.wall).length > 0)
    .map((frame) => ({ title: `${plan.name}, ${frame.name}`, plan, frame }))
})

function lettering(plan: Plan, frame: WallFrame) {
  const pen = penFor(plan, frame) as Pen
  const holes = plan.holes.filter((h) => h.wall === frame.wall)
  const things = plan.wallThings?.filter((t) => t.wall === frame.wall) ?? []
  const taken = [...thingBoxes(things, pen), ...markBoxes(holes, pen)]
  const names = unitsOn(plan, frame.wall).flatMap((u) => nameBox(u, pen, taken) ?? [])
  return { pen, holes, names, taken, placed: placeHoles(holes, pen, names) }
}

describe.each(walls)('$title', ({ plan, frame }) => {
  const { pen, holes, names, taken, placed } = lettering(plan, frame)

  test('shows every hole of the wall whose place is known', () => {
    expect(placed.map((p) => p.hole.id)).toEqual(
      holes.filter((h) => h.along.state !== 'unknown' && h.height.state !== 'unknown').map((h) => h.id),
    )
    expect(placed.length).toBeGreaterThan(0)
  })

  test('no number touches another, a mark or a name', () => {
    const labels = placed.map((p) => p.label)
    const touching = labels.flatMap((a, i) =>
      [...labels.slice(i + 1), ...names, ...markBoxes(holes, pen)].filter((b) => overlaps(a, b)),
    )
    expect(touching).toEqual([])
  })

  test('no name lies over a socket, a mark or another name', () => {
    const touching = names.flatMap((a, i) => [...names.slice(i + 1), ...taken].filter((b) => overlaps(a, b)))
    expect(touching).toEqual([])
  })

  test('every line has a label with its figure', () => {
    const levels = levelsOf(
      plan.lines.filter((l) => l.wall === frame.wall),
      pen,
    )
    expect(levels.filter((l) => l.isDatum)).toHaveLength(1)
    for (const level of levels) expect(level.text).toMatch(/ [+−]?[\d\u202f]+(\.\d)?$/)
  })
})

test('a corner unit shows in the wall it reaches along', () => {
  const plan = planOf('l-shape')
  const [, garden] = plan.walls
  const names = reachingInto(plan, garden as WallFrame).map((r) => r.unit.unit)
  expect(names).toContain('corner-1')
})

test('a wall of unknown length is not drawn', () => {
  const plan = planOf('l-shape')
  const [frame] = plan.walls as readonly [WallFrame]
  const unknown = { state: 'unknown', unit: 'mm', basis: { kind: 'survey' }, from: [], missing: [] } as const
  expect(penFor(plan, { ...frame, length: unknown })).toBeNull()
})
