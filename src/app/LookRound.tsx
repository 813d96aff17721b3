import { type ReactNode, type Ref, useState } from 'react'

interface Props {
  readonly box: Ref<HTMLDivElement>
  readonly isTurned: boolean
  readonly onTurn: (turn: number, tip: number, closer: number) => void
  readonly onReset: () => void
  readonly onAgain: (() => void) | null
  /** For people who ask for no motion: from how a step begins to how it ends, and back. */
  readonly onTurnOver: (() => void) | null
  readonly isAtEnd: boolean
}

const STEP = 15
const CLOSER = 1.25

/** Buttons for everything that dragging does, folded away until they are asked for. */
export function LookRound({ box, isTurned, onTurn, onReset, onAgain, onTurnOver, isAtEnd }: Props) {
  const [isOpen, setOpen] = useState(false)
  return (
    <div className="look-round" ref={box}>
      <button
        type="button"
        className="look-button words toggle"
        aria-expanded={isOpen}
        onClick={() => setOpen(!isOpen)}
      >
        <svg
          viewBox="0 0 24 24"
          aria-hidden="true"
          focusable="false"
          fill="none"
          stroke="currentColor"
          strokeWidth="2"
        >
          <path d="M2 12c3-5 6-7 10-7s7 2 10 7c-3 5-6 7-10 7s-7-2-10-7z" />
          <circle cx="12" cy="12" r="3" />
        </svg>
        <span>{isOpen ? 'Close' : 'Look round'}</span>
      </button>
      {isOpen && (
        <>
          <LookButton label="Turn to the left" onClick={() => onTurn(STEP, 0, 1)}>
            <path d="M19 8A8 8 0 1 0 20 14M19 3v5h-5" transform="matrix(-1 0 0 1 24 0)" />
          </LookButton>
          <LookButton label="Turn to the right" onClick={() => onTurn(-STEP, 0, 1)}>
            <path d="M19 8A8 8 0 1 0 20 14M19 3v5h-5" />
          </LookButton>
          <LookButton label="From higher up" onClick={() => onTurn(0, STEP, 1)}>
            <path d="M12 20V5M6 11l6-6 6 6" />
          </LookButton>
          <LookButton label="From lower down" onClick={() => onTurn(0, -STEP, 1)}>
            <path d="M12 4v15M6 13l6 6 6-6" />
          </LookButton>
          <LookButton label="Closer" onClick={() => onTurn(0, 0, CLOSER)}>
            <path d="M12 4v16M4 12h16" />
          </LookButton>
          <LookButton label="Further off" onClick={() => onTurn(0, 0, 1 / CLOSER)}>
            <path d="M4 12h16" />
          </LookButton>
        </>
      )}
      {isTurned && (
        <button type="button" className="look-button words" onClick={onReset}>
          As it was
        </button>
      )}
      {onAgain !== null && (
        <button type="button" className="look-button words" onClick={onAgain}>
          Again
        </button>
      )}
      {onTurnOver !== null && (
        <button type="button" className="look-button words" onClick={onTurnOver}>
          {isAtEnd ? 'How it begins' : 'How it ends'}
        </button>
      )}
    </div>
  )
}

interface ButtonProps {
  readonly label: string
  readonly onClick: () => void
  readonly children: ReactNode
}

function LookButton({ label, onClick, children }: ButtonProps) {
  return (
    <button type="button" className="look-button" aria-label={label} title={label} onClick={onClick}>
      <svg
        viewBox="0 0 24 24"
        aria-hidden="true"
        focusable="false"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
      >
        {children}
      </svg>
    </button>
  )
}
