import { useRef, useState } from 'react'
import type { KeptHead } from '../../keep/keeper'
import type { Keeping } from '../../keep/keeping'
import { useKeeping, useKept } from '../app-context'
import { count } from '../words'
import { Versions } from './Versions'
import { whenText } from './when-text'

/** The kitchens kept in this browser: which is open, what can be done with each, and how well they are kept. */
export function YourKitchens() {
  const keeping = useKeeping()
  const kitchens = useKept((s) => s.kitchens) ?? null
  const open = useKept((s) => s.open) ?? null
  const trouble = useKept((s) => s.trouble)
  const heading = useRef<HTMLHeadingElement>(null)
  if (keeping === undefined) return null
  const there = (kitchens ?? []).filter((k) => k.takenOutAt === null && (!k.isPractice || k.edits > 0))
  const takenOut = (kitchens ?? []).filter((k) => k.takenOutAt !== null)
  const toHeading = () => heading.current?.focus()
  return (
    <section className="sheet your-kitchens">
      <h2 ref={heading} tabIndex={-1}>
        Your kitchens
      </h2>
      {kitchens === null && trouble !== null && <p>Nothing is kept in this browser.</p>}
      {kitchens !== null && there.length === 0 && (
        <p className="quiet">None yet. What you type or open is kept here as you go.</p>
      )}
      <ul className="kitchens">
        {there.map((kitchen) => (
          <Kitchen
            key={kitchen.id}
            kitchen={kitchen}
            isOpen={kitchen.id === open}
            keeping={keeping}
            onTakenOut={toHeading}
          />
        ))}
      </ul>
      {there.some(({ id }) => id === open) && <Versions />}
      {takenOut.length > 0 && (
        <details>
          <summary>Taken out: {count(takenOut.length, 'kitchen')}</summary>
          <ul className="kitchens">
            {takenOut.map((kitchen) => (
              <TakenOut key={kitchen.id} kitchen={kitchen} keeping={keeping} onGone={toHeading} />
            ))}
          </ul>
        </details>
      )}
      {there.some((k) => !k.isPractice) && <HowKept />}
    </section>
  )
}

interface KitchenProps {
  readonly kitchen: KeptHead
  readonly isOpen: boolean
  readonly keeping: Keeping
  readonly onTakenOut: () => void
}

function Kitchen({ kitchen, isOpen, keeping, onTakenOut }: KitchenProps) {
  const { id, name, isPractice } = kitchen
  const takeOut = () => {
    void keeping.takeOut(id)
    onTakenOut()
  }
  return (
    <li data-kitchen={name} aria-current={isOpen ? 'true' : undefined}>
      <p>
        <strong>{name}</strong>
        <span className="quiet">
          {[
            isOpen && 'open',
            isPractice && 'invented',
            `changed ${whenText(kitchen.changedAt)}`,
            fileText(kitchen),
          ]
            .filter(Boolean)
            .join(' · ')}
        </span>
      </p>
      <div className="acts">
        {!isOpen && (
          <button
            type="button"
            className="link"
            aria-label={`Open ${name}`}
            onClick={() => void keeping.open(id)}
          >
            Open
          </button>
        )}
        <button
          type="button"
          className="link"
          aria-label={`Copy ${name}`}
          onClick={() => void keeping.copy(id)}
        >
          Copy
        </button>
        <button type="button" className="link" aria-label={`Take out ${name}`} onClick={takeOut}>
          Take out
        </button>
      </div>
    </li>
  )
}

function fileText({ edits, savedEdits, savedAt }: KeptHead): string {
  if (savedAt === null) return 'never saved as a file'
  return edits === savedEdits ? 'saved as a file' : `${count(edits - savedEdits, 'edit')} since its file`
}

interface TakenOutProps {
  readonly kitchen: KeptHead
  readonly keeping: Keeping
  readonly onGone: () => void
}

function TakenOut({ kitchen: { id, name, takenOutAt }, keeping, onGone }: TakenOutProps) {
  const [isAsking, setAsking] = useState(false)
  const remove = () => {
    void keeping.forget(id)
    onGone()
  }
  return (
    <li data-kitchen={name}>
      <p>
        <strong>{name}</strong>
        <span className="quiet">taken out {whenText(takenOutAt)}</span>
      </p>
      <div className="acts">
        <button
          type="button"
          className="link"
          aria-label={`Bring back ${name}`}
          onClick={() => void keeping.bringBack(id)}
        >
          Bring back
        </button>
        {isAsking ? (
          <button type="button" className="link stop" onClick={remove}>
            Yes, remove {name} and its versions. There is no way back.
          </button>
        ) : (
          <button
            type="button"
            className="link"
            aria-label={`Remove ${name} for good`}
            onClick={() => setAsking(true)}
          >
            Remove for good
          </button>
        )}
      </div>
    </li>
  )
}

/** How long the browser keeps it: whether it has promised to. */
function HowKept() {
  const isPromised = useKept((s) => s.isPromised)
  return (
    <p className="open-note" data-promised={String(isPromised)}>
      {isPromised === true
        ? 'They are kept in this browser, and it has promised to keep them until you remove them.'
        : 'They are kept in this browser. It may clear them when it runs short of room.'}{' '}
      Save a file now and then, for a copy outside it.
    </p>
  )
}
