import type { Problem } from '../core/kitchen/problem'

const MOST_SHOWN = 30

/** What is wrong with a file or an entry: where, what, and how to mend it. */
export function ProblemList({
  title,
  problems,
}: {
  readonly title: string
  readonly problems: readonly Problem[]
}) {
  if (problems.length === 0) return null
  return (
    <div role="alert" className="problems">
      <h2 className="stop">{title}</h2>
      <ul className="findings">
        {problems.slice(0, MOST_SHOWN).map((p) => (
          <li key={p.path + p.message}>
            <p>
              <span className="figure">{p.path}</span>: {p.message}
            </p>
            <p className="who">{p.mend}</p>
          </li>
        ))}
      </ul>
      {problems.length > MOST_SHOWN && <p>and {problems.length - MOST_SHOWN} more.</p>}
    </div>
  )
}
