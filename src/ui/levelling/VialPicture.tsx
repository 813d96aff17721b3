import './vial.css'
import type { Bubble, End, Vial } from '../../core/levelling/vial'
import { bubbleText } from './level-words'

interface Props {
  readonly bubble: Bubble
  readonly vial: Vial
  /** What the ends of the picture are called, left and right. */
  readonly ends: readonly [End, End]
  /** By how much, said between them. */
  readonly by: string
  /** The level is held upright: its vial lies across it. */
  readonly isUpright?: boolean
}

/** The picture is in tenths of a millimetre of the vial. */
const SCALE = 10
/** Of the tube and of the bubble, mm. */
const TUBE = { half: 12, high: 6 }
const BUBBLE = { half: 4.5, high: 3.4 }
/** The two lines the bubble stands between stand as far out as its ends, and a little. */
const LINE = 5
const BODY = { half: 16, high: 7.4 }
/** The piece of an upright level round its vial: as wide as a level is high. */
const UPRIGHT = { half: 13, high: 9.6 }

/** The vial of a level, large: its lines and its bubble, which says the same as the words beside it. */
export function VialPicture({ bubble, vial, ends: [less, more], by, isUpright = false }: Props) {
  const body = isUpright ? UPRIGHT : BODY
  const division = vial.division.state === 'unknown' ? 2 : vial.division.value
  const lines = [LINE, LINE + division, LINE + 2 * division].flatMap((x) => [-x, x])
  return (
    <figure className="vial">
      <svg viewBox={box(BODY.half, body.high / 2)} role="img" aria-label={bubbleText(bubble)}>
        <rect className="wood" {...rect(body.half, body.high / 2)} />
        <rect className="tube" {...rect(TUBE.half, TUBE.high / 2)} rx={(TUBE.high / 2) * SCALE} />
        <g className="bubble" style={{ transform: `translateX(${bubble.offset * SCALE}px)` }}>
          <rect {...rect(BUBBLE.half, BUBBLE.high / 2)} rx={(BUBBLE.high / 2) * SCALE} />
          <path d={`M${-3 * SCALE} ${-0.9 * SCALE}H${2.2 * SCALE}`} />
        </g>
        {lines.map((x) => (
          <path
            key={x}
            className={Math.abs(x) === LINE ? 'between' : 'further'}
            d={`M${x * SCALE} ${(-TUBE.high / 2) * SCALE}V${(TUBE.high / 2) * SCALE}`}
          />
        ))}
      </svg>
      <figcaption aria-hidden="true">
        <EndName end={less} bubble={bubble} />
        <span>{by}</span>
        <EndName end={more} bubble={bubble} />
      </figcaption>
    </figure>
  )
}

function EndName({ end, bubble }: { readonly end: End; readonly bubble: Bubble }) {
  const isHigh = end === bubble.towards
  return <span className={isHigh ? 'high' : undefined}>{isHigh ? `${end}, high` : end}</span>
}

const box = (x: number, y: number): string => [-x, -y, 2 * x, 2 * y].map((v) => v * SCALE).join(' ')

const rect = (x: number, y: number) => ({
  x: -x * SCALE,
  y: -y * SCALE,
  width: 2 * x * SCALE,
  height: 2 * y * SCALE,
})
