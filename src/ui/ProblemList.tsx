import type { Problem } from '../core/kitchen/problem'

const MOST_SHOWN = 30

/** How a problem is mended on the screen it was typed into. */
export const mendTyped = ({ mend, onScreen }: Problem): string => onScreen ?? mend

/** What is wrong with a file or an entry: where, what, and how to mend it. */
export function ProblemList({
  title,
  problems,
  isFile = false,
}: {
  readonly title: string
  readonly problems: readonly Problem[]
  /** In a file that was opened; else in what was typed on a screen, and mended there. */
  readonly isFile?: boolean
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
            <p className="who">{isFile ? p.mend : mendTyped(p)}</p>
          </li>
        ))}
      </ul>
      {problems.length > MOST_SHOWN && <p>and {problems.length - MOST_SHOWN} more.</p>}
    </div>
  )
}
