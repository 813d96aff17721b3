import { describe, expect, test } from 'vitest'
import { choosePaths } from '../../../src/core/placing/eliminate'
import {
  candidatePaths,
  type PlacedUnit,
  pathRefusedBy,
  unitsInTheWay,
} from '../../../src/core/placing/paths'
import { rectangleInRoom } from '../../../src/core/placing/solid'
import { diagonalOf } from '../../../src/core/placing/stand-up'
import type { Obstacle, PlacingPath, PlanPoint } from '../../../src/core/plan/types'
import { placingWords } from '../../../src/core/words/en/placing'
import { aBase, aFullKitchen, aRoom, aTall, aWallUnit, box, FLOOR, pose, rectangle } from './rooms'

const room = aRoom(rectangle(4000, 4000), 2400)
function block(
  id: string,
  at: { x: number; y: number; width: number; depth: number },
  bottom: number | null = null,
  top: number | null = null,
): Obstacle {
  return { id, polygon: rectangleInRoom(pose(at.x, at.y, 0), 0, at.width, 0, at.depth), bottom, top }
}
function only(units: readonly PlacedUnit[], inRoom = room, misfit = 0): PlacingPath {
  const path = candidatePaths(units, inRoom, { misfit }).candidates.get(units[0]?.unit ?? '')?.[0]
  if (path === undefined) throw new Error('no path')
  return path
}
function chosen(units: readonly PlacedUnit[], inRoom = room) {
  const { candidates } = candidatePaths(units, inRoom)
  return choosePaths(
    units.map(({ unit }) => unit),
    candidates,
    [],
  )
}
const FINAL = FLOOR + 150

describe('a base unit', () => {
  test('is set down clear of the front line, lifted 30, moved straight in, let down', () => {
    expect(only([aBase('b', pose(1000, 0, FINAL))]).segments).toEqual([
      { kind: 'move', from: pose(1000, -860, FINAL), to: pose(1000, -860, FINAL + 30) },
      { kind: 'move', from: pose(1000, -860, FINAL + 30), to: pose(1000, 0, FINAL + 30) },
      { kind: 'move', from: pose(1000, 0, FINAL + 30), to: pose(1000, 0, FINAL) },
    ])
  })
  test('travels over the highest floor on its way', () => {
    const humped = aRoom(rectangle(4000, 4000), 2400, {
      floorHighUnder: (polygon) => (polygon.some(({ y }) => y < -700) ? FINAL + 8 : FLOOR),
    })
    const [lift, carry] = only([aBase('b', pose(1000, 0, FINAL))], humped).segments
    expect(lift).toMatchObject({ from: { z: FINAL + 8 }, to: { z: FINAL + 38 } })
    expect(carry).toMatchObject({ to: { x: 1000, y: 0, z: FINAL + 38 } })
  })
  test('is not brought into the floor it is to stand on; a little is let pass, and told', () => {
    const raised = (by: number) => ({ ...room, floorHighUnder: () => FINAL + by })
    const inIt = candidatePaths([aBase('b', pose(1000, 0, FINAL))], raised(50), { misfit: 40 })
    expect(inIt.trapped).toMatchObject([{ where: 'in-place', say: { values: { thing: 'floor', by: 50 } } }])
    const alittle = candidatePaths([aBase('b', pose(1000, 0, FINAL))], raised(30), { misfit: 40 })
    expect(alittle.trapped).toEqual([])
    expect(alittle.overlaps).toEqual([{ unit: 'b', with: { kind: 'floor', id: 'floor' }, by: 30 }])
    const standing = candidatePaths([aBase('b', pose(1000, 0, FINAL))], raised(0.5))
    expect([standing.trapped, standing.overlaps]).toEqual([[], []])
  })
  test('floor that is only guessed does not keep it out, and is told', () => {
    const guessed = { ...room, floorHighUnder: () => FINAL + 300, floorReadUnder: () => FLOOR }
    const ways = candidatePaths([aBase('b', pose(1000, 0, FINAL))], guessed)
    expect([ways.trapped, ways.overlaps]).toEqual([[], []])
    expect(ways.guessedFloor).toEqual([{ unit: 'b', by: 300 }])
  })
  test('under a window board 20 over it: lifted 10 instead', () => {
    const board = block('board', { x: 900, y: 0, width: 900, depth: 200 }, FINAL + 740, FINAL + 770)
    const path = only([aBase('b', pose(1000, 0, FINAL))], { ...room, obstacles: [board] })
    expect(path.segments[1]).toMatchObject({ to: { z: FINAL + 10 } })
    expect(path.clearance).toBe(10)
  })
  test('in a narrow galley it starts nearer', () => {
    const path = only([aBase('b', pose(1000, 0, FINAL))], aRoom(rectangle(4000, 1250), 2400))
    expect(path.segments[0]).toMatchObject({ from: { x: 1000, y: -660 } })
    expect(path.clearance).toBe(30)
  })
  test('in a passage too narrow for that it comes along its wall', () => {
    const path = only([aBase('b', pose(1000, 0, FINAL))], aRoom(rectangle(4000, 900), 2400))
    expect(path.approach).toBe('left')
    expect(path.segments[0]).toMatchObject({ from: { x: 100, y: 0 } })
  })
  test('boxings beside it in that passage: round the bend', () => {
    const boxings = [
      block('boxing-l', { x: 900, y: 0, width: 100, depth: 250 }),
      block('boxing-r', { x: 1600, y: 0, width: 100, depth: 250 }),
    ]
    const path = only([aBase('b', pose(1000, 0, FINAL))], {
      ...aRoom(rectangle(4000, 900), 2400),
      obstacles: boxings,
    })
    expect(path.approach).toBe('left')
    expect(path.segments).toHaveLength(4)
    expect(path.segments[1]).toMatchObject({ from: { x: 100, y: -300 }, to: { x: 1000, y: -300 } })
    expect(path.clearance).toBe(0)
  })
  test('the user says where units may be set down', () => {
    const { candidates } = candidatePaths([aBase('b', pose(1000, 0, FINAL))], room, {
      stagingHint: { x: 3300, y: -2280 },
    })
    expect(candidates.get('b')?.[0]?.segments[0]).toMatchObject({ from: { x: 3000, y: -2000 } })
    expect(candidates.get('b')?.[0]?.segments).toHaveLength(4)
  })
})

describe('a hung unit', () => {
  test('goes up from the floor clear of base units, in, and down onto its hooks', () => {
    expect(only([aWallUnit('w', pose(1000, 0, 500))]).segments).toEqual([
      { kind: 'move', from: pose(1000, -900, FLOOR), to: pose(1000, -900, 515) },
      { kind: 'move', from: pose(1000, -900, 515), to: pose(1000, 0, 515) },
      { kind: 'move', from: pose(1000, 0, 515), to: pose(1000, 0, 500) },
    ])
  })
  test('base units in place are not in its way', () => {
    const path = only([aWallUnit('w', pose(1000, 0, 500)), aBase('b', pose(1000, 0, FINAL))])
    expect(path.blockedBy).toEqual([])
  })
  test('no room over it to hook on: nothing lets it in, and the ceiling is named', () => {
    const low = aRoom(rectangle(4000, 4000), 500 + 720 + 14 - FLOOR)
    const { candidates, trapped } = candidatePaths([aWallUnit('w', pose(1000, 0, 500))], low)
    expect(candidates.get('w')).toEqual([])
    expect(trapped[0]?.inTheWay.map(({ thing }) => thing.kind)).toEqual(['ceiling', 'ceiling', 'ceiling'])
    const enough = aRoom(rectangle(4000, 4000), 500 + 720 + 15 - FLOOR)
    expect(only([aWallUnit('w', pose(1000, 0, 500))], enough).clearance).toBe(0)
  })
  test('the floor is not known: it starts in the hands', () => {
    const unread = { ...room, floorHighUnder: () => null }
    expect(only([aWallUnit('w', pose(1000, 0, 500))], unread).segments).toHaveLength(2)
  })
})

describe('a tall unit', () => {
  test('is stood up over its back, put down 10 over the floor it travels on, walked in, let down', () => {
    const path = only([aTall('t', pose(1000, 0, FLOOR + 100))])
    expect(path.segments).toEqual([
      { kind: 'stand-up', upright: pose(1000, -2050, FLOOR + 20), over: 'back', blocks: 20 },
      { kind: 'move', from: pose(1000, -2050, FLOOR + 20), to: pose(1000, -2050, FLOOR + 110) },
      { kind: 'move', from: pose(1000, -2050, FLOOR + 110), to: pose(1000, 0, FLOOR + 110) },
      { kind: 'move', from: pose(1000, 0, FLOOR + 110), to: pose(1000, 0, FLOOR + 100) },
    ])
    expect(path.clearance).toBe(50)
  })
  test('the ceiling decides exactly at diagonal + blocks + 10', () => {
    const needed = diagonalOf(2150, 580) + 20 + 10
    const unit = aTall('t', pose(1000, 0, FLOOR + 50), 600, 2150)
    const wide = { ...unit, solid: [box(900, 580, 2150)] }
    const at = (ceiling: number) => candidatePaths([wide], aRoom(rectangle(6000, 6000), ceiling))
    expect(at(needed).notStoodUp).toEqual([])
    const { notStoodUp, candidates } = at(needed - 0.2)
    expect(notStoodUp[0]?.inTheWay.map(({ thing }) => thing.id)).toEqual(Array(4).fill('ceiling'))
    // It can still be brought in upright, or built where it stands.
    expect(candidates.get('t')?.[0]?.segments.every(({ kind }) => kind === 'move')).toBe(true)
  })
  test('under a lower ceiling over its narrow side', () => {
    const unit = { ...aTall('t', pose(1000, 0, FLOOR + 30), 600, 2150), solid: [box(300, 580, 2150)] }
    const path = only([unit], aRoom(rectangle(5000, 4000), 2210))
    expect(path.segments[0]).toMatchObject({ kind: 'stand-up', over: 'left' })
  })
  test('a beam that hangs into the swing moves it elsewhere', () => {
    const unit = aTall('t', pose(1000, 0, FLOOR + 50))
    const beam = block('beam', { x: 0, y: -1500, width: 4000, depth: 1000 }, FLOOR + 2080, FLOOR + 2400)
    const path = only([unit], aRoom(rectangle(4000, 6000), 2400, { obstacles: [beam] }))
    expect(path.segments[0]).toMatchObject({ kind: 'stand-up' })
    expect(pathRefusedBy(path, unit, aRoom(rectangle(4000, 6000), 2400, { obstacles: [beam] }))).toBeNull()
    expect(pathRefusedBy(only([unit]), unit, { ...room, obstacles: [beam] })?.id).toBe('beam')
  })
  test('too little floor in every direction: said so, and brought in upright', () => {
    const { notStoodUp, candidates } = candidatePaths(
      [aTall('t', pose(200, 0, FLOOR + 100))],
      aRoom(rectangle(1400, 1700), 2400),
    )
    expect(notStoodUp[0]?.say).toMatchObject({
      key: 'placing.not-stood-up',
      values: { unit: 't', back: 'floor' },
    })
    expect(candidates.get('t')?.length).toBe(1)
  })
  test('sides left out for want of height are told as the ceiling', () => {
    const unit = { ...aTall('t', pose(200, 0, FLOOR + 100)), standUp: { sides: [], blocks: 20, reach: 0 } }
    const { notStoodUp } = candidatePaths([unit], room)
    expect(notStoodUp[0]?.inTheWay).toHaveLength(4)
    expect(notStoodUp[0]?.say.values).toMatchObject({ back: 'ceiling', left: 'ceiling' })
  })
  test('one that comes upright is not stood up', () => {
    const path = only([{ ...aTall('t', pose(1000, 0, FLOOR + 100)), standUp: null }])
    expect(path.segments.every(({ kind }) => kind === 'move')).toBe(true)
    expect(path.segments[1]).toMatchObject({ to: { z: FLOOR + 110 } })
  })
  test('the only floor to tilt it on is where base units will stand: tall first', () => {
    // 1,141 deep: 581 are left before the bases, and the tall unit is 600 deep.
    const small = aRoom(rectangle(2700, 1141), 2400)
    const bases = [0, 1, 2].map((i) => aBase(`b${i}`, pose(600 + i * 600, 0, FINAL)))
    const deep = { ...aTall('t', pose(0, 0, FLOOR + 100)), solid: [box(600, 600, 2000)] }
    const units = [deep, ...bases]
    const { candidates } = candidatePaths(units, small)
    const best = candidates.get('t')?.[0]
    expect(best?.blockedBy.length).toBeGreaterThan(0)
    const tilted = unitsInTheWay(best as PlacingPath, units).filter(({ during }) => during === 'stand-up')
    expect(tilted.length).toBeGreaterThan(0)
    const order = chosen(units, small)
    expect(order.ok && order.arcs.filter(([first]) => first === 't').map(([, then]) => then)).toEqual(
      best?.blockedBy,
    )
  })
})

describe('corners', () => {
  const corner: PlacedUnit = {
    ...aBase('corner', pose(0, 0, FINAL), 1000),
    kind: 'corner-base',
  }
  const onReturn = aBase('return', pose(0, -1200, FINAL, 90), 600)
  const beside = aBase('beside', pose(1000, 0, FINAL))

  test('a neighbour before it shuts a corner unit in, so the corner comes first: geometry proves the practice', () => {
    // Its open part is shut by the return run, its other end by its neighbour.
    const shut: PlacedUnit = { ...onReturn, pose: pose(0, -1160, FINAL, 90) }
    const order = chosen([corner, shut, beside])
    expect(order.ok && order.arcs).toEqual([['corner', 'return']])
  })
  test('an L-shaped corner unit comes out along the bisector where straight out is shut', () => {
    const l: PlacedUnit = {
      ...corner,
      solid: [box(900, 560, 720), { ...box(560, 900, 720) }],
    }
    const post = block('post', { x: 0, y: -1000, width: 100, depth: 100 })
    const path = only([l], { ...room, obstacles: [post] })
    expect(path.approach).toBe('front')
    const carry = path.segments[1]
    expect(carry?.kind).toBe('move')
    if (carry?.kind === 'move') expect(carry.from.x).toBeCloseTo(-carry.from.y, 2)
  })
  test('past a leaning return: parallel to it', () => {
    // The side wall leans in over the front of the run by 5°.
    const lean = Math.tan((5 * Math.PI) / 180)
    const outline = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: -3000 },
      { x: 3000 * lean, y: -3000 },
    ]
    const unit = aBase('b', pose(560 * lean + 0.2, 0, FINAL))
    const path = only([unit], aRoom(outline, 2400))
    const carry = path.segments[1]
    if (carry?.kind !== 'move') throw new Error('it is carried')
    expect((carry.from.x - carry.to.x) / (carry.to.y - carry.from.y)).toBeCloseTo(lean, 3)
    expect(path.clearance).toBeLessThan(0.3)
  })
})

describe('an island', () => {
  const island: PlacedUnit = { ...aBase('island', pose(1000, -1500, FINAL), 1200, 900), kind: 'island' }
  test('comes from its front, and from behind when only that is free', () => {
    expect(only([island]).approach).toBe('front')
    const row = (id: string, x: number, y: number, width: number, depth: number): Obstacle =>
      block(id, { x, y, width, depth })
    const shut = [
      row('f', 500, -2750, 2200, 50),
      row('l', 500, -1500, 100, 900),
      row('r', 2600, -1500, 100, 900),
    ]
    const path = only([island], { ...room, obstacles: shut })
    expect(path.approach).toBe('back')
    // The wall behind is nothing it comes to stand against, so it counts: 1,500 less 900 and the 300 it is set down off.
    expect(path.clearance).toBe(300)
  })
  test('it stands where a unit of the run is set down: the run may come from nearer, without waiting', () => {
    const near = { ...island, pose: pose(1000, -1300, FINAL) }
    const path = only([aBase('b', pose(1200, 0, FINAL)), near])
    expect(path.blockedBy).toEqual([])
    expect(path.segments[0]).toMatchObject({ from: { y: -660 } })
  })
})

describe('between neighbours', () => {
  const run = [0, 1, 2].map((i) => aBase(`b${i}`, pose(1000 + i * 600, 0, FINAL)))
  test('touching neighbours do not block one another', () => {
    for (const [, paths] of candidatePaths(run, room).candidates) expect(paths[0]?.blockedBy).toEqual([])
  })
  test('units that are in one another where they end up are told, and do not knot the order', () => {
    const tooWide = [run[0], aBase('b9', pose(1590, 0, FINAL))] as PlacedUnit[]
    const { overlaps, candidates } = candidatePaths(tooWide, room)
    expect(overlaps).toEqual([{ unit: 'b0', with: { kind: 'unit', id: 'b9' }, by: 10 }])
    expect(candidates.get('b0')?.[0]?.blockedBy).toEqual([])
  })
})

describe('what does not fit where it stands', () => {
  test('in the wall: trapped in place, by so much', () => {
    const { trapped, overlaps, candidates } = candidatePaths([aBase('b', pose(3412, 0, FINAL))], room)
    expect(trapped).toMatchObject([
      { unit: 'b', where: 'in-place', say: { values: { thing: 'wall 2', by: 12 } } },
    ])
    expect(overlaps).toMatchObject([{ unit: 'b', with: { kind: 'wall', id: 'wall 2' }, by: 12 }])
    expect(candidates.get('b')).toEqual([])
  })
  test('let pass up to a misfit that is told all the same', () => {
    const { trapped, overlaps, candidates } = candidatePaths([aBase('b', pose(3412, 0, FINAL))], room, {
      misfit: 20,
    })
    expect(trapped).toEqual([])
    expect(overlaps).toHaveLength(1)
    expect(candidates.get('b')?.[0]?.clearance).toBe(0)
    expect(candidatePaths([aBase('b', pose(3412, 0, FINAL))], room, { misfit: 10 }).trapped).toHaveLength(1)
  })
  test('above the ceiling', () => {
    const { trapped } = candidatePaths([aTall('t', pose(0, 0, FLOOR + 450))], room)
    expect(trapped[0]?.say).toMatchObject({
      key: 'placing.no-room-in-place',
      values: { thing: 'ceiling', by: 50 },
    })
  })
  test('outside the room', () => {
    expect(candidatePaths([aBase('b', pose(4500, 0, FINAL))], room).trapped[0]?.say.key).toBe(
      'placing.outside-room',
    )
  })
})

test('a way blocked by all that block a better one is left out, and the better come first', () => {
  const islands = Array.from(
    { length: 9 },
    (_, i): PlacedUnit => ({
      ...aBase(`i${i}`, pose(1300 + (i % 3) * 700, -1250 - Math.floor(i / 3) * 600, FINAL)),
      kind: 'island',
    }),
  )
  const run = [0, 1, 2, 3].map((i) => aBase(`b${i}`, pose(1000 + i * 600, 0, FINAL)))
  const talls = [aTall('t0', pose(400, 0, FLOOR + 60)), aTall('t1', pose(3400, 0, FLOOR + 60))]
  const { candidates } = candidatePaths([...islands, ...run, ...talls], aRoom(rectangle(4000, 3300), 2400))
  let several = 0
  for (const paths of candidates.values()) {
    if (paths.length > 1) several += 1
    paths.forEach((path, i) => {
      const better = paths.slice(0, i)
      expect(better.some(({ blockedBy }) => blockedBy.every((unit) => path.blockedBy.includes(unit)))).toBe(
        false,
      )
      for (const one of better) expect(one.blockedBy.length).toBeLessThanOrEqual(path.blockedBy.length)
    })
  }
  expect(several).toBeGreaterThan(0)
})

test('shut in by fixed things: trapped, and what is in the way from each direction', () => {
  const shut = [
    block('pillar', { x: 900, y: -570, width: 800, depth: 100 }),
    block('boxing-l', { x: 890, y: 0, width: 100, depth: 500 }),
    block('boxing-r', { x: 1610, y: 0, width: 100, depth: 500 }),
  ]
  const { trapped, candidates } = candidatePaths([aBase('b', pose(1000, 0, FINAL))], {
    ...room,
    obstacles: shut,
  })
  expect(candidates.get('b')).toEqual([])
  expect(trapped).toMatchObject([
    {
      unit: 'b',
      where: 'on-the-way',
      say: { key: 'placing.trapped', values: { front: 'pillar', left: 'boxing-l', right: 'boxing-r' } },
    },
  ])
})

describe('rooms that are not closed', () => {
  const unit = aBase('b', pose(1000, 0, FINAL))
  test('only what is behind the unit, and it says so', () => {
    const { walls, say, candidates } = candidatePaths(
      [unit, aTall('t', pose(2000, 0, FLOOR + 100))],
      aRoom(null, 2400),
    )
    expect(walls).toBe('own-wall-only')
    expect(say.map(({ key }) => key)).toEqual(['placing.walls.own-wall-only'])
    expect(candidates.get('b')?.[0]?.approach).toBe('front')
    // Over the back its head must not swing through the wall behind.
    const up = candidates.get('t')?.[0]?.segments[0]
    expect(up).toMatchObject({ kind: 'stand-up', over: 'back' })
    if (up?.kind === 'stand-up') expect(-up.upright.y).toBeGreaterThanOrEqual(2000)
  })
  test('the walls whose place is known', () => {
    const walls = [
      { wall: 'a', from: { x: 0, y: 0 }, to: { x: 3000, y: 0 } },
      { wall: 'b', from: { x: 3000, y: 0 }, to: { x: 3000, y: -1200 } },
    ]
    const { say, candidates, trapped } = candidatePaths(
      [unit, aBase('in', pose(2500, 0, FINAL))],
      aRoom(null, 2400, { walls }),
    )
    expect(say.map(({ key }) => key)).toEqual(['placing.walls.known-walls'])
    expect(candidates.get('b')).toHaveLength(1)
    expect(trapped).toMatchObject([
      { unit: 'in', where: 'in-place', say: { values: { thing: 'b', by: 100 } } },
    ])
  })
})

describe('the same answer', () => {
  const { units, room: full } = aFullKitchen(30)
  test('whatever order the units are given in', () => {
    const print = (given: readonly PlacedUnit[]): string =>
      JSON.stringify([...candidatePaths(given, full).candidates])
    expect(print([...units].reverse())).toBe(print(units))
  })
  test('in a room turned on the map', () => {
    const turn = 37
    const a = (turn * Math.PI) / 180
    const spin = ({ x, y }: PlanPoint): PlanPoint => ({
      x: x * Math.cos(a) - y * Math.sin(a),
      y: x * Math.sin(a) + y * Math.cos(a),
    })
    const turned = units.map((unit) => ({
      ...unit,
      pose: { ...unit.pose, ...spin(unit.pose), yaw: unit.pose.yaw + turn },
    }))
    const before = candidatePaths(units, full).candidates
    const after = candidatePaths(turned, { ...full, outline: (full.outline ?? []).map(spin) }).candidates
    for (const [unit, paths] of before) {
      const others = after.get(unit) ?? []
      expect(others.map((path) => [path.approach, path.blockedBy])).toEqual(
        paths.map((path) => [path.approach, path.blockedBy]),
      )
      paths.forEach((path, i) => {
        expect(others[i]?.clearance).toBeCloseTo(path.clearance, 1)
      })
    }
  })
})

test('every path found is refused by nothing, ends in its place, and moves either level or upright', () => {
  const { units, room: full } = aFullKitchen(30)
  const { candidates } = candidatePaths(units, full)
  for (const unit of units) {
    for (const path of candidates.get(unit.unit) ?? []) {
      expect(pathRefusedBy(path, unit, full)).toBeNull()
      const last = path.segments.at(-1)
      expect(last?.kind === 'move' && last.to).toEqual(unit.pose)
      for (const segment of path.segments) {
        if (segment.kind !== 'move') continue
        const level = segment.from.z === segment.to.z
        const upright = segment.from.x === segment.to.x && segment.from.y === segment.to.y
        expect(level !== upright).toBe(true)
      }
      expect(path.clearance).toBeGreaterThanOrEqual(0)
    }
  }
})

test('everything it says has words', () => {
  const keys = ['placing.trapped', 'placing.trapped-island', 'placing.not-stood-up', 'placing.outside-room']
  for (const key of keys) expect(placingWords[key]).toContain('{unit}')
})

test.each([
  [30, 6],
  [100, 60],
])('%d units in less than %d ms once warm', (count, limit) => {
  const { units, room: full } = aFullKitchen(count)
  const ids = units.map(({ unit }) => unit)
  const times = Array.from({ length: 40 }, () => {
    const start = performance.now()
    const answer = choosePaths(ids, candidatePaths(units, full).candidates, [])
    expect(answer.ok).toBe(true)
    return performance.now() - start
  })
  // The least of the warm runs: what else the machine is doing is not measured here.
  expect(Math.min(...times.slice(10))).toBeLessThan(limit)
})
