import { Component, lazy, type ReactNode, Suspense, useEffect, useMemo, useState } from 'react'
import type { AppActions } from '../state/actions'
import { type AppStore, indexOf, PLACES, type PlaceName } from '../state/store'
import { AppContext, useActions, useApp } from '../ui/app-context'
import { OnTheDay } from '../ui/day/OnTheDay'
import { OnPaper } from '../ui/paper/OnPaper'
import { Rehearse } from '../ui/rehearse/Rehearse'
import { SurveyPlace } from '../ui/survey/SurveyPlace'
import { demos } from './demos'
import { prefersReducedMotion } from './reduced-motion'
import { hasWebGl } from './webgl'

const Walkthrough = lazy(() => import('../scene/Walkthrough').then((m) => ({ default: m.Walkthrough })))

const PLACE_NAMES: Readonly<Record<PlaceName, string>> = {
  survey: 'Survey and delivery',
  rehearse: 'Rehearse',
  paper: 'On paper',
  day: 'On the day',
}

/** Lays out the app: a masthead, and one of four places. */
export function App({ store, actions }: { readonly store: AppStore; readonly actions: AppActions }) {
  const handle = useMemo(() => ({ store, actions }), [store, actions])
  return (
    <AppContext.Provider value={handle}>
      <div className="app">
        <Masthead />
        <PlaceView />
      </div>
    </AppContext.Provider>
  )
}

function Masthead() {
  const place = useApp((s) => s.place)
  const plan = useApp((s) => s.plan)
  const working = useApp((s) => s.working)
  return (
    <header className="masthead">
      <a className="skip" href="#step-title">
        Skip to the step
      </a>
      <span className="mark">Dry Run</span>
      <nav aria-label="Places">
        <ul className="places">
          {PLACES.map((name) => (
            <li key={name}>
              <a href={`#${name}`} aria-current={place === name ? 'page' : undefined}>
                {PLACE_NAMES[name]}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <span className="which" role="status">
        {plan?.name}
        {plan?.demo ? ' · invented' : ''}
        {working ? ' · working it out' : ''}
      </span>
    </header>
  )
}

function PlaceView() {
  const place = useApp((s) => s.place)
  useHashPlaces()
  return (
    <main className="place">
      {place === 'rehearse' && <Rehearse stage={<Stage />} />}
      {place === 'survey' && <SurveyPlace demos={demos} />}
      {place === 'paper' && <OnPaper />}
      {place === 'day' && <OnTheDay />}
    </main>
  )
}

function useHashPlaces() {
  const actions = useActions()
  useEffect(() => {
    const follow = () => {
      const [name = '', operation] = decodeURIComponent(window.location.hash.slice(1)).split('/')
      const place = PLACES.find((p) => p === name)
      if (place !== undefined) actions.go(place)
      if (operation !== undefined) actions.goToOperation(operation)
    }
    follow()
    window.addEventListener('hashchange', follow)
    return () => window.removeEventListener('hashchange', follow)
  }, [actions])
}

/** The picture, loaded late; without WebGL the words carry everything. */
function Stage() {
  const plan = useApp((s) => s.plan)
  const index = useApp(indexOf)
  const [webGl] = useState(hasWebGl)
  const reducedMotion = prefersReducedMotion()
  if (plan === null) return null
  if (!webGl) return <p className="page">This device shows no 3D. The slip says it all; the wall drawings are under On paper.</p>
  return (
    <PictureGuard>
      <Suspense fallback={null}>
        <Walkthrough plan={plan} index={index} reducedMotion={reducedMotion} />
      </Suspense>
    </PictureGuard>
  )
}

class PictureGuard extends Component<{ readonly children: ReactNode }, { readonly failed: boolean }> {
  override state = { failed: false }
  static getDerivedStateFromError() {
    return { failed: true }
  }
  override render() {
    if (this.state.failed) return <p className="page">The picture could not be drawn. The slip says it all.</p>
    return this.props.children
  }
}
