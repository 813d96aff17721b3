import { createContext, useContext, useSyncExternalStore } from 'react'
import type { AppActions } from '../state/actions'
import type { AppState, AppStore } from '../state/store'

/** The store and what may be done with it, handed down once by the app. */
export interface AppHandle {
  readonly store: AppStore
  readonly actions: AppActions
}
export const AppContext = createContext<AppHandle | null>(null)

function useHandle(): AppHandle {
  const handle = useContext(AppContext)
  if (handle === null) throw new Error('AppContext is missing above this component')
  return handle
}

/** Reads one thing from the state; the reader must give the same value for the same state. */
export function useApp<T>(read: (state: AppState) => T): T {
  const { store } = useHandle()
  return useSyncExternalStore(store.subscribe, () => read(store.getState()))
}

export function useActions(): AppActions {
  return useHandle().actions
}
