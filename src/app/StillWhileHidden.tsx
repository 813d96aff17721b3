import { type ReactNode, useContext, useLayoutEffect, useMemo } from 'react'
import type { AppState, AppStore } from '../state/store'
import { AppContext } from '../ui/app-context'

interface Props {
  readonly isShown: boolean
  readonly children: ReactNode
}

/**
 * What is kept while another place is shown stays as it was: it is told of nothing until it is shown again, and then of
 * all of it. A picture that nobody sees is not drawn anew at every letter that is typed elsewhere.
 */
export function StillWhileHidden({ isShown, children }: Props) {
  const handle = useContext(AppContext)
  const still = useMemo(() => (handle === null ? null : stillOf(handle.store)), [handle])
  // Before it is painted: not even one frame of what it was.
  useLayoutEffect(() => still?.show(isShown), [still, isShown])
  const inner = useMemo(
    () => (handle === null || still === null ? null : { ...handle, store: still.store }),
    [handle, still],
  )
  return <AppContext.Provider value={inner}>{children}</AppContext.Provider>
}

/** A store that stands still while it is not shown. */
function stillOf(store: AppStore): { readonly store: AppStore; readonly show: (isShown: boolean) => void } {
  let isShown = true
  let state = store.getState()
  const told = new Set<(now: AppState, before: AppState) => void>()
  const tell = () => {
    const before = state
    state = store.getState()
    if (state !== before) for (const each of [...told]) each(state, before)
  }
  store.subscribe(() => isShown && tell())
  return {
    store: {
      ...store,
      getState: () => (isShown ? store.getState() : state),
      subscribe: (each) => {
        told.add(each)
        return () => told.delete(each)
      },
    },
    show: (to) => {
      isShown = to
      if (to) tell()
      else state = store.getState()
    },
  }
}
