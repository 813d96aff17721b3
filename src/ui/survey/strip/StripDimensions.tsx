import type { Piece } from './strip'

interface Props {
  readonly pieces: readonly Piece[]
  /** Where down the drawing it runs. */
  readonly at: number
  /** Millimetres to a unit of the drawing. */
  readonly mm: number
  readonly letter: (mm: number) => string
}

/** Room for one letter of a figure. */
const LETTER = 9.8

interface Figure extends Piece {
  readonly said: string
  /** How far under the string, in rows; undefined where it has room in none. */
  readonly row: 0 | 1 | undefined
}

/** What is lettered at each piece: in the first row where it has room, else in the second where it touches no other. */
function figuresOf({ pieces, mm, letter }: Props): readonly Figure[] {
  let end = Number.NEGATIVE_INFINITY
  return pieces.map((piece) => {
    const said = piece.isKnown ? letter(piece.to - piece.from) : '?'
    const [room, wide] = [(piece.to - piece.from) / mm, said.length * LETTER]
    const left = (piece.from + piece.to) / 2 / mm - wide / 2
    if (room > wide) return { ...piece, said, row: 0 }
    if (left < end + 4) return { ...piece, said, row: undefined }
    end = left + wide
    return { ...piece, said, row: 1 }
  })
}

/** A string of dimensions: a stroke at each end of a piece, its length under it; what is not known dashed, with a ?. */
export function StripDimensions(props: Props) {
  const { at, mm } = props
  return (
    <g className="string">
      {figuresOf(props).map(({ from, to, unit, isKnown, said, row }) => (
        <g key={`${from} ${unit}`} className={unit === null ? 'rest' : 'part'}>
          <path className={isKnown ? '' : 'open'} d={`M${from / mm} ${at}H${to / mm}`} />
          <path d={`M${from / mm - 4} ${at + 4}l8 -8M${to / mm - 4} ${at + 4}l8 -8`} />
          {row !== undefined && (
            <text x={(from + to) / 2 / mm} y={at + 18 + row * 17} textAnchor="middle">
              {said}
            </text>
          )}
        </g>
      ))}
    </g>
  )
}
