import { lazy, type ReactNode, Suspense, useId, useState } from 'react'
import { hasValue } from '../../core/figure'
import type { NamedFigure, Plan } from '../../core/plan/types'
import { openInSight } from '../bring-into-view'
import { shownFigure } from '../shown-figure'
import { words } from '../words'
import { figureGroups } from './figure-groups'
import { type HoleGroup, holeRows, type UnitHoles } from './hole-rows'

/** What a figure stands on comes after the first step; where the line fails, the step itself stays. */
const StandsOn = lazy(() =>
  import('./StandsOn').then(
    (m) => ({ default: m.StandsOn }),
    () => ({ default: () => <p>This could not be fetched. Open the page again when there is a line.</p> }),
  ),
)

interface Props {
  readonly figures: readonly NamedFigure[]
  readonly plan: Plan
}

interface Asking {
  readonly asked: string | null
  readonly onAsk: (name: string) => void
  readonly answerId: string
}

/** A list longer than this is cut there until somebody asks for the rest. */
const SHOWN = 6

/** The figures of an operation: large ones, lists, holes by their height; each tells on a tap what it stands on. */
export function SlipFigures({ figures, plan }: Props) {
  const [asked, setAsked] = useState<string | null>(null)
  const answerId = useId()
  if (figures.length === 0) return null
  const { onWall, inUnit, others } = holeRows(figures)
  const { large, listed } = figureGroups(others)
  const told = figures.find((f) => f.name === asked)
  const asking = { asked, answerId, onAsk: (name: string) => setAsked(name === asked ? null : name) }
  return (
    <div className="slip-figures">
      {large.length > 0 && (
        <ul aria-label="Figures" className="large">
          <FigureItems figures={large} asking={asking} />
        </ul>
      )}
      {inUnit.rows.length > 0 && <HolesInUnit holes={inUnit} asking={asking} />}
      {onWall.length > 0 && (
        <HolesOnWall groups={onWall} asking={asking} isBehindUnit={inUnit.rows.length > 0} />
      )}
      {listed.length > 0 && <FigureList listed={listed} asking={asking} />}
      <div id={answerId} className="stands-on" aria-live="polite">
        {told !== undefined && (
          <Suspense fallback={<p>On its way.</p>}>
            <div key={told.name} ref={openInSight}>
              <StandsOn told={told} plan={plan} />
            </div>
          </Suspense>
        )}
      </div>
    </div>
  )
}

/** Figures with what each is, one item of a list each. */
function FigureItems({
  figures,
  asking,
}: {
  readonly figures: readonly NamedFigure[]
  readonly asking: Asking
}) {
  return figures.map((named) => (
    <li key={named.name}>
      <FigureButton named={named} asking={asking} isLarge>
        <span className="label">{words(named.label)}</span>
      </FigureButton>
    </li>
  ))
}

/** Figures of one kind, a line each. */
function FigureList({
  listed,
  asking,
}: {
  readonly listed: readonly NamedFigure[]
  readonly asking: Asking
}) {
  const [isWhole, setWhole] = useState(false)
  const isCut = !isWhole && listed.length > SHOWN + 2
  const shown = isCut ? listed.slice(0, SHOWN) : listed
  return (
    <>
      <ul aria-label="Figures of one kind" className="listed">
        <FigureItems figures={shown} asking={asking} />
      </ul>
      {isCut && (
        <button type="button" className="link" onClick={() => setWhole(true)}>
          {listed.length - shown.length} more figures
        </button>
      )}
    </>
  )
}

/** Holes on the wall: each height, and depth, said once, then how far along each of its holes is. */
function HolesOnWall({
  groups,
  asking,
  isBehindUnit,
}: {
  readonly groups: readonly HoleGroup[]
  readonly asking: Asking
  readonly isBehindUnit: boolean
}) {
  const hasDepth = groups.some((g) => g.depth !== null)
  const isAssumed = groups.some((g) => [g.height, g.depth].some((named) => named?.figure.state === 'assumed'))
  return (
    <div className="holes-on-wall">
      {isBehindUnit && <p className="key">On the wall behind it</p>}
      {groups.map(({ height, depth, holes }) => (
        <section key={holes[0]?.hole}>
          <p className="at">
            {height !== null && (
              <>
                <FigureButton named={height} asking={asking} /> mm from the line
              </>
            )}
            {depth !== null && (
              <>
                {height === null ? '' : ', '}
                <FigureButton named={depth} asking={asking} /> mm deep
              </>
            )}
          </p>
          <ul aria-label="Holes, from the left corner">
            {holes.map(({ hole, along }) => (
              <li key={hole}>
                <span className="hole">{hole}</span>
                {along !== null && <FigureButton named={along} asking={asking} />}
              </li>
            ))}
          </ul>
        </section>
      ))}
      <p className="key">
        Number of the hole, then mm from the left corner.{hasDepth && ' Depth from the face.'}
        {isAssumed && ' Underlined with dashes: assumed.'}
      </p>
    </div>
  )
}

/** Holes through a unit that is in its place: what is measured inside it, one row a hole. */
function HolesInUnit({ holes, asking }: { readonly holes: UnitHoles; readonly asking: Asking }) {
  return (
    <table className="hole-figures">
      <caption>Measured in the unit</caption>
      <thead>
        <tr>
          <th scope="col">hole</th>
          {holes.heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {holes.rows.map(({ hole, cells }) => (
          <tr key={hole}>
            <th scope="row">{hole}</th>
            {cells.map((named, i) => (
              <td key={holes.heads[i]}>
                {named === null ? null : <FigureButton named={named} asking={asking} />}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

interface ButtonProps {
  readonly named: NamedFigure
  readonly asking: Asking
  readonly isLarge?: boolean
  readonly children?: ReactNode
}

function FigureButton({ named, asking, isLarge = false, children }: ButtonProps) {
  return (
    <button
      type="button"
      aria-expanded={named.name === asking.asked}
      aria-controls={asking.answerId}
      onClick={() => asking.onAsk(named.name)}
    >
      <FigureLine named={named} withUnit={isLarge} />
      {children ?? <span className="visually-hidden">{words(named.label)}</span>}
    </button>
  )
}

function FigureLine({
  named: { label, figure },
  withUnit,
}: {
  readonly named: NamedFigure
  readonly withUnit: boolean
}) {
  if (!hasValue(figure)) return <span className="not-known">not known yet</span>
  const { number, unit } = shownFigure(label.key, figure)
  return (
    <>
      <span className={figure.state === 'assumed' ? 'number assumed' : 'number'}>
        {number}
        {withUnit && unit !== '' && <small> {unit}</small>}
      </span>
      {figure.state === 'assumed' && <span className={withUnit ? 'how' : 'visually-hidden'}> (assumed)</span>}
    </>
  )
}
