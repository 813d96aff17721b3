import { describe, expect, test } from 'vitest'
import { makeActions } from '../../src/state/actions'
import { makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneFile, sceneText } from '../support/kitchens'

const settled = () => new Promise((resolve) => setTimeout(resolve, 0))

async function openMillLane() {
  const store = makeStore()
  const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
  actions.open(sceneText('l-shape'))
  await settled()
  return { store, actions }
}

describe('the documents', () => {
  test('a kitchen opened as text is kept as a value and has its plan', async () => {
    const { store } = await openMillLane()
    expect(store.getState().kitchen).toEqual(sceneFile('l-shape'))
    expect(store.getState().plan?.name).toBe('Mill Lane')
  })

  test('a bad file leaves the open kitchen and its log alone, and says where and how to mend', async () => {
    const { store, actions } = await openMillLane()
    const { kitchen, plan } = store.getState()
    actions.open(
      '{"format": "dryrun-kitchen", "version": 1, "name": "x", "walls": [{"id": "a", "colour": 3}]}',
    )
    await settled()
    const after = store.getState()
    expect(after.problems[0]).toMatchObject({ path: 'walls "a"', kind: 'unknown-key' })
    expect(after.problems[0]?.mend).not.toBe('')
    expect(after.kitchen).toBe(kitchen)
    expect(after.plan).toBe(plan)
  })

  test('a height written down on the day renews the plan; calling it wrong brings the first one back', async () => {
    const { store, actions } = await openMillLane()
    const height = () => store.getState().plan?.units.find((u) => u.unit === 'base-2')?.top
    const planned = height()
    actions.log({ kind: 'set', unit: 'base-2', edge: 'top', down: { value: 134, pm: 1 } })
    await settled()
    expect(height()).toMatchObject({ value: -134 })
    expect(store.getState().plan?.changes.length).toBeGreaterThan(0)
    actions.log({ kind: 'correct', entry: 'e1' })
    await settled()
    expect(height()).toMatchObject({ value: (planned as { value: number }).value })
    expect(store.getState().log.entries.map((e) => e.kind)).toEqual(['set', 'correct'])
  })

  test('an entry the planner refuses is not in the log', async () => {
    const { store, actions } = await openMillLane()
    actions.log({ kind: 'set', unit: 'base-2', edge: 'sideways' })
    await settled()
    expect(store.getState().problems.length).toBeGreaterThan(0)
    expect(store.getState().log.entries).toEqual([])
  })
})

describe('a day log opened from a file', () => {
  test('takes the place of the log, beside the same kitchen', async () => {
    const { store, actions } = await openMillLane()
    const entries = [{ id: 'e1', kind: 'done', operation: 'check-delivery:room' }]
    actions.openLog(JSON.stringify({ format: 'dryrun-daylog', version: 1, kitchen: 'Mill Lane', entries }))
    await settled()
    expect(store.getState().log.entries).toEqual(entries)
    expect(store.getState().plan?.operations.find((o) => o.id === 'check-delivery:room')?.done).toBe(true)
  })

  test.each([
    ['text that is no JSON', '{', 'not-json'],
    ['a file of another kind', '{"format": "dryrun-kitchen"}', 'not-this-format'],
    ['nothing at all', 'null', 'not-this-format'],
  ])('%s is refused', async (_, text, kind) => {
    const { store, actions } = await openMillLane()
    actions.openLog(text)
    expect(store.getState().problems).toMatchObject([{ kind }])
    expect(store.getState().log.entries).toEqual([])
  })
})
