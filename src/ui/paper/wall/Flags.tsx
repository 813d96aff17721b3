import { findingWords } from '../sheets'
import type { Flag } from './found'
import { COLORS, type Pen } from './pen'

interface Props {
  readonly flags: readonly Flag[]
  readonly pen: Pen
  /** The wall they lead to the words of; null: they only show. */
  readonly wall: string | null
  readonly onFlag?: ((finding: string) => void) | undefined
}

export const flagId = (finding: string): string => `flag ${finding}`

/** Findings at their places: a dot where each is, a letter beside it, and from the letter a way to the words. */
export function Flags({ flags, pen, wall, onFlag }: Props) {
  return flags.map((flag) => {
    const { finding, letter, heading } = flag
    if (wall === null) return <Drawn key={finding.id} flag={flag} pen={pen} />
    return (
      <a
        key={finding.id}
        id={flagId(finding.id)}
        className="flag"
        href={`#paper/${findingWords(wall, finding.id)}`}
        aria-label={`${letter}: ${heading}`}
        onClick={() => onFlag?.(finding.id)}
      >
        <Drawn flag={flag} pen={pen} />
      </a>
    )
  })
}

function Drawn({ flag, pen: { step, text } }: { readonly flag: Flag; readonly pen: Pen }) {
  const { x, y, w, h, atX, atY, letter, finding } = flag
  const [cx, cy] = [x + w / 2, y + h / 2]
  const isStop = finding.weight === 'stop'
  return (
    <>
      {atY !== null && (
        <g stroke={COLORS.ink} strokeWidth={step}>
          <path d={`M${cx} ${cy}L${atX} ${atY}`} />
          <circle cx={atX} cy={atY} r={2.4 * step} fill={COLORS.ink} />
        </g>
      )}
      <rect
        x={x}
        y={y}
        width={w}
        height={h}
        fill={isStop ? COLORS.refused : COLORS.ink}
        stroke={COLORS.paper}
        strokeWidth={1.5 * step}
      />
      <text
        x={cx}
        y={cy + text * 0.3}
        textAnchor="middle"
        fontSize={text * (letter.length > 1 ? 0.75 : 0.92)}
        fontWeight="700"
        fill={COLORS.paper}
      >
        {letter}
      </text>
    </>
  )
}
