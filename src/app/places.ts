import { lazy } from 'react'

/** The places that are not needed to see the first step: fetched when they are first shown, or when there is time. */
const paper = () => import('../ui/paper/OnPaper')
const day = () => import('../ui/day/OnTheDay')
const survey = () => import('../ui/survey/SurveyPlace')
const flat = () => import('../ui/rehearse/FlatPicture')
const standsOn = () => import('../ui/rehearse/StandsOn')
const whyAnswer = () => import('../ui/rehearse/WhyAnswer')
const levelTrial = () => import('../ui/rehearse/trial/LevelTrial')
const reorder = () => import('../ui/rehearse/order/Reorder')
const readAloud = () => import('../ui/rehearse/aloud/ReadAloud')
const said = () => import('../ui/rehearse/Said')
const stepFindings = () => import('../ui/rehearse/StepFindings')

export const OnPaper = lazy(() => paper().then((m) => ({ default: m.OnPaper })))
export const OnTheDay = lazy(() => day().then((m) => ({ default: m.OnTheDay })))
export const SurveyPlace = lazy(() => survey().then((m) => ({ default: m.SurveyPlace })))
export const FlatPicture = lazy(() => flat().then((m) => ({ default: m.FlatPicture })))

/** Fetches the rest, so that it is there when the line is not. */
export function fetchAllPlaces(): void {
  const fetchNow = () =>
    void Promise.allSettled([
      paper(),
      day(),
      survey(),
      flat(),
      standsOn(),
      whyAnswer(),
      levelTrial(),
      said(),
      readAloud(),
      reorder(),
      stepFindings(),
    ])
  if ('requestIdleCallback' in window) window.requestIdleCallback(fetchNow)
  else setTimeout(fetchNow, 2000)
}
