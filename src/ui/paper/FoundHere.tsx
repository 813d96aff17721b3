import { WEIGHT_WORDS } from '../findings/weights'
import { words } from '../words'
import { findingPlace } from './sheets'
import type { Found } from './wall/found'

interface Props {
  readonly found: readonly Found[]
  readonly wall: string
  readonly onPlace: (finding: string) => void
}

const wordsId = (finding: string): string => `words ${finding}`

/** What was found on one wall, each under the letter it has on the drawing; the letter leads back to its place there. */
export function FoundHere({ found, wall, onPlace }: Props) {
  if (found.length === 0) return null
  return (
    <section className="found-here">
      <h2>Found on this wall</h2>
      <ul>
        {found.map(({ finding, letter, heading }) => (
          <li key={finding.id} id={wordsId(finding.id)} tabIndex={-1}>
            {finding.where === null || finding.where.along === null ? (
              <span className="letter" aria-hidden="true">
                {letter}
              </span>
            ) : (
              <a
                className="letter"
                href={`#paper/${findingPlace(wall, finding.id)}`}
                aria-label={`${letter}: to its place on the drawing`}
                onClick={() => onPlace(finding.id)}
              >
                {letter}
              </a>
            )}
            <div>
              <h3>
                {heading} <span className="quiet">{WEIGHT_WORDS[finding.weight]}</span>
                {finding.dangerous && <span className="hurts">Can hurt someone.</span>}
              </h3>
              <p>{words(finding.say)}</p>
              {finding.ask !== null && <p className="who">{words(finding.ask)}</p>}
              {finding.where?.along === null && <p className="quiet">It is about the whole wall.</p>}
            </div>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** Brings the words of a finding into sight, and the focus to them. */
export function showWords(finding: string): void {
  const told = document.getElementById(wordsId(finding))
  told?.scrollIntoView({ block: 'center' })
  told?.focus({ preventScroll: true })
}
