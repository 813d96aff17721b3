import { act, Component, type ReactNode } from 'react'
import { createRoot } from 'react-dom/client'
import { expect, test, vi } from 'vitest'
import { SceneCanvas } from '../../src/scene/SceneCanvas'

class Catches extends Component<{ children: ReactNode }> {
  override state = { message: null }
  static getDerivedStateFromError = (error: unknown) => ({ message: String(error) })
  override render() {
    return this.state.message ?? this.props.children
  }
}

test('where no picture can be begun, the page is told and can say so', async () => {
  const said = vi.spyOn(console, 'error').mockImplementation(() => {})
  const place = document.createElement('div')
  const root = createRoot(place)
  await act(async () => {
    root.render(
      <Catches>
        <SceneCanvas size={{ width: 300, height: 200 }} isIdPicture={false}>
          {null}
        </SceneCanvas>
      </Catches>,
    )
  })
  // There is no graphics context here.
  expect(place.textContent).toMatch(/WebGL/)
  expect(place.querySelector('canvas')).toBeNull()
  await act(async () => root.unmount())
  said.mockRestore()
})
