import { useApp } from './app-context'

/** What a place shows while there is no plan to show, and where to go from there. */
export function NothingOpen() {
  const working = useApp((s) => s.working)
  const broken = useApp((s) => s.broken)
  const hasNoOrder = useApp((s) => s.noPlan !== null)
  const isRefused = useApp((s) => s.problems.length > 0)
  const [title, more] = working
    ? ['Working it out.', 'The room, the units and the order of work are being worked through.']
    : broken !== null
      ? [
          'The planner stopped.',
          `It said: ${broken}. Nothing of yours was changed. Load the page anew to try again.`,
        ]
      : hasNoOrder
        ? [
            'There is no order that keeps everything.',
            'What clashes, and what to give up, stands under Survey and delivery.',
          ]
        : isRefused
          ? [
              'The file could not be used.',
              'What is wrong with it, and how to mend it, stands under Survey and delivery.',
            ]
          : ['No kitchen is open.', 'Open one, or begin an empty survey, under Survey and delivery.']
  return (
    <div className="page nothing-open">
      <h1 id="step-title" tabIndex={-1}>
        {title}
      </h1>
      <p>{more}</p>
      {!working && (
        <p>
          <a className="link" href="#survey">
            Survey and delivery
          </a>
        </p>
      )}
    </div>
  )
}
