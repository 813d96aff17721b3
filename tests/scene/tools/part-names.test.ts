/** What a tool is put to is in the picture under the name its act gives it. */
import { expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { stagingAt } from '../../../src/core/staging'
import { nothingLeftOut } from '../../../src/core/views/kept'
import { roomShape } from '../../../src/core/views/room-shape'
import { partsIn } from '../../../src/scene/sketch'
import { sketchScene } from '../../../src/scene/sketch-scene'
import { planOf } from '../../support/kitchens'

test.each(['one-wall', 'l-shape', 'galley', 'north-american'] as const)('%s', (scene) => {
  const plan = planOf(scene)
  const room = roomShape(plan)
  const partsAt = (index: number, t: number) => {
    const { still, moving } = sketchScene(plan, standingAt(plan, index, t), room, nothingLeftOut)
    return partsIn(moving === null ? [still] : [still, moving.sketch])
  }
  const isIn = (drawn: readonly string[], on: string) => drawn.some((p) => p === on || p.startsWith(`${on}.`))
  const missing = plan.operations.flatMap(({ kind }, index) => {
    const before = partsAt(index, 0)
    const acts = (stagingAt(plan, index)?.acts ?? []).filter((a) => a.contact !== null)
    const notYet = acts.filter(({ on }) => !isIn(before, on))
    const after = notYet.length === 0 ? [] : partsAt(index, 1)
    return notYet.filter(({ on }) => !isIn(after, on)).map(({ tool, on }) => `${kind}: ${tool} on ${on}`)
  })
  expect([...new Set(missing)]).toEqual([])
})
