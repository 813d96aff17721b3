import { useEffect, useRef } from 'react'

const CARDS = [
  {
    title: 'A cable was hit',
    say: 'Let go of the tool and touch nothing metal. If somebody is held by the current, do not touch them: switch off first. Switch the main switch off if you reach it without passing the place. Nobody touches that wall again until an electrician has proved it dead and looked at it.',
  },
  {
    title: 'A pipe was hit',
    say: 'Turn the stop valve off. Leave the screw or bit in if it holds the leak back. Keep water away from sockets and flex; if it has reached them, keep off and switch the main switch off from a dry place. Call a plumber. If it may be a gas pipe, go by the next card.',
  },
  {
    title: 'A smell of gas',
    say: 'No switch, no flame, no tool, no telephone indoors. Open doors and windows on the way out. Shut the gas off at the meter if you can reach it at once. Everybody out. Ring the gas emergency line from outside, and do not go back in until you are told.',
  },
  {
    title: 'Somebody is hurt',
    say: 'First aid, then the emergency number. Do not move anybody who has fallen unless they lie in danger.',
  },
  {
    title: 'It does not fit, or it will not come level',
    say: 'Set it down. Measure again what you measured first. Write down what you find; the plan is worked out again from it.',
  },
] as const

/** What to do first when something goes wrong; the first line is always the same. */
export function Trouble({ onBack }: { readonly onBack: () => void }) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <section className="day" aria-labelledby="trouble-title">
      <h1 id="trouble-title" tabIndex={-1} ref={heading}>
        Put it down or hold it.
      </h1>
      <p>Nothing else comes first. Set the unit on the floor, or call your helper and keep hold of it.</p>
      {CARDS.map(({ title, say }) => (
        <section key={title} className="trouble">
          <h2>{title}</h2>
          <p>{say}</p>
        </section>
      ))}
      <div className="end">
        <button type="button" className="button" onClick={onBack}>
          Back to the work
        </button>
      </div>
    </section>
  )
}
