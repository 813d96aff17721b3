import type { AppState } from '../state/store'
import { useApp } from './app-context'

type Situation = 'working' | 'broken' | 'no-order' | 'empty' | 'refused' | 'nothing'

const SAID: Readonly<Record<Situation, readonly [title: string, more: string]>> = {
  working: ['Working it out.', 'The room, the units and the order of work are being worked through.'],
  broken: ['The planner stopped.', 'Nothing of yours was changed. Load the page anew to try again.'],
  'no-order': [
    'There is no order that keeps everything.',
    'What clashes, and what to give up, stands under Survey and delivery.',
  ],
  empty: [
    'There is nothing to do yet.',
    'What to measure first, and what to find out next, stands under Survey and delivery.',
  ],
  refused: [
    'The file could not be used.',
    'What is wrong with it, and how to mend it, stands under Survey and delivery.',
  ],
  nothing: ['No kitchen is open.', 'Open one, or begin an empty survey, under Survey and delivery.'],
}

function situation({ working, broken, noPlan, plan, problems }: AppState): Situation {
  if (working) return 'working'
  if (broken !== null) return 'broken'
  if (noPlan !== null) return 'no-order'
  if (plan !== null) return 'empty'
  return problems.length > 0 ? 'refused' : 'nothing'
}

/** What a place shows while there is no work to show, and where to go from there. */
export function NothingOpen() {
  const now = useApp(situation)
  const broken = useApp((s) => s.broken)
  const [title, more] = SAID[now]
  return (
    <div className="page nothing-open">
      <h1 tabIndex={-1}>{title}</h1>
      <p>{more}</p>
      {now === 'broken' && <p className="quiet">It said: {broken}.</p>}
      {now !== 'working' && (
        <p>
          <a className="link" href="#survey">
            Survey and delivery
          </a>
        </p>
      )}
    </div>
  )
}
