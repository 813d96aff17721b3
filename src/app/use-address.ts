import { useEffect } from 'react'
import type { AppActions } from '../state/actions'
import { isLink } from '../state/link'
import { type AppStore, PLACES } from '../state/store'
import { type Keeps, openLink } from './open-link'

/**
 * Follows the address: `#rehearse/<operation>`, `#rehearse/<operation>/<finding>`, `#paper/<sheet>`, `#day`,
 * `#survey`, `#survey/<page>`, and `#kitchen=<a kitchen file>`, which is opened once and then is no part of the address.
 * Stepping writes the operation back into it without adding to the history, so that a reload or a sent link comes back to
 * the same step.
 */
export function useAddress(store: AppStore, actions: AppActions, keeping?: Keeps): void {
  useEffect(() => {
    let wanted: string | null = null
    const follow = () => {
      const link = readHash()
      if (isLink(link)) {
        window.history.replaceState(null, '', '#survey')
        void openLink(link, store, actions, keeping)
      }
      const [name = '', ...rest] = readHash().split('/')
      const place = PLACES.find((p) => p === name)
      const detail = rest.join('/')
      if (place === undefined) return
      actions.go(place)
      if (place === 'paper' && detail !== '') actions.showSheet(detail)
      if (place === 'survey') actions.showPage(detail === '' ? 'found' : detail)
      if (place === 'rehearse' && detail !== '') {
        wanted = store.getState().plan === null ? detail : null
        goTo(actions, detail)
      }
    }
    const write = () => {
      const { plan, place, at } = store.getState()
      if (plan !== null && wanted !== null) {
        const id = wanted
        wanted = null
        goTo(actions, id)
        return
      }
      if (plan === null || place !== 'rehearse' || at === null) return
      const hash = `#rehearse/${at}`
      if (readHash() !== hash.slice(1)) window.history.replaceState(null, '', hash)
    }
    follow()
    const stop = store.subscribe(write)
    window.addEventListener('hashchange', follow)
    return () => {
      stop()
      window.removeEventListener('hashchange', follow)
    }
  }, [store, actions, keeping])
}

/** To an operation, and to a finding at it where one is named. */
function goTo(actions: AppActions, detail: string): void {
  const [operation = '', ...finding] = detail.split('/')
  actions.goToOperation(operation)
  if (finding.length > 0) actions.lookAtFinding(finding.join('/'))
}

function readHash(): string {
  const raw = window.location.hash.slice(1)
  try {
    return decodeURIComponent(raw)
  } catch {
    return raw
  }
}
