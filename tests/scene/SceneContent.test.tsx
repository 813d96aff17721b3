// @vitest-environment happy-dom
import { create } from '@react-three/test-renderer'
import { createRef } from 'react'
import { type BufferGeometry, type Group, Matrix4, type Mesh, type Object3D, Vector3 } from 'three'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { standingAt } from '../../src/core/plan/standing-at'
import { extentOf, roomPoint } from '../../src/core/plan/travel-path'
import type { Plan } from '../../src/core/plan/types'
import { stagingAt } from '../../src/core/staging'
import { type Act, type Moment, momentAt, type Staging } from '../../src/core/staging/staging'
import { makeViews } from '../../src/core/views/views'
import { wayAt } from '../../src/scene/run'
import { SceneContent, type Showing } from '../../src/scene/SceneContent'
import { nothingFound } from '../../src/scene/sketch-scene'
import '../support/dom-setup'
import { sampleIndex, samplePlan } from '../support/sample-plan'

/** @react-three/fiber 9 makes a THREE.Clock at every start, and three says each time that it is old. */
const KNOWN = /THREE\.Clock/
const warnings: string[] = []
beforeAll(() => {
  vi.spyOn(console, 'warn').mockImplementation((...args) => warnings.push(args.join(' ')))
})
afterAll(() => {
  vi.restoreAllMocks()
  expect(warnings.filter((w) => !KNOWN.test(w))).toEqual([])
})

const MOST_DRAW_CALLS = 60
const views = makeViews(samplePlan, 1.6)
const noCover: [] = []

function scene(
  id: string,
  t: number,
  plan: Plan = samplePlan,
  onParts?: (parts: readonly string[]) => void,
  moment: Moment | null = null,
  showing: Showing | null = null,
) {
  const index = plan.operations.findIndex((o) => o.id === id)
  return (
    <SceneContent
      plan={plan}
      index={index < 0 ? plan.operations.length : index}
      t={t}
      moment={moment}
      showing={showing}
      room={views.room}
      view={views.at(index < 0 ? plan.operations.length : index)}
      labels={[]}
      found={nothingFound}
      flags={[]}
      layer={createRef<HTMLDivElement>()}
      covered={noCover}
      isStill
      idPicture={null}
      onParts={onParts}
    />
  )
}

/** Everything that costs a draw call. */
function drawn(root: Object3D): Mesh<BufferGeometry>[] {
  const found: Mesh<BufferGeometry>[] = []
  root.traverseVisible((o) => {
    if ('isMesh' in o || 'isLine' in o || 'isPoints' in o || 'isSprite' in o)
      found.push(o as Mesh<BufferGeometry>)
  })
  return found
}

async function partsOf(id: string, t = 0, plan: Plan = samplePlan): Promise<readonly string[]> {
  let parts: readonly string[] = []
  const renderer = await create(
    scene(id, t, plan, (p) => {
      parts = p
    }),
  )
  await renderer.unmount()
  return parts
}

describe('draw calls', () => {
  test('no operation of the sample takes more than the budget, and the finished room neither', async () => {
    const counts: number[] = []
    for (const id of [...samplePlan.operations.map((o) => o.id), 'end']) {
      const renderer = await create(scene(id, 0.5))
      counts.push(drawn(renderer.scene.instance).length)
      await renderer.unmount()
    }
    expect(Math.min(...counts)).toBeGreaterThan(0)
    expect(Math.max(...counts)).toBeLessThanOrEqual(MOST_DRAW_CALLS)
  })

  test('ten times the units take no more draw calls', async () => {
    const many = Array.from({ length: 10 }, (_, k) =>
      samplePlan.units.map((u) => ({ ...u, unit: `${u.unit}-${k}` })),
    ).flat()
    const last = samplePlan.operations[samplePlan.operations.length - 1]
    if (last === undefined) throw new Error('the sample is empty')
    const secured = many.map((u) => ({ unit: u.unit, from: 'carried' as const, to: 'secured' as const }))
    const plan = { ...samplePlan, units: many, operations: [{ ...last, changes: secured }, last] }
    const renderer = await create(scene('none', 0, plan))
    expect(drawn(renderer.scene.instance).length).toBeLessThanOrEqual(12)
    await renderer.unmount()
  })
})

describe('parts', () => {
  test('an operation draws what stands, what is struck and what is in hand, and nothing to come', async () => {
    const parts = await partsOf('hang:wall-2')
    const present = [
      'floor',
      'wall:long',
      'wall:window',
      'unit:tall-1',
      'unit:wall-1',
      'unit:wall-2',
      'place:wall-2',
      'rail:rail-1',
      'line:wall-top.long',
      'line:line.long',
      'mark:edge-1.long',
      'stud:stud-4',
      'nogging:nogging-1',
      'band:socket-1.vertical',
      'band:socket-1.horizontal',
      'accessory:socket-1',
      'opening:window-1',
      'hole:rail.rail-1.stud-5',
      'keep-clear:0',
      'dimension:wall-2',
      'leg:tall-1.foot-1',
    ]
    expect(present.filter((p) => !parts.includes(p))).toEqual([])
    expect(parts.filter((p) => p.startsWith('unit:wall-3') || p.startsWith('unit:base'))).toEqual([])
    expect(parts.filter((p) => p.startsWith('level:') || p.startsWith('part:'))).toEqual([])
  })

  test.each([
    ['level:wall-2', 'level:wall-2'],
    ['level:tall-1', 'level:tall-1'],
    ['second-fix:wall-2', 'hole:second.wall-2.stud-4'],
    ['mark-holes:long', 'hole:rail.rail-1.stud-8'],
    ['worktop:worktop-1', 'part:worktop-1'],
    ['hang-fronts:base-2', 'part:door-1.base-2'],
    ['place:base-2', 'place:base-2'],
    ['end', 'unit:base-3'],
  ])('%s shows %s', async (id, part) => {
    expect(await partsOf(id)).toContain(part)
  })

  test('a unit without a known place is not drawn, before or after', async () => {
    const plan = {
      ...samplePlan,
      units: samplePlan.units.map((u) => (u.unit === 'wall-2' ? { ...u, pose: null } : u)),
    }
    for (const id of ['hang:wall-2', 'end']) expect(await partsOf(id, 1, plan)).not.toContain('unit:wall-2')
  })
})

describe('the unit on its way', () => {
  test.each([
    ['hang:wall-2', 0],
    ['hang:wall-2', 0.37],
    ['hang:wall-2', 1],
    ['stand-up:tall-1', 0],
    ['stand-up:tall-1', 0.6],
    ['stand-up:tall-1', 1],
    ['place:base-4', 0],
    ['place:base-4', 1],
  ])('%s at %s stands where the plan says, in metres with y up', async (id, t) => {
    const standing = standingAt(samplePlan, sampleIndex(id), t)
    const moving = standing.units.find((u) => u.isInHand)
    if (moving === undefined) throw new Error('nothing is in hand')
    const renderer = await create(scene(id, t))
    const group = renderer.scene.instance.getObjectByName(`unit:${moving.unit.unit}`) as Group
    renderer.scene.instance.updateMatrixWorld(true)
    const extent = extentOf(moving.unit.solid)
    for (const [x, y, z] of [
      [0, 0, 0],
      [extent.width, 0, 0],
      [0, extent.depth, 0],
      [extent.width, extent.depth, extent.height],
    ] as const) {
      // In the group's own frame y runs behind the back, so that it is right-handed.
      const shown = group.localToWorld(new Vector3(x, -y, z))
      const room = roomPoint(moving, extent, { x, y, z })
      expect(shown.distanceTo(new Vector3(room.x / 1000, room.z / 1000, -room.y / 1000))).toBeLessThan(1e-6)
    }
    expect(new Matrix4().copy(group.matrixWorld).determinant()).toBeGreaterThan(0)
    await renderer.unmount()
  })

  test('t moves the unit and builds nothing anew', async () => {
    const renderer = await create(scene('hang:wall-2', 0.2))
    const before = drawn(renderer.scene.instance).map((o) => o.geometry.uuid)
    const [group] = [renderer.scene.instance.getObjectByName('unit:wall-2')]
    const was = group?.matrix.clone()
    await renderer.update(scene('hang:wall-2', 0.5))
    expect(drawn(renderer.scene.instance).map((o) => o.geometry.uuid)).toEqual(before)
    expect(renderer.scene.instance.getObjectByName('unit:wall-2')?.matrix.equals(was as Matrix4)).toBe(false)
    await renderer.unmount()
  })

  test('drawings that are replaced give their geometry back', async () => {
    const renderer = await create(scene('hang:wall-2', 0))
    const given: string[] = []
    for (const o of drawn(renderer.scene.instance))
      o.geometry.addEventListener('dispose', () => given.push(o.uuid))
    const count = drawn(renderer.scene.instance).length
    await renderer.update(scene('level:wall-2', 0))
    expect(given).toHaveLength(count)
    await renderer.unmount()
  })
})

describe('tools', () => {
  const staged = samplePlan.operations.map((operation, i) => ({
    operation,
    staging: stagingAt(samplePlan, i) as Staging,
  }))
  /** The first operation of each kind that is shown with a tool of its own. */
  const firsts = [...new Map(staged.map((x) => [x.operation.kind, x] as const).reverse()).values()].filter(
    ({ staging }) => staging.acts.some(isDrawn),
  )

  /** Drawn beside what the room holds: a level on its unit and blocks under an edge are drawn with the room. */
  function isDrawn(a: Act): boolean {
    return a.contact !== null && !(a.motion.kind === 'rest' && (/^level:/.test(a.on) || a.tool === 'blocks'))
  }

  test.each(firsts.map((x) => [x.operation.kind, x] as const))(
    'of %s are in the scene, each while it is used, and not after',
    async (_, { operation, staging }) => {
      for (const [i, act] of staging.acts.slice(0, 3).entries()) {
        if (!isDrawn(act)) continue
        const moment: Moment = { carried: 0, act, progress: 0.5 }
        const renderer = await create(scene(operation.id, 0, samplePlan, undefined, moment))
        const name = `tool:${act.tool}@${act.on}`
        const groups: Object3D[] = []
        renderer.scene.instance.traverse((o) => {
          if (o.name.startsWith(name)) groups.push(o)
        })
        expect(groups.length, `${operation.id}, act ${i}`).toBeGreaterThan(0)
        expect(groups.every((g) => drawn(g as Group).length > 0)).toBe(true)
        await renderer.unmount()
      }
      const after = await create(scene(operation.id, 1, samplePlan, undefined, momentAt(staging, 1)))
      const left: string[] = []
      after.scene.instance.traverse((o) => {
        if (o.name.startsWith('tool:')) left.push(o.name)
      })
      expect(left).toEqual([])
      await after.unmount()
    },
  )

  test('hands go with the unit they have hold of', async () => {
    const { operation, staging } = staged.find((x) => x.operation.kind === 'hang') as (typeof staged)[number]
    const at = async (carried: number) => {
      const moment: Moment = { carried, act: staging.acts[0] as Act, progress: carried }
      const renderer = await create(scene(operation.id, carried, samplePlan, undefined, moment))
      const [hand, unit] = ['tool:hands', 'unit:'].map((start) => {
        let found: Matrix4 | null = null
        renderer.scene.instance.traverse((o) => {
          if (found === null && o.name.startsWith(start)) found = o.matrix.clone()
        })
        return new Vector3().setFromMatrixPosition(found ?? new Matrix4())
      }) as [Vector3, Vector3]
      await renderer.unmount()
      return hand.sub(unit)
    }
    const [start, middle, end] = [await at(0), await at(0.5), await at(0.99)]
    expect(start.length()).toBeGreaterThan(100)
    expect(middle.distanceTo(start)).toBeLessThan(0.01)
    expect(end.distanceTo(start)).toBeLessThan(0.01)
  })
})

describe('shown being done', () => {
  const SECONDS = 4
  const matrices = (root: Object3D) => {
    const found = new Map<string, Matrix4>()
    root.traverse((o) => {
      if (/^(unit|tool):/.test(o.name)) found.set(o.name, o.matrix.clone())
    })
    return found
  }
  const shownAs = (id: string) => {
    const staging = stagingAt(samplePlan, sampleIndex(id)) as Staging
    const still = (t: number) => {
      const moment = momentAt(staging, t)
      return { moment, way: wayAt(moment, t) }
    }
    return { staging, still }
  }

  test.each(['hang:wall-2', 'place:base-4', 'stand-up:tall-1', 'drill-rail:rail-1'])(
    '%s goes on by the clock just as it stands still at each moment, and nothing is made anew for it',
    async (id) => {
      const { staging, still } = shownAs(id)
      const clock = vi.spyOn(performance, 'now').mockReturnValue(1000)
      const told: number[] = []
      let ends = 0
      const showing: Showing = {
        run: { seconds: SECONDS },
        staging,
        onMoment: (_, t) => told.push(t),
        onEnd: () => {
          ends += 1
        },
      }
      const first = staging.acts[0] as Act
      const started = still(0)
      const renderer = await create(scene(id, started.way, samplePlan, undefined, started.moment, showing))
      const geometries = () => drawn(renderer.scene.instance).map((o) => o.geometry.uuid)
      const before = geometries()
      const was = matrices(renderer.scene.instance)
      for (const t of [0, 0.02, 0.1, 0.13]) {
        clock.mockReturnValue(1000 + 1000 * SECONDS * t)
        await renderer.advanceFrames(1, 1 / 60)
        const { moment, way } = still(t)
        expect(moment.act, 'the first movement is still under way').toBe(first)
        const there = await create(scene(id, way, samplePlan, undefined, moment))
        const wanted = matrices(there.scene.instance)
        expect(wanted.size).toBeGreaterThan(0)
        for (const [name, matrix] of matrices(renderer.scene.instance))
          for (const [k, n] of matrix.elements.entries())
            expect(n, `${name} at ${t}`).toBeCloseTo(wanted.get(name)?.elements[k] ?? Number.NaN, 6)
        await there.unmount()
      }
      expect(geometries()).toEqual(before)
      expect(
        [...matrices(renderer.scene.instance)].some(([name, m]) => !m.equals(was.get(name) as Matrix4)),
      ).toBe(true)
      expect(ends).toBe(0)
      clock.mockReturnValue(1000 + 1000 * SECONDS)
      await renderer.advanceFrames(1, 1 / 60)
      expect(ends).toBe(1)
      expect(told.every((t) => t > 0 && t < 1)).toBe(true)
      await renderer.unmount()
      clock.mockRestore()
    },
  )

  test('it is told where another movement begins, and where the unit arrives', async () => {
    const { staging, still } = shownAs('hang:wall-2')
    const clock = vi.spyOn(performance, 'now').mockReturnValue(0)
    const told: number[] = []
    const showing: Showing = {
      run: { seconds: SECONDS },
      staging,
      onMoment: (_, t) => told.push(t),
      onEnd: () => {},
    }
    const started = still(0)
    const renderer = await create(
      scene('hang:wall-2', started.way, samplePlan, undefined, started.moment, showing),
    )
    const steps = 400
    for (let i = 0; i < steps; i += 1) {
      clock.mockReturnValue((1000 * SECONDS * i) / steps)
      await renderer.advanceFrames(1, 1 / 60)
    }
    const acts = Array.from({ length: steps }, (_, i) => momentAt(staging, i / steps).act)
    const changes = acts.flatMap((act, i) => (i > 0 && act !== acts[i - 1] ? [i / steps] : []))
    expect(changes.filter((t) => !told.includes(t))).toEqual([])
    // Not in each frame: now and then for the texts, and for what changes.
    expect(told.length).toBeLessThan(steps / 12)
    await renderer.unmount()
    clock.mockRestore()
  })
})
