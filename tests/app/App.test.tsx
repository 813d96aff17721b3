import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { expect, test } from 'vitest'
import { App } from '../../src/app/App'

test('the app shows its name', async () => {
  const place = document.body.appendChild(document.createElement('div'))
  const root = createRoot(place)
  await act(async () => root.render(<App />))

  expect(place.textContent).toContain('Dry Run')
  await act(async () => root.unmount())
})
