import { useState } from 'react'
import type { VersionReason } from '../../keep/keeper'
import { useKeeping, useKept } from '../app-context'
import { count } from '../words'
import { whenText } from './when-text'

const WHY: Readonly<Record<Exclude<VersionReason, 'named'>, string>> = {
  file: 'before a file was opened',
  return: 'before an earlier version was taken',
  elsewhere: 'as typed in another tab',
}

const NO_VERSIONS: readonly never[] = []

/** The open kitchen as it was: kept under a name, or before something else took its place. */
export function Versions() {
  const keeping = useKeeping()
  const versions = useKept((s) => s.versions) ?? NO_VERSIONS
  const [name, setName] = useState('')
  if (keeping === undefined) return null
  const keep = () => {
    void keeping.keepVersion(name.trim())
    setName('')
  }
  return (
    <details className="versions">
      <summary>
        Versions of the open kitchen: {versions.length === 0 ? 'none yet' : count(versions.length, 'version')}
      </summary>
      <form
        className="keep-version"
        onSubmit={(event) => {
          event.preventDefault()
          if (name.trim() !== '') keep()
        }}
      >
        <label>
          Name of this version
          <input value={name} maxLength={80} onChange={({ target }) => setName(target.value)} />
        </label>
        <button type="submit" className="button" aria-disabled={name.trim() === ''}>
          Keep this version
        </button>
      </form>
      <ul className="kitchens">
        {versions.map((version) => (
          <li key={version.id}>
            <p>
              <strong>{version.name}</strong>
              <span className="quiet">
                {[whenText(version.keptAt), version.why !== 'named' && WHY[version.why]]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </p>
            <div className="acts">
              <button
                type="button"
                className="link"
                aria-label={`Return to ${version.name}`}
                onClick={() => void keeping.returnTo(version.id)}
              >
                Return to it
              </button>
            </div>
          </li>
        ))}
      </ul>
      {versions.length > 0 && (
        <p className="quiet">Returning can be taken back. What is written down on the day stays.</p>
      )}
    </details>
  )
}
