import { type RefObject, Suspense, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { PLACES, type PlaceName } from '../state/store'
import { AppContext, type AppHandle, useApp } from '../ui/app-context'
import { KeepNotice } from '../ui/KeepNotice'
import { Rehearse } from '../ui/rehearse/Rehearse'
import { demos } from './demos'
import { Guard } from './Guard'
import { NewerVersion } from './offline/NewerVersion'
import { OnPaper, OnTheDay, SurveyPlace } from './places'
import { Stage } from './Stage'
import { StillWhileHidden } from './StillWhileHidden'
import { useAddress } from './use-address'

/** A place's name, in two parts: in the hand only the first is shown, and both are read out. */
const PLACE_NAMES: Readonly<Record<PlaceName, readonly [string, string]>> = {
  survey: ['Survey', ' and delivery'],
  rehearse: ['Rehearse', ''],
  paper: ['On paper', ''],
  day: ['On the day', ''],
}

/** Lays out the app: a masthead, and one of four places. */
export function App({ store, actions, keeping }: AppHandle) {
  const handle = useMemo(() => ({ store, actions, keeping }), [store, actions, keeping])
  useAddress(store, actions, keeping)
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
  const isBroken = useApp((s) => s.broken !== null)
  return (
    <header className="masthead">
      <button type="button" className="skip" onClick={skip}>
        Skip to the work
      </button>
      <span className="mark">Dry Run</span>
      <nav aria-label="Places">
        <ul className="places">
          {PLACES.map((name) => (
            <li key={name}>
              <a href={`#${name}`} aria-current={place === name ? 'page' : undefined}>
                <span>
                  {PLACE_NAMES[name][0]}
                  {PLACE_NAMES[name][1] !== '' && <span className="long">{PLACE_NAMES[name][1]}</span>}
                </span>
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <span className="which" role="status">
        {[
          plan?.name,
          plan?.demo === true && 'invented',
          working && 'working it out',
          isBroken && 'the planner stopped',
        ]
          .filter(Boolean)
          .join(' · ')}
      </span>
      <KeepNotice />
      <NewerVersion />
    </header>
  )
}

/** To the heading of what is shown. A button and no link: the address belongs to the places. */
function skip() {
  const headings = [...document.querySelectorAll<HTMLElement>('main > :not([inert]) h1')]
  const heading = headings.find((h) => h.offsetParent !== null)
  heading?.setAttribute('tabindex', '-1')
  heading?.focus()
}

/** Stands for a place that did not come, or broke. What was open and written down is kept all the same. */
function NotFetched() {
  return (
    <section className="not-fetched">
      <h1>This place could not be shown</h1>
      <p>It may not have been fetched yet. What you have open and written down is kept.</p>
      <p>Load the page again when there is a line; the other places go on.</p>
    </section>
  )
}

/** Every place opens at its top: all of them scroll in one box, which stays as far down as the place before was read. */
function useTop(place: PlaceName): RefObject<HTMLElement | null> {
  const box = useRef<HTMLElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place is what it answers to
  useLayoutEffect(() => {
    if (box.current !== null) box.current.scrollTop = 0
  }, [place])
  return box
}

function PlaceView() {
  const place = useApp((s) => s.place)
  const [wasRehearsing, setRehearsing] = useState(false)
  if (place === 'rehearse' && !wasRehearsing) setRehearsing(true)
  return (
    <main className="place" ref={useTop(place)}>
      {wasRehearsing && (
        // Kept while other places are shown: a graphics context given up and asked for again may not come back.
        <div className="kept" inert={place !== 'rehearse'}>
          <StillWhileHidden isShown={place === 'rehearse'}>
            <Rehearse isShown={place === 'rehearse'} stage={<Stage />} />
          </StillWhileHidden>
        </div>
      )}
      {place !== 'rehearse' && (
        <div className="shown">
          <Guard key={place} instead={<NotFetched />}>
            <Suspense fallback={null}>
              {place === 'survey' && <SurveyPlace demos={demos} />}
              {place === 'paper' && <OnPaper />}
              {place === 'day' && <OnTheDay />}
            </Suspense>
          </Guard>
        </div>
      )}
    </main>
  )
}
