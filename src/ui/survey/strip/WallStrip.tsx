import { type KeyboardEvent, memo, useDeferredValue, useMemo } from 'react'
import { listAt, thingAt } from '../../../core/form/things'
import { type Display, groupedNumber, inches } from '../../../core/words/format'
import { useActions, useApp } from '../../app-context'
import { StripDimensions } from './StripDimensions'
import {
  type Patch,
  piecesOf,
  SKETCH,
  STAND_IN,
  type StripUnit,
  type StripWall,
  type Sum,
  stripOf,
  sumOf,
} from './strip'

/** Millimetres of wall to a unit of the drawing: letters of 16 stand beside a unit of 300 without touching. */
const MM = 9
/** What is lettered over and under the walls. */
const OVER = 122
const UNDER = 66
const y = (up: number): number => -up / MM

/** The page it stands on, and the list that is chosen from there. */
type Chosen = 'walls' | 'units'

/** How a length is lettered: as the kitchen shows its lengths. */
type Letter = (mm: number) => string

interface Shared {
  readonly of: Chosen
  readonly letter: Letter
  /** Height of the drawing, mm from the line. */
  readonly top: number
}

/**
 * All walls in one strip, as one stands inside and turns to the right: as typed, with a string of dimensions under what
 * stands and over what hangs. Choosing a wall or a unit in it opens its form.
 */
export function WallStrip({ of }: { readonly of: Chosen }) {
  const kitchen = useApp((s) => s.kitchen)
  // It follows what is typed, and never keeps a letter waiting.
  return <Strip of={of} kitchen={useDeferredValue(kitchen)} />
}

const Strip = memo(({ of, kitchen }: { readonly of: Chosen; readonly kitchen: unknown }) => {
  const strip = useMemo(() => stripOf(kitchen), [kitchen])
  if (strip.walls.length === 0) return null
  const display: Display = thingAt(kitchen, 'display') === 'inch' ? 'inch' : 'mm'
  const letter: Letter = (mm) => (display === 'inch' ? inches(mm) : groupedNumber(mm))
  const [over, width] = [y(strip.top) - OVER, strip.width / MM + 16]
  const height = y(SKETCH.floor) + UNDER - over
  return (
    <figure className="wall-strip">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard */}
      <section className="scroll" aria-label="The walls in one strip" tabIndex={0}>
        {/* biome-ignore lint/a11y/useSemanticElements: there is no other word for a group of drawn buttons */}
        <svg
          viewBox={`-8 ${over} ${width} ${height}`}
          width={width}
          height={height}
          role="group"
          aria-label="The walls from inside, left to right. Arrow keys go from one thing to the next."
          onKeyDown={goAlong}
        >
          {strip.walls.map((wall) => (
            <OneWall key={wall.id} wall={wall} of={of} letter={letter} top={strip.top} />
          ))}
        </svg>
      </section>
      <figcaption className="quiet">
        From inside, left to right, folded out at the corners. Dashed: not known yet, or on the other side of
        the wall. Heights are only sketched here.
        {hasStandIn(strip.walls) &&
          ` Where there is a ?, a wall is drawn ${letter(STAND_IN.wall)} long or more, a unit ${letter(STAND_IN.unit)} wide.`}
        <ul>
          {strip.walls.map((wall) => (
            <Sums key={wall.id} wall={wall} letter={letter} />
          ))}
        </ul>
      </figcaption>
    </figure>
  )
})

const hasStandIn = (walls: readonly StripWall[]): boolean =>
  walls.some((wall) => !wall.isKnown || wall.units.some((unit) => !unit.isKnown))

/** The widths together against the wall, and what could not be drawn. */
function Sums({ wall, letter }: { readonly wall: StripWall; readonly letter: Letter }) {
  const said = [
    sumSaid('standing', sumOf(wall, 'standing'), wall, letter),
    sumSaid('hanging', sumOf(wall, 'hung'), wall, letter),
    wall.missing.length === 0 ? '' : `not drawn until its place is known: ${wall.missing.join(', ')}`,
  ].filter((part) => part !== '')
  return said.length === 0 ? null : (
    <li>
      {wall.name}: {said.join('; ')}.
    </li>
  )
}

function sumSaid(how: string, sum: Sum | null, wall: StripWall, letter: Letter): string {
  if (sum === null) return ''
  if (sum.units === undefined) return `${how}, not every width is known yet`
  const { units, rest } = sum
  if (rest === undefined) return `${how} ${letter(units)}, the wall is not known yet`
  const left = rest < 0 ? `${letter(-rest)} too long` : `${letter(rest)} left over`
  return `${how} ${letter(units)} of ${letter(wall.width)}, ${left}`
}

/** Arrow keys go from one drawn button to the next; the tab key does not stop at each. */
function goAlong(event: KeyboardEvent<SVGSVGElement>) {
  const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key]
  if (by === undefined) return
  const all = [...event.currentTarget.querySelectorAll<SVGElement>('[role="button"]')]
  const at = all.findIndex((one) => one.contains(document.activeElement))
  const to = all[at + by]
  event.preventDefault()
  to?.focus()
}

/** What makes a drawn thing a button that opens its form: on this page, or on the page that has it. */
function useOpens(list: Chosen, id: string, label: string, of: Chosen) {
  const actions = useActions()
  const open = useApp((s) => s.chosen[list])
  const isListed = useApp((s) => listAt(s.kitchen, list).some((thing) => thing['id'] === open))
  const first = useApp((s) => listAt(s.kitchen, list)[0]?.['id'])
  const isOpen = id === (isListed ? open : first)
  const isChosen = isOpen && list === of
  const choose = () => {
    actions.choose(list, id)
    if (list !== of) window.location.hash = `#survey/${list}`
    else requestAnimationFrame(() => headOf(list, id)?.scrollIntoView?.({ block: 'nearest' }))
  }
  const props = {
    role: 'button',
    // One stop of the tab key among the walls, one among the units.
    tabIndex: isOpen ? 0 : -1,
    'aria-label': label,
    'aria-pressed': isChosen,
    'data-strip': `${list}.${id}`,
    onClick: choose,
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key !== 'Enter' && event.key !== ' ') return
      event.preventDefault()
      choose()
    },
  } as const
  return { isChosen, props }
}

/** The head of a thing's form. */
const headOf = (list: Chosen, id: string): Element | null =>
  document.querySelector(`[data-mark-of="${CSS.escape(`${list}.${id}`)}"]`)?.closest('.thing-head') ?? null

function OneWall({ wall, of, letter, top }: { readonly wall: StripWall } & Shared) {
  const label = `${wall.name}, ${wall.isKnown ? letter(wall.width) : 'length not known'}`
  const { isChosen, props } = useOpens('walls', wall.id, label, of)
  const right = wall.width / MM
  const whole = { from: 0, to: wall.width, unit: null, isKnown: wall.isKnown }
  return (
    <g transform={`translate(${wall.x / MM} 0)`} className={isChosen ? 'wall chosen' : 'wall'}>
      <g {...props}>
        <rect className="face" x={0} y={y(top)} width={right} height={y(SKETCH.floor) - y(top)} />
        <text className="name" x={right / 2} y={y(top) - OVER + 18} textAnchor="middle">
          {wall.name}
        </text>
      </g>
      <Ceiling wall={wall} />
      {wall.studs.map((at) => (
        <path key={at} className="stud" d={`M${at / MM} ${y(SKETCH.floor)}v-8`} />
      ))}
      {wall.openings.map((opening) => (
        <rect
          key={opening.id}
          className={opening.hasHeight ? 'opening' : 'opening open'}
          {...rectOf(opening)}
        />
      ))}
      {wall.units.map((unit) => (
        <OneUnit key={unit.id} unit={unit} of={of} letter={letter} />
      ))}
      {wall.units.map((unit) => (
        <UnitName key={unit.id} unit={unit} />
      ))}
      {wall.outlets.map((o) => (
        <rect
          key={o.id}
          data-outlet={o.id}
          className={o.isOnOtherSide ? 'outlet other' : 'outlet'}
          x={o.x / MM - 5}
          y={y(o.up) - 5}
          width={10}
          height={10}
        />
      ))}
      <path className="line" d={`M0 ${y(0)}H${right}`} />
      <path className={wall.isKnown ? 'edge' : 'edge open'} d={`M0 ${y(SKETCH.floor)}H${right}`} />
      <path className="fold" d={`M${right} ${y(top)}V${y(SKETCH.floor)}`} />
      <StripDimensions pieces={[whole]} at={y(top) - OVER + 32} mm={MM} letter={letter} />
      <StripDimensions pieces={piecesOf(wall, 'hung')} at={y(top) - 46} mm={MM} letter={letter} />
      <StripDimensions
        pieces={piecesOf(wall, 'standing')}
        at={y(SKETCH.floor) + 18}
        mm={MM}
        letter={letter}
      />
    </g>
  )
}

const rectOf = (o: Pick<Patch, 'x' | 'width' | 'up' | 'height'>) => ({
  x: o.x / MM,
  y: y(o.up + o.height),
  width: o.width / MM,
  height: o.height / MM,
})

/** The ceiling through its readings, on level to the ends; dashed at a sketched height where there is none. */
function Ceiling({ wall }: { readonly wall: StripWall }) {
  const [first, last] = [wall.ceiling[0], wall.ceiling.at(-1)]
  const right = wall.width / MM
  if (first === undefined || last === undefined) {
    return <path className="ceiling open" d={`M0 ${y(SKETCH.ceiling)}H${right}`} />
  }
  const through = wall.ceiling.map(({ x, up }) => `L${x / MM} ${y(up)}`).join('')
  return <path className="ceiling" d={`M0 ${y(first.up)}${through}L${right} ${y(last.up)}`} />
}

function OneUnit({ unit, of, letter }: { readonly unit: StripUnit } & Omit<Shared, 'top'>) {
  const label = `${unit.id}, ${unit.isKnown ? letter(unit.width) : 'width not known'}`
  const { isChosen, props } = useOpens('units', unit.id, label, of)
  const isSure = unit.isKnown && unit.hasHeight && unit.sides.left
  return (
    <g className={`unit ${unit.level}${isChosen ? ' chosen' : ''}`} {...props}>
      <rect className={isSure ? '' : 'open'} {...rectOf(unit)} />
    </g>
  )
}

/** The mark of a unit: across, or upright where it is narrow. */
function UnitName({ unit }: { readonly unit: StripUnit }) {
  const [wide, high, long] = [unit.width / MM, unit.height / MM, unit.id.length * 9.8]
  const [middle, level] = [(unit.x + unit.width / 2) / MM, y(unit.up + unit.height / 2)]
  const isAcross = wide > long
  if (!isAcross && (high < long || wide < 18)) return null
  return (
    <text
      className="unit-name"
      textAnchor="middle"
      transform={`translate(${middle} ${level})${isAcross ? '' : ' rotate(-90)'}`}
      dy={5}
    >
      {unit.id}
    </text>
  )
}
