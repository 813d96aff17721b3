/** What is kept while another place is shown is not drawn anew there, and is up to date when it is shown again. */
import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { expect, test } from 'vitest'
import { StillWhileHidden } from '../../src/app/StillWhileHidden'
import { makeActions } from '../../src/state/actions'
import { makeStore } from '../../src/state/store'
import { AppContext, useApp } from '../../src/ui/app-context'
import { directWorker } from '../support/direct-worker'

const drawn: string[] = []

function Sheet() {
  const sheet = useApp((s) => s.sheet ?? 'none')
  drawn.push(sheet)
  return <p>{sheet}</p>
}

test('hidden it stands still; shown again it is as things are', async () => {
  const store = makeStore()
  const handle = { store, actions: makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z') }
  const element = document.createElement('div')
  const root = createRoot(element)
  const inside = <Sheet />
  const show = (isShown: boolean) =>
    act(async () =>
      root.render(
        <AppContext.Provider value={handle}>
          <StillWhileHidden isShown={isShown}>{inside}</StillWhileHidden>
        </AppContext.Provider>,
      ),
    )
  const say = (sheet: string) => act(async () => store.setState({ sheet }))
  await show(true)
  await say('one')
  expect(element.textContent).toBe('one')
  await show(false)
  const before = drawn.length
  await say('two')
  await say('three')
  expect([element.textContent, drawn.length]).toEqual(['one', before])
  await show(true)
  expect(element.textContent).toBe('three')
  await say('four')
  expect(element.textContent).toBe('four')
  await act(async () => root.unmount())
})
