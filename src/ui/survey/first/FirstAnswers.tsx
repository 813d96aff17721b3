import { useRef } from 'react'
import { useApp } from '../../app-context'
import { ProblemList } from '../../ProblemList'
import { usePageHeading } from '../../use-page-heading'
import { FirstLines } from './FirstLines'
import { QUESTIONS, QuestionOf } from './QuestionOf'

/** Ten questions on one screen, and what can be said at once of what has been answered. */
export function FirstAnswers() {
  const problems = useApp((s) => s.problems)
  const isBehind = useApp((s) => s.isBehind)
  const heading = usePageHeading()
  const said = useRef<HTMLHeadingElement>(null)
  return (
    <div className="two page-form first-answers">
      <section className="sheet">
        <h2 ref={heading} tabIndex={-1}>
          Ten first questions
        </h2>
        <p>Answer what you know. Nothing is guessed for you, and every answer can be changed later.</p>
        <button type="button" className="link to-answers" onClick={() => said.current?.focus()}>
          To what can be said already
        </button>
        <ol className="first-questions">
          {QUESTIONS.map((question) => (
            <QuestionOf key={question.label} {...question} />
          ))}
        </ol>
        <p className="onward">
          <a className="button main" href="#survey/house">
            On to: House and line
          </a>
        </p>
      </section>
      <div className="beside">
        <ProblemList title="This does not go together yet." problems={problems} />
        <section className="sheet" aria-live="polite">
          <h2 ref={said} tabIndex={-1}>
            What can be said already
          </h2>
          {isBehind && <p className="quiet">From before the last change.</p>}
          <FirstLines />
        </section>
      </div>
    </div>
  )
}
