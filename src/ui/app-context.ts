import { createContext, useContext, useSyncExternalStore } from 'react'
import type { Keeping, KeepState } from '../keep/keeping'
import type { AppActions } from '../state/actions'
import type { AppState, AppStore } from '../state/store'

/** The store and what may be done with it, handed down once by the app. */
export interface AppHandle {
  readonly store: AppStore
  readonly actions: AppActions
  /** Keeps what is open in this browser; a part of the screens shown by itself has none. */
  readonly keeping?: Keeping
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

/** The state at the moment something is done, for who need not be told of every change of it. */
export function useNow(): () => AppState {
  return useHandle().store.getState
}

export function useActions(): AppActions {
  return useHandle().actions
}

export function useKeeping(): Keeping | undefined {
  return useHandle().keeping
}

const NO_STORE = { subscribe: () => () => undefined }

/** Reads one thing of the keeping, as `useApp` does of the state; undefined where nothing is kept. */
export function useKept<T>(read: (state: KeepState) => T): T | undefined {
  const { keeping } = useHandle()
  return useSyncExternalStore((keeping?.store ?? NO_STORE).subscribe, () =>
    keeping === undefined ? undefined : read(keeping.store.getState()),
  )
}
