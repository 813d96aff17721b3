import { act, createRef } from 'react'
import { createRoot } from 'react-dom/client'
import { expect, test } from 'vitest'
import { letteredFindings } from '../../src/core/plan/findings-at'
import { standingAt } from '../../src/core/plan/standing-at'
import { nothingLeftOut } from '../../src/core/views/kept'
import { roomShape } from '../../src/core/views/room-shape'
import { PictureKey } from '../../src/scene/PictureKey'
import { partsIn } from '../../src/scene/sketch'
import { sketchScene } from '../../src/scene/sketch-scene'
import { planOf } from '../support/kitchens'

const plan = planOf('l-shape')
const room = roomShape(plan)

async function keyOf(id: string, isOpenFirst = false) {
  const standing = standingAt(
    plan,
    plan.operations.findIndex((o) => o.id === id),
    0,
  )
  const found = { lettered: letteredFindings(plan, standing.operation, null), open: null }
  const { still, moving } = sketchScene(plan, standing, room, nothingLeftOut, false, found)
  const parts = partsIn(moving === null ? [still] : [still, moving.sketch])
  const place = document.body.appendChild(document.createElement('div'))
  const root = createRoot(place)
  await act(async () =>
    root.render(<PictureKey parts={parts} isOpenFirst={isOpenFirst} box={createRef<HTMLDivElement>()} />),
  )
  return {
    entries: () => [...place.querySelectorAll('li')].map((li) => li.textContent),
    press: () => act(async () => place.querySelector('button')?.click()),
    close: async () => {
      await act(async () => root.unmount())
      place.remove()
    },
  }
}

test('it is shut until it is asked for, and names only what the picture holds', async () => {
  const key = await keyOf('mark-holes:a')
  expect(key.entries()).toEqual([])
  await key.press()
  expect(key.entries()).toEqual([
    'a line struck on the wall',
    'a hole, marked or drilled',
    'found here: press its letter',
    'timber in the wall',
    'where a cable or pipe may run',
    'socket, switch or outlet',
  ])
  await key.press()
  expect(key.entries()).toEqual([])
  await key.close()
})

test('over the bare room it is open, and says what the blue outlines are', async () => {
  const key = await keyOf('check-delivery:room', true)
  expect(key.entries()).toContain('where a unit goes')
  expect(key.entries()).not.toContain('a hole, marked or drilled')
  await key.press()
  expect(key.entries()).toEqual([])
  await key.close()
})
