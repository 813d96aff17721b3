import type { Option } from '../../../core/form/field'
import { listAt, thingAt } from '../../../core/form/things'
import { useApp } from '../../app-context'
import { Select, useThings } from './Choices'
import { TypedInput } from './TypedInput'
import { useFact } from './use-fact'

/** Positions as they are measured: along a wall, up or down from a line, out from a wall, beside a neighbour. */

interface Props {
  readonly id: string
  readonly path: string
  readonly label: string
  readonly describedBy?: string | undefined
}

type Record = Readonly<{ [key: string]: unknown }>
const recordOf = (value: unknown): Record =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Record) : {}

export const ALONG_WAYS: readonly Option[] = [
  ['left', 'from the left end'],
  ['right', 'from the right end'],
]
export const HEIGHT_WAYS: readonly Option[] = [
  ['up', 'above the line'],
  ['down', 'below the line'],
  ['aboveFloor', 'above the floor'],
]

/** Distance from an end of the wall, on either side of it. */
export function AlongInput({ id, path, label }: Props) {
  const { value, set } = useFact(path)
  const along = recordOf(value)
  return (
    <span className="position">
      <TypedInput id={id} path={`${path}.at`} sort="length" label={label} />
      <Select
        id={`${id}-from`}
        path={path}
        part="from"
        label={`${label}: measured from`}
        options={ALONG_WAYS}
        value={along['from'] === 'right' ? 'right' : 'left'}
        onChoose={(from) => set(said({ ...along, from }))}
      />
      {mayBeOnOtherSide(path, along) && (
        <Select
          id={`${id}-face`}
          path={path}
          part="face"
          label={`${label}: measured on`}
          options={[
            ['room', 'this side'],
            ['other', 'the other side'],
          ]}
          value={along['face'] === 'other' ? 'other' : 'room'}
          onChoose={(face) => set(said({ ...along, face }))}
        />
      )}
    </span>
  )
}

/** Without what holds anyway: the left end, this side. */
function said(along: Record): Record {
  return Object.fromEntries(
    Object.entries(along).filter(
      ([key, value]) => !(key === 'from' && value === 'left') && !(key === 'face' && value === 'room'),
    ),
  )
}

/** Where it is asked on which side a place was measured: elsewhere it is this one, or goes with what it belongs to. */
function mayBeOnOtherSide(path: string, along: Record): boolean {
  return along['face'] === 'other' ? !path.includes('.accessories.') : path.includes('.points.')
}

const WAYS = ['up', 'down', 'aboveFloor'] as const
type Way = (typeof WAYS)[number]

/** A height: above or below a line, or above the floor there. */
export function HeightInput({ id, path, label }: Props) {
  const { value, set } = useFact(path)
  const height = recordOf(value)
  const lines = listAt(
    useApp((s) => thingAt(s.kitchen, 'lines')),
    '',
  )
  const way = WAYS.find((key) => height[key] !== undefined && height[key] !== null) ?? shownWay(height)
  const choose = (to: string) => {
    const rest = Object.fromEntries(Object.entries(height).filter(([key]) => !WAYS.includes(key as Way)))
    set({ ...rest, [to]: height[way] ?? null })
  }
  return (
    <span className="position">
      <TypedInput id={id} path={`${path}.${way}`} sort="length" label={label} />
      <Select
        id={`${id}-way`}
        path={path}
        part="way"
        label={`${label}: measured`}
        options={HEIGHT_WAYS}
        value={way}
        onChoose={choose}
      />
      {lines.length > 1 && way !== 'aboveFloor' && (
        <Select
          id={`${id}-line`}
          path={path}
          part="line"
          label={`${label}: which line`}
          options={lines.map((line) => [String(line['id']), String(line['id'])] as const)}
          value={String(height['line'] ?? lines[0]?.['id'] ?? '')}
          onChoose={(line) => set({ ...height, line })}
        />
      )}
    </span>
  )
}

/** The way a height that has no figure yet was going to be measured. */
const shownWay = (height: Record): Way => WAYS.find((key) => key in height) ?? 'up'

/** A place on the plan: along a wall and out from it. */
export function PlaceInput({ id, path, label }: Props) {
  const { value, set } = useFact(path)
  const walls = useThings(['walls'])
  const place = recordOf(value)
  return (
    <span className="position">
      <Select
        id={id}
        path={path}
        part="wall"
        label={`${label}: which wall`}
        options={place['wall'] === undefined ? [['', 'no wall named'], ...walls] : walls}
        value={String(place['wall'] ?? '')}
        onChoose={(wall) => set({ along: {}, ...place, wall })}
      />
      {place['wall'] !== undefined && (
        <>
          <AlongInput id={`${id}-along`} path={`${path}.along`} label={`${label}: along the wall`} />
          <span className="and">out from it</span>
          <TypedInput
            id={`${id}-out`}
            path={`${path}.out`}
            sort="length"
            label={`${label}: out from the wall`}
          />
        </>
      )}
    </span>
  )
}

/** Where along a wall something stands: measured from a corner, or beside what stands next to it. */
export function OrderInput({ id, path, label }: Props) {
  const { value, set } = useFact(path)
  const order = recordOf(value)
  const own = path.split('.').at(-2)
  const neighbours = useThings(['units', 'finishing']).filter(([mark]) => mark !== own)
  const way = 'rightOf' in order ? 'rightOf' : 'leftOf' in order ? 'leftOf' : 'left' in order ? 'left' : ''
  const choose = (to: string) => {
    if (to === '') set(null)
    else if (to === 'left') set({ left: {} })
    else set({ [to]: order['rightOf'] ?? order['leftOf'] ?? neighbours[0]?.[0] ?? null })
  }
  return (
    <span className="position">
      <Select
        id={id}
        path={path}
        part="way"
        label={label}
        options={[
          ...(way === '' ? ([['', 'not said yet']] as const) : []),
          ['left', 'with its left side'],
          ...(neighbours.length > 0
            ? ([
                ['rightOf', 'to the right of'],
                ['leftOf', 'to the left of'],
              ] as const)
            : []),
        ]}
        value={way}
        onChoose={choose}
      />
      {way === 'left' && <AlongInput id={`${id}-left`} path={`${path}.left`} label={`${label}: left side`} />}
      {(way === 'rightOf' || way === 'leftOf') && (
        <>
          <Select
            id={`${id}-beside`}
            path={path}
            part="beside"
            label={`${label}: beside`}
            options={neighbours}
            value={String(order[way] ?? '')}
            onChoose={(to) => set({ ...order, [way]: to })}
          />
          {path.startsWith('units.') && (
            <>
              <span className="and">with a gap of</span>
              <TypedInput
                id={`${id}-gap`}
                path={`${path}.gap`}
                sort="length"
                label={`${label}: gap`}
                open="0: touching"
              />
            </>
          )}
        </>
      )}
    </span>
  )
}
