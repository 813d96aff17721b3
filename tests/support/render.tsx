import { act, type ReactNode } from 'react'
import { createRoot } from 'react-dom/client'
import { type AppActions, makeActions } from '../../src/state/actions'
import type { PlanWorker } from '../../src/state/planner'
import { type AppState, type AppStore, makeStore } from '../../src/state/store'
import { AppContext } from '../../src/ui/app-context'
import { directWorker } from './direct-worker'

export interface Shown {
  readonly element: HTMLElement
  readonly store: AppStore
  readonly actions: AppActions
  readonly text: () => string
  /** The control with this name: text, label or aria-label. */
  readonly button: (name: string | RegExp) => HTMLElement
  readonly click: (name: string | RegExp) => Promise<void>
  readonly type: (label: string, value: string) => Promise<void>
  /** Lets everything that is under way come to its end. */
  readonly settle: () => Promise<void>
  readonly close: () => Promise<void>
}

/** Shows a part of the screens over a real store, with the real planner on the same thread, or with the one given. */
export async function show(
  node: ReactNode,
  state: Partial<AppState> = {},
  start: () => PlanWorker = directWorker,
): Promise<Shown> {
  const store = makeStore(state)
  const actions = makeActions(store, start, () => '2026-11-25T10:20:00.000Z')
  const element = document.body.appendChild(document.createElement('div'))
  const root = createRoot(element)
  const handle = { store, actions }
  await act(async () => root.render(<AppContext.Provider value={handle}>{node}</AppContext.Provider>))
  const named = (name: string | RegExp, selector: string): HTMLElement => {
    const found = [...element.querySelectorAll<HTMLElement>(selector)].find((e) => matches(nameOf(e), name))
    if (found === undefined) throw new Error(`nothing here is called ${name}: ${element.textContent}`)
    return found
  }
  const button = (name: string | RegExp) => named(name, 'button, a, summary, label')
  const settle = () => act(async () => new Promise((resolve) => setTimeout(resolve, 0)))
  return {
    element,
    store,
    actions,
    button,
    settle,
    text: () => (element.textContent ?? '').replaceAll(/\s+/g, ' '),
    click: async (name) => {
      await act(async () => button(name).click())
      await settle()
    },
    type: (label, value) => act(async () => typeInto(inputOf(named(label, 'label'), element), value)),
    close: async () => {
      await act(async () => root.unmount())
      element.remove()
    },
  }
}

function nameOf(element: HTMLElement): string {
  return (element.getAttribute('aria-label') ?? element.textContent ?? '').replaceAll(/\s+/g, ' ').trim()
}

const matches = (text: string, name: string | RegExp): boolean =>
  typeof name === 'string' ? text.includes(name) : name.test(text)

function inputOf(label: HTMLElement, within: HTMLElement): HTMLInputElement {
  const id = label.getAttribute('for')
  const input = id === null ? label.querySelector('input') : within.querySelector(`[id="${id}"]`)
  if (input === null) throw new Error(`the label ${label.textContent} has no input`)
  return input as HTMLInputElement
}

/** As a user types: React listens to the element's own setter. */
function typeInto(input: HTMLInputElement, value: string): void {
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, value)
  input.dispatchEvent(new Event('input', { bubbles: true }))
}
