import { useMemo, useState } from 'react'
import { operationOf, placesOf } from '../../core/plan/findings-at'
import { WEIGHTS } from '../../core/plan/gravest-first'
import type { Finding, Plan, Weight } from '../../core/plan/types'
import { groupedNumber, signedNumber } from '../../core/words/format'
import { wallName } from '../../core/words/plan-names'
import { upperFirst } from '../../core/words/upper-first'
import { useApp } from '../app-context'
import { findingPlace } from '../paper/sheets'
import { keyOf, words } from '../words'
import { actionFirst } from './action'
import { type Alike, alikeOf, type OneOf } from './alike'
import { WEIGHT_WORDS } from './weights'

const MEANING: Readonly<Record<Weight, string>> = {
  stop: 'work does not go on until this is put right',
  ask: 'somebody has to settle this first',
  warn: 'it can be done; know it beforehand',
  note: 'worth knowing',
}

interface Props {
  readonly findings: readonly Finding[]
  readonly plan: Pick<Plan, 'walls' | 'units'>
  /** Notes, and in the hand whatever neither stops the work nor can hurt someone, are one line until asked for. */
  readonly folds?: boolean
}

/** Findings by weight, the gravest first; alike ones under one heading; within a weight what can hurt someone first. */
export function FindingList({ findings, plan, folds = false }: Props) {
  return WEIGHTS.map((weight) => {
    const groups = alikeOf(findings, weight)
    if (groups.length === 0) return null
    return (
      <section key={weight} className="finding-group">
        <h3>
          <span className={weight === 'stop' ? 'stop' : undefined}>{WEIGHT_WORDS[weight]}</span>{' '}
          <span className="count">{groups.reduce((sum, g) => sum + g.each.length, 0)}</span>
          <span className="quiet"> {MEANING[weight]}</span>
        </h3>
        <ul className="findings">
          {groups.map((group) => (
            <li key={group.each.map((e) => e.finding.id).join()}>
              {folds ? <Folded group={group} plan={plan} /> : <Open group={group} plan={plan} />}
            </li>
          ))}
        </ul>
      </section>
    )
  })
}

interface GroupProps {
  readonly group: Alike
  readonly plan: Props['plan']
}

function Open({ group, plan }: GroupProps) {
  return (
    <>
      <h4>
        <Heading group={group} />
      </h4>
      <Body group={group} plan={plan} />
    </>
  )
}

const isInHand = () => window.matchMedia?.('(max-width: 48em)').matches ?? false

function Folded({ group, plan }: GroupProps) {
  const isGrave = group.weight === 'stop' || group.dangerous
  const [isOpen] = useState(() => isGrave || (group.weight !== 'note' && !isInHand()))
  return (
    <details open={isOpen}>
      <summary>
        <h4>
          <Heading group={group} />
        </h4>
      </summary>
      <Body group={group} plan={plan} />
    </details>
  )
}

function Heading({ group }: { readonly group: Alike }) {
  return (
    <>
      {group.heading}
      {group.each.length > 1 && <span className="count"> ({group.each.length})</span>}
      {group.dangerous && <span className="hurts">Can hurt someone.</span>}
    </>
  )
}

function Body({ group, plan }: GroupProps) {
  const { each, common, commonAsk, basis } = group
  const [only] = each
  // An ask begins with what is to be done.
  const isAsk = group.weight === 'ask'
  const isDoneEach = isAsk && commonAsk === null
  return (
    <div className="said">
      {isAsk && commonAsk !== null && (
        <p>
          <strong>{commonAsk}</strong>
        </p>
      )}
      {each.length === 1 && only !== undefined ? (
        <div data-finding={only.finding.id}>
          <OneSaid one={only} plan={plan} isAsk={isDoneEach} />
        </div>
      ) : (
        <ul className="places-of">
          {each.map((one) => (
            <li key={one.finding.id} data-finding={one.finding.id}>
              <OneSaid one={one} plan={plan} isAsk={isDoneEach} />
            </li>
          ))}
        </ul>
      )}
      {common !== '' && <p>{common}</p>}
      {!isAsk && commonAsk !== null && <p className="who">{commonAsk}</p>}
      <p className="basis">{basis}</p>
    </div>
  )
}

interface OneProps {
  readonly one: OneOf
  readonly plan: Props['plan']
  /** It begins with what is to be done. */
  readonly isAsk: boolean
}

function OneSaid({ one, plan, isAsk }: OneProps) {
  const { action, rest } = isAsk ? actionFirst(one.own, one.ask) : { action: null, rest: one.own }
  return (
    <>
      {action !== null && (
        <p>
          <strong>{action}</strong>
        </p>
      )}
      {rest !== '' && <p>{rest}</p>}
      {!isAsk && one.ask !== null && <p className="who">{one.ask}</p>}
      <WaysOut finding={one.finding.id} />
      <Where finding={one.finding} plan={plan} />
    </>
  )
}

/** Ways out, cheapest first, each of which a plan was made with. They come in after the plan. */
function WaysOut({ finding }: { readonly finding: string }) {
  const ways = useApp((s) => s.ways[finding])
  if (ways === undefined || ways.length === 0) return null
  return (
    <ul className="ways-out">
      {ways.map((way) => (
        <li key={keyOf(way.say)}>
          <span className="quiet">Way out:</span> {words(way.say)}{' '}
          <span className="quiet">Costs {way.cost}; a plan made with it holds.</span>
        </li>
      ))}
    </ul>
  )
}

/** Where it is: a way to its place on the drawing of its wall, and to its flag in the room. */
function Where({ finding, plan }: { readonly finding: Finding; readonly plan: Props['plan'] }) {
  const { where } = finding
  const whole = useApp((s) => s.plan)
  const room = useMemo(() => (whole === null ? null : inTheRoom(whole, finding)), [whole, finding])
  const text = where === null ? '' : whereText(where, plan)
  // Without a plan there is no sheet to lead to.
  if (where !== null && plan.walls.length === 0) return <p className="quiet">{upperFirst(text)}</p>
  if (where === null && room === null) return null
  return (
    <p>
      {where !== null && <a href={`#paper/${findingPlace(where.wall, finding.id)}`}>{text}</a>}
      {room !== null && (
        <span className="no-print">
          {where === null ? '' : ' · '}
          <a href={room}>See it in the room</a>
        </span>
      )}
    </p>
  )
}

/** The address of its flag, at the step it is best looked at; null: it has no place in the room. */
function inTheRoom(plan: Plan, finding: Finding): string | null {
  const operation = placesOf(plan, finding).length === 0 ? undefined : operationOf(plan, finding)
  return operation === undefined ? null : `#rehearse/${operation.id}/${encodeURI(finding.id)}`
}

/** "Hall partition, 2540 mm from its left corner, +392 mm from the line". */
export function whereText(
  { wall, along, height }: NonNullable<Finding['where']>,
  plan: Pick<Plan, 'walls'>,
): string {
  return [
    wallName(wall, plan),
    ...(along === null ? [] : [`${groupedNumber(along)} mm from its left corner`]),
    ...(height === null ? [] : [`${signedNumber(Math.round(height))} mm from the line`]),
  ].join(', ')
}
