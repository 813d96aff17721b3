import { useState, useSyncExternalStore } from 'react'
import { newerVersion } from './newer-version'

/** Offers a newer version, quietly; nothing is loaded again until it is asked for. */
export function NewerVersion() {
  const isHere = useSyncExternalStore(newerVersion.subscribe, newerVersion.isHere)
  const [isPutOff, putOff] = useState(false)
  return (
    <div className="newer" role="status">
      {isHere && !isPutOff && (
        <>
          <p>A newer version is here.</p>
          <button type="button" className="link" onClick={newerVersion.use}>
            Use it now
          </button>
          <button type="button" className="link" onClick={() => putOff(true)}>
            Later
          </button>
        </>
      )}
    </div>
  )
}
