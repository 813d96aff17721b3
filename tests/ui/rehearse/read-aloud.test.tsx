import { act } from 'react'
import { afterEach, beforeAll, expect, test, vi } from 'vitest'
import { StepSlip } from '../../../src/ui/rehearse/StepSlip'
import { planOf } from '../../support/kitchens'
import { type Shown, show } from '../../support/render'

const plan = planOf('l-shape')

beforeAll(async () => {
  await Promise.all([
    import('../../../src/ui/rehearse/Said'),
    import('../../../src/ui/rehearse/aloud/ReadAloud'),
  ])
})

interface Saying {
  readonly text: string
  voice: { readonly name: string } | null
  onend: (() => void) | null
}

/** A speech that says nothing: a sentence ends when the test says so. */
function speechWith(voices: readonly object[]) {
  const said: Saying[] = []
  const cancel = vi.fn()
  vi.stubGlobal('speechSynthesis', { speak: (u: Saying) => said.push(u), cancel, getVoices: () => voices })
  vi.stubGlobal(
    'SpeechSynthesisUtterance',
    class {
      voice = null
      onend = null
      readonly text: string
      constructor(text: string) {
        this.text = text
      }
    },
  )
  const endOne = () => act(async () => said.at(-1)?.onend?.())
  return { said, cancel, endOne }
}
const online = { name: 'far', lang: 'en-GB', localService: false, default: true }
const here = { name: 'near', lang: 'en-GB', localService: true, default: false }
const foreign = { name: 'other', lang: 'fr-FR', localService: true, default: false }

afterEach(() => vi.unstubAllGlobals())

const slipOf = async (id: string): Promise<Shown> => {
  const index = plan.operations.findIndex((o) => o.id === id)
  const operation = plan.operations[index]
  if (operation === undefined) throw new Error(`no operation ${id}`)
  const slip = (
    <StepSlip plan={plan} operation={operation} index={index} ticked={new Set()} onTick={() => {}} />
  )
  const shown = await show(slip, { plan, at: id })
  await shown.settle()
  return shown
}

test('without a voice on the device nothing is read, and why is said', async () => {
  const { said } = speechWith([online, foreign])
  const shown = await slipOf('lock:wall-1')
  await shown.click('Read aloud')
  expect(said).toEqual([])
  expect(shown.text()).toContain('This device has no English voice of its own.')
  await shown.close()
})

test('a step is read sentence by sentence with the voice of the device, each marked while it is read', async () => {
  const { said, endOne, cancel } = speechWith([online, foreign, here])
  const shown = await slipOf('lock:wall-1')
  const marked = () =>
    [...shown.element.querySelectorAll('[data-read]')].map((e) => e.textContent?.replace('\u00a0', ' '))
  await shown.click('Read aloud')
  expect(said.map((u) => [u.text, u.voice?.name])).toEqual([['Lock wall unit 1 on.', 'near']])
  expect(marked()).toEqual(['Lock wall unit 1 on'])
  await endOne()
  expect(said.at(-1)?.text).toBe('Nobody stands under it.')
  await endOne()
  await endOne()
  expect(marked()).toEqual([
    'Turn the draw-in screws until it bears on the packing, then check the level again.',
  ])
  expect(said.at(-1)?.text).toBe(marked()[0])
  await shown.click('Stop reading')
  expect(cancel).toHaveBeenCalledTimes(1)
  expect(marked()).toEqual([])
  await shown.click('Read it again')
  expect(said.at(-1)?.text).toBe('Lock wall unit 1 on.')
  await shown.close()
  expect(cancel).toHaveBeenCalledTimes(2)
})

test('it goes through to the checks and then is quiet', async () => {
  const { said, endOne } = speechWith([here])
  const shown = await slipOf('level:wall-1')
  await shown.click('Read aloud')
  for (let i = 0; i < 60 && shown.text().includes('Stop reading'); i++) await endOne()
  const all = said.map((u) => u.text).join(' ')
  expect(all).toContain('Bring its underside to 392 millimetres above the line.')
  expect(all).toMatch(
    /How far is the front of wall unit 1 out of plumb over its height\? At most 1 millimetre\./,
  )
  expect(shown.text()).toContain('Read it again')
  await shown.close()
})
