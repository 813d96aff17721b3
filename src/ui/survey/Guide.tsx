import { FIRST_MEASURES } from './empty-survey'

/** What to measure first in a room that nobody has measured yet. */
export function Guide() {
  return (
    <section className="sheet">
      <h2>What to measure first</h2>
      <ol className="guide">
        {FIRST_MEASURES.map(({ title, how }) => (
          <li key={title}>
            <strong>{title}</strong>
            <p>{how}</p>
          </li>
        ))}
      </ol>
      <p>
        <a href="#survey/sheet">Print a blank survey sheet</a> to take into the room: it asks for all of it,
        by number.
      </p>
    </section>
  )
}
