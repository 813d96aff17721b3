import { expect, test } from 'vitest'
import { masonryBacking, studBacking } from '../../../src/core/fixings/base-material'
import { exact, type Json, kitchenOf, plain, wallFile } from '../../support/fixed-wall'

type Layer = readonly [material: string, thickness: number | null]
const layers = (...list: readonly Layer[]) =>
  list.map(([material, thickness], i) => ({
    id: `l${i}`,
    material,
    thickness: thickness === null ? null : exact(thickness),
  }))
const wallOf = (wall: Json) => {
  const found = kitchenOf(wallFile({ wall: { id: 'a', length: 3000, ...wall } })).walls[0]
  if (found === undefined) throw new Error('no wall')
  return found
}

test.each([
  ['masonry', layers(['tile', 8], ['plaster', 12], ['brick', 100]), 'brick', 20],
  ['dot-and-dab', layers(['plasterboard', 12.5], ['dabs', 15], ['dense-block', 100]), 'dense-block', 27.5],
  [
    'insulated-lining',
    layers(['plasterboard', 12.5], ['insulation', 60], ['aircrete', 100]),
    'aircrete',
    72.5,
  ],
  ['old-brick', layers(['lime-plaster', 30]), 'old-brick', 30],
  ['concrete', layers(['concrete', 150]), 'concrete', 0],
] as const)('%s: what holds, and what lies before it', (construction, its, material, inFront) => {
  const backing = masonryBacking(wallOf({ construction, layers: its }))
  expect([backing.material, plain(backing.inFront)]).toEqual([material, inFront])
})

test('only board on dabs asks for a stand-off fixing', () => {
  const its = layers(['plasterboard', 12.5], ['dabs', 15], ['dense-block', 100])
  expect(masonryBacking(wallOf({ construction: 'dot-and-dab', layers: its })).needsStandOff).toBe(true)
  expect(masonryBacking(wallOf({ construction: 'masonry', layers: its })).needsStandOff).toBe(false)
})

test('finishes still to come are in front too', () => {
  const wall = wallOf({
    construction: 'masonry',
    layers: layers(['plaster', 12], ['brick', 100]),
    layersToCome: [{ id: 'tile', material: 'tile', thickness: exact(10) }],
  })
  expect(plain(masonryBacking(wall).inFront)).toBe(22)
})

test('masonry whose layers name no masonry is not guessed at', () => {
  const backing = masonryBacking(wallOf({ construction: 'masonry', layers: layers(['plaster', 12]) }))
  expect([backing.material, plain(backing.inFront)]).toEqual([null, 'lacks walls.a.layers'])
})

test('a layer without its thickness leaves what lies in front unknown', () => {
  const wall = wallOf({ construction: 'masonry', layers: layers(['plaster', null], ['brick', 100]) })
  expect(plain(masonryBacking(wall).inFront)).toBe('lacks walls.a.layers.l0.thickness')
})

test('a stud stands where the cavity begins', () => {
  const of = (...list: readonly Layer[]) =>
    plain(
      studBacking(wallOf({ construction: 'timber-stud', layers: layers(...list) }), 'timber-stud').inFront,
    )
  expect(of(['plaster-skim', 3], ['plasterboard', 12.5], ['timber-stud', 89], ['plasterboard', 12.5])).toBe(
    15.5,
  )
  expect(of(['plasterboard', 12.5], ['plasterboard', 12.5], ['void', 70])).toBe(25)
  expect(of(['lime-plaster', 15], ['lath', 8], ['timber-stud', 100])).toBe(23)
  expect(of()).toBe('lacks walls.a.layers')
})

test('a layer that nobody has said the make of may be what holds: nothing behind it is taken for it', () => {
  const unsaid = { id: 'l1', thickness: exact(12) }
  const masonry = (...list: readonly Json[]) =>
    masonryBacking(wallOf({ construction: 'masonry', layers: list }))
  const [tile, , brick] = layers(['tile', 8], ['plaster', 12], ['brick', 100]) as readonly Json[]
  const before = masonry(tile as Json, unsaid, brick as Json)
  expect([before.material, before.accepts, plain(before.inFront)]).toEqual([
    null,
    [],
    'lacks walls.a.layers.l1.material',
  ])
  const behind = masonry(tile as Json, brick as Json, unsaid)
  expect([behind.material, plain(behind.inFront)]).toEqual(['brick', 8])
  const stud = studBacking(
    wallOf({ construction: 'timber-stud', layers: [tile, unsaid] as Json[] }),
    'timber-stud',
  )
  expect(plain(stud.inFront)).toBe('lacks walls.a.layers.l1.material')
})
