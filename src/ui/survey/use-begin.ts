import { useActions, useKeeping } from '../app-context'
import { emptySurvey } from './empty-survey'

/** Begins a kitchen of one's own, beside those that are kept, and goes to its first questions. */
export function useBegin(): () => void {
  const actions = useActions()
  const keeping = useKeeping()
  return () => {
    const begun = keeping?.fresh(emptySurvey.name)
    if (begun === undefined) actions.open(emptySurvey)
    else actions.open({ ...emptySurvey, name: begun.name }, undefined, { kept: begun.kept })
    window.location.hash = '#survey/first'
  }
}
