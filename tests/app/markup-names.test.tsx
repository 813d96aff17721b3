/** What is typed as a name stays text wherever it is shown: no name becomes a part of the page. */
import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { App } from '../../src/app/App'
import { PAGES } from '../../src/core/form/pages'
import { makeActions } from '../../src/state/actions'
import { makeStore } from '../../src/state/store'
import { directWorker } from '../support/direct-worker'
import { sceneFile } from '../support/kitchens'

const MARKUP = '"><img src=x onerror=a()><script>b()</script><svg onload=c()>'

/** Things of these lists may be given a name. */
const NAMED = ['walls', 'units', 'appliances', 'finishing', 'worktops', 'fixings', 'people']

/** A kitchen with markup for every name, given or not, and for every reason. */
function withMarkup(value: unknown, key = ''): unknown {
  if (Array.isArray(value)) {
    return value.map((one: unknown) => {
      const inner = withMarkup(one)
      return NAMED.includes(key) && typeof inner === 'object' ? { ...inner, name: MARKUP } : inner
    })
  }
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, withMarkup(inner, name)]))
  }
  return ['name', 'by', 'because'].includes(key) ? MARKUP : value
}

const store = makeStore()
const actions = makeActions(store, directWorker, () => '2026-11-25T10:20:00.000Z')
const place = document.createElement('div')
const root = createRoot(place)
const moment = () => act(async () => new Promise((resolve) => setTimeout(resolve, 20)))

async function until(isSo: () => boolean): Promise<void> {
  for (const end = Date.now() + 15_000; !isSo() && Date.now() < end; ) await moment()
}

beforeAll(async () => {
  document.body.append(place)
  // The app fetches its other places when they are asked for; here they are there at once.
  await Promise.all([
    import('../../src/ui/survey/SurveyPlace'),
    import('../../src/ui/paper/OnPaper'),
    import('../../src/ui/day/OnTheDay'),
    import('../../src/ui/rehearse/FlatPicture'),
  ])
  await act(async () => root.render(<App store={store} actions={actions} />))
  await act(async () => actions.open(withMarkup(sceneFile('l-shape'))))
  await until(() => store.getState().plan !== null)
}, 60_000)
afterAll(async () => {
  await act(async () => root.unmount())
  place.remove()
})

/** What on the page came out of a name; empty when all of it is text. */
function comeAlive(): readonly string[] {
  const foreign = [...place.querySelectorAll('script, img, iframe, object, embed, [src]')]
  const attributes = [...place.querySelectorAll('*')].flatMap((one) =>
    [...one.attributes].filter(
      ({ name, value }) =>
        /^on/i.test(name) ||
        (/^(?:xlink:)?(?:href|action|formaction)$/i.test(name) &&
          /^\s*(?:javascript|data|vbscript):/i.test(value)),
    ),
  )
  return [...foreign.map(({ outerHTML }) => outerHTML), ...attributes.map(({ name }) => name)]
}

test('the kitchen with such names is planned', () => {
  expect(store.getState().problems).toEqual([])
  expect(store.getState().plan?.name).toBe(MARKUP)
})

test('what would come alive is seen', () => {
  const planted = place.appendChild(document.createElement('p'))
  planted.innerHTML = MARKUP.slice(2)
  expect(comeAlive().length).toBeGreaterThan(1)
  planted.remove()
  expect(comeAlive()).toEqual([])
})

test.each(['rehearse', 'survey', 'paper', 'day', ...PAGES.map(({ id }) => `survey/${id}`)])(
  'names that are markup stay text at #%s',
  async (address) => {
    await act(async () => {
      window.location.hash = address
    })
    const shows = () => place.textContent?.includes('<script>b()</script>') || valuesOf().includes(MARKUP)
    await until(() => address.startsWith(store.getState().place) && shows())
    expect(shows()).toBe(true)
    expect(comeAlive()).toEqual([])
  },
)

const valuesOf = (): readonly string[] =>
  [...place.querySelectorAll<HTMLInputElement>('input, textarea')].map(({ value }) => value)
