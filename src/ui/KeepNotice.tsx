import type { Keeping } from '../keep/keeping'
import type { Trouble } from '../keep/trouble'
import { useKeeping, useKept } from './app-context'
import { useSaveKitchen } from './use-save-kitchen'

interface Told {
  readonly what: string
  readonly so: string
  readonly doing: readonly ('save' | 'again' | 'own' | 'other' | 'away')[]
}

const TOLD: Readonly<Record<Trouble, Told>> = {
  none: {
    what: 'Nothing is kept in this browser.',
    so: 'This may be a private window, or its storage is switched off. Save a file before you close the page.',
    doing: ['save', 'away'],
  },
  newer: {
    what: 'What is kept here was kept by a newer version of this tool. It is left as it is.',
    so: 'Nothing you type now is kept. Save a file of what you typed, then load the page again.',
    doing: ['save', 'away'],
  },
  full: {
    what: 'There is no room left here. Your last edits are not kept.',
    so: 'Save a file now. To make room, remove a kitchen you have taken out.',
    doing: ['save', 'again'],
  },
  broken: {
    what: 'Your last edits could not be kept.',
    so: 'Save a file now, then try again.',
    doing: ['save', 'again'],
  },
  elsewhere: {
    what: 'This kitchen was changed in another tab.',
    so: 'Nothing you type here is kept until you choose. If you take the other one, yours stays as a version of it.',
    doing: ['own', 'other'],
  },
  gone: {
    what: 'This kitchen was cleared from this browser, or removed in another tab.',
    so: 'It is kept again while it is open here. Others may be gone. Save a file now.',
    doing: ['save', 'away'],
  },
}

const WORDS = {
  save: 'Save this kitchen as a file',
  again: 'Try again',
  own: 'Keep mine as another kitchen',
  other: 'Take the other one',
  away: 'Put this away',
}

/** What stands in the way of keeping what is typed, over every place, until it is settled. */
export function KeepNotice() {
  const keeping = useKeeping()
  const trouble = useKept((s) => (s.isPutAway ? null : s.trouble)) ?? null
  const save = useSaveKitchen()
  if (keeping === undefined || trouble === null) return null
  const { what, so, doing } = TOLD[trouble]
  const act = actsOf(keeping, save)
  return (
    <div role="alert" className="keep-notice" data-trouble={trouble}>
      <p>
        <strong>{what}</strong> {so}
      </p>
      <div className="pair">
        {doing.map((name) => (
          <button key={name} type="button" className="button" onClick={act[name]}>
            {WORDS[name]}
          </button>
        ))}
      </div>
    </div>
  )
}

const actsOf = (keeping: Keeping, save: () => void): Readonly<Record<keyof typeof WORDS, () => void>> => ({
  save,
  again: () => void keeping.tryAgain(),
  own: () => void keeping.keepOwn(),
  other: () => void keeping.takeOther(),
  away: keeping.putAway,
})
