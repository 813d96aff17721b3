import { type PointerEvent, type ReactNode, type RefObject, useState } from 'react'
import { sceneWords } from '../core/words/en/scene'
import { palette, roomShade } from './palette'

interface Entry {
  readonly words: keyof typeof sceneWords
  /** What the names of its parts begin with. */
  readonly parts: readonly string[]
  readonly sample: ReactNode
}

const outline = { fill: 'none', stroke: palette.ink, strokeWidth: 1.5 }

/** All the picture may hold that does not tell by itself what it is, each with a sample of it. */
const ENTRIES: readonly Entry[] = [
  {
    words: 'scene.key.place',
    parts: ['planned:', 'place:'],
    sample: (
      <rect x={5} y={2} width={22} height={16} fill="#cfdcec" stroke={palette.chalk} strokeWidth={1.5} />
    ),
  },
  {
    words: 'scene.key.line',
    parts: ['line:'],
    sample: <path d="M1 7h30M1 13h12m3 0h2m3 0h10" {...outline} />,
  },
  {
    words: 'scene.key.hole',
    parts: ['hole:'],
    sample: (
      <>
        <path d="M8 5v10M3 10h10" {...outline} />
        <circle cx={23} cy={10} r={4.5} fill={palette.brass} />
      </>
    ),
  },
  {
    words: 'scene.key.finding',
    parts: ['finding:'],
    sample: <path d="M16 2l8 8-8 8-8-8z" {...outline} />,
  },
  {
    words: 'scene.key.stud',
    parts: ['stud:', 'nogging:', 'pattress:'],
    sample: (
      <path
        d="M11 0v20M21 0v20"
        fill="none"
        stroke={palette.timberEdge}
        strokeWidth={1.5}
        strokeDasharray="4 3"
      />
    ),
  },
  {
    words: 'scene.key.band',
    parts: ['band:'],
    sample: (
      <>
        <rect x={1} y={3} width={30} height={14} fill={roomShade.band} opacity={0.2} />
        <path d="M3 17l8-14M11 17l8-14M19 17l8-14" stroke={roomShade.band} strokeWidth={2} opacity={0.6} />
      </>
    ),
  },
  {
    words: 'scene.key.service',
    parts: ['service:'],
    sample: <path d="M1 10h30" stroke={roomShade.band} strokeWidth={5} opacity={0.6} />,
  },
  {
    words: 'scene.key.accessory',
    parts: ['accessory:'],
    sample: <rect x={8} y={4} width={16} height={12} {...outline} fill={palette.paper} />,
  },
  {
    words: 'scene.key.rail',
    parts: ['rail:', 'plate:'],
    sample: <rect x={1} y={7} width={30} height={6} {...outline} fill="#c9c2b4" />,
  },
  {
    words: 'scene.key.appliance',
    parts: ['appliance:'],
    sample: (
      <rect
        x={5}
        y={3}
        width={22}
        height={14}
        {...outline}
        fill="#e3e1dc"
        stroke={palette.pencil}
        strokeDasharray="4 3"
      />
    ),
  },
  {
    words: 'scene.key.keep-clear',
    parts: ['keep-clear:'],
    sample: <path d="M3 17L9 4h20l-6 13z" {...outline} stroke={palette.pencil} strokeDasharray="5 3" />,
  },
]

interface Props {
  readonly parts: readonly string[]
  /** Open until somebody closes it, where there is room for it and the picture needs it most. */
  readonly isOpenFirst: boolean
  readonly box: RefObject<HTMLDivElement | null>
}

/** What is what in the picture: only what it holds now, behind one button. */
export function PictureKey({ parts, isOpenFirst, box }: Props) {
  const [asked, setAsked] = useState<boolean | null>(null)
  const isOpen = asked ?? isOpenFirst
  const held = ENTRIES.filter((e) => parts.some((p) => e.parts.some((begin) => p.startsWith(begin))))
  if (held.length === 0) return null
  return (
    <div className="scene-key" ref={box} onPointerDown={keepFromDragging}>
      {isOpen && (
        <ul>
          {held.map(({ words, sample }) => (
            <li key={words}>
              <svg viewBox="0 0 32 20" aria-hidden="true" focusable="false">
                {sample}
              </svg>
              {sceneWords[words]}
            </li>
          ))}
        </ul>
      )}
      <button type="button" aria-expanded={isOpen} onClick={() => setAsked(!isOpen)}>
        {sceneWords[isOpen ? 'scene.key.close' : 'scene.key']}
      </button>
    </div>
  )
}

const keepFromDragging = (event: PointerEvent) => event.stopPropagation()
