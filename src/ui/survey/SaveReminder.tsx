import { useKeeping, useKept } from '../app-context'
import { useSaveKitchen } from '../use-save-kitchen'
import { count } from '../words'

/** Asks quietly for a file where a kitchen has had many edits since the last one. */
export function SaveReminder() {
  const keeping = useKeeping()
  const edits = useKept((s) => s.editsToSave) ?? 0
  const save = useSaveKitchen()
  if (keeping === undefined || edits === 0) return null
  return (
    <p className="save-reminder">
      <span>{count(edits, 'edit', 'edits')} since this kitchen was last saved as a file.</span>
      <button type="button" className="link" onClick={save}>
        Save a file
      </button>
      <button type="button" className="link" onClick={keeping.notNow}>
        Not now
      </button>
    </p>
  )
}
