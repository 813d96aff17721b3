import { type Figure, hasValue } from '../figure'
import { message } from '../message'
import { legName } from '../operations/leg-name'
import { why, whyNotFirst } from '../order/why'
import { studName, studsMarked } from '../units/stud-name'
import { factsSaid } from '../words/facts-said'
import { asksForHeight, figureText, isFromLine, signedNumber } from '../words/format'
import { holePurpose } from '../words/hole-purpose'
import { wallName } from '../words/plan-names'
import { say } from '../words/say'
import type {
  Finding,
  Hole,
  LiftPlan,
  NamedFigure,
  NoPlan,
  Operation,
  OperationCheck,
  OrderReason,
  Plan,
} from './types'

/** A plan as text a person can read from top to bottom: findings, heights, legs, holes, and the work in order. */
export function readablePlan(plan: Plan): string {
  return [
    `${plan.name}${plan.demo ? ' (invented)' : ''}. Plan ${plan.stamp.hash.slice(0, 12)}, rules ${plan.stamp.rules}, region ${plan.stamp.region ?? 'not chosen'}.`,
    '',
    ...section('FOUND', plan.findings.map(findingLine)),
    ...section('HEIGHTS, from the line', heightLines(plan)),
    ...section('LEGS, floor to underside', legLines(plan)),
    ...section('SHIMS, floor to underside', shimLines(plan)),
    ...section('HOLES, along from the left corner, up from the line', holeLines(plan)),
    ...section('LIFTS', liftLines(plan)),
    ...section('ORDER OF WORK', operationLines(plan)),
    ...section(
      'MEASURE NEXT',
      plan.measureNext.slice(0, 10).map((m) => say(m.say)),
    ),
    ...section(
      'NOT AS FIRST PLANNED',
      plan.changes.map((c) => say(c.say)),
    ),
  ].join('\n')
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...lines.map((l) => `  ${l}`), '']
}

function findingLine(f: Finding): string {
  const ways = f.waysOut.map((way) => `\n      Way out (${way.cost}): ${say(way.say)}`)
  return `${f.weight.toUpperCase()}${f.dangerous ? ' (dangerous)' : ''}  [${f.id}]\n      ${say(f.say)}${f.ask === null ? '' : ` ${say(f.ask)}`}${ways.join('')}`
}

function heightLines(plan: Plan): readonly string[] {
  return plan.heights.values.map((v) => {
    const ends = [v.lowest, v.highest].map((end) => (end === null ? 'open' : signedNumber(end)))
    return `${say(message(`height-name.${v.of}`))}: ${figureText(v.height, { signed: true })}  (may lie from ${ends.join(' to ')}${v.marginal ? ', marginal: measure again' : ''})`
  })
}

function legLines(plan: Plan): readonly string[] {
  return plan.units.flatMap((u) =>
    u.legs.map(
      (leg) =>
        `${u.name}, ${legName({ plan: u }, leg)}: ${figureText(leg.extension, { withPm: true })}${leg.within === 'yes' ? '' : ` (${leg.within})`}`,
    ),
  )
}

function shimLines(plan: Plan): readonly string[] {
  return plan.units.flatMap((u) =>
    (u.shims ?? []).map(
      (shim) => `${u.name}, ${legName({ plan: u }, shim)}: ${figureText(shim.height, { withPm: true })}`,
    ),
  )
}

function holeLines(plan: Plan): readonly string[] {
  return plan.holes.map((h) => {
    const number = h.number === null ? 'No hole' : `Hole ${h.number}`
    const head = `${number}, ${wallName(h.wall, plan)}, ${holeFor(plan, h)}: ${figureText(h.along)}, ${figureText(h.height, { signed: true })}, depth ${figureText(h.depth, { withPm: true })}  [${h.id}]`
    return `${head}. ${h.verdict}${h.against.length === 0 ? '' : `: ${h.against.map((m) => say(m)).join(' ')}`}`
  })
}

function liftLines(plan: Plan): readonly string[] {
  return plan.units
    .filter((u) => u.kind !== 'appliance-space')
    .map(
      (u) =>
        `${u.name}: ${figureText(u.lift.massStripped)} stripped, ${u.lift.people === null ? 'over the filter for this crew' : `${u.lift.people} to lift`}${u.lift.aid === 'none' ? '' : `, ${u.lift.aid}`}${aloneText(u.lift)}`,
    )
}

const isNothing = (figure: Figure): boolean => hasValue(figure) && figure.value === 0

/** What is recommended for one person at both ends of the lift, where the region has such a weight. */
function aloneText({ alone }: LiftPlan): string {
  if (alone === undefined) return ''
  const { lifting, placing } = alone
  if (isNothing(lifting) || isNothing(placing)) {
    return '; nothing is recommended to be lifted that high or that far by one person'
  }
  return `; recommended for one person: ${figureText(lifting)} off the floor, ${figureText(placing)} set down`
}

function operationLines(plan: Plan): readonly string[] {
  let stage = ''
  return plan.operations.flatMap((o, i) => {
    const head = o.stage === stage ? [] : [o.stage.toUpperCase()]
    stage = o.stage
    return [...head, operationLine(plan, o, i)]
  })
}

function operationLine(plan: Plan, o: Operation, i: number): string {
  const reason = plan.reasons.find((r) => r.after === o.id && r.hard)
  const lines = [
    `${String(i + 1).padStart(3)} ${say(o.title)}  [${o.id}]${o.done ? ' done' : ''}${o.holdPoint ? ' HOLD POINT' : ''}`,
    `      ${o.does.map((m) => say(m)).join(' ')}`,
    ...o.figures.map((f) => `      · ${figureLine(f)}`),
    ...o.checks.map((c) => `      ✓ ${checkLine(c)}`),
    ...o.cautions.map((c) => `      ! ${say(c.say)}`),
    ...(reason === undefined ? [] : [`      why: ${say(reason.because)}`]),
  ]
  return lines.join('\n  ')
}

function figureLine({ label, figure }: NamedFigure): string {
  return `${say(label)}: ${figureText(figure, { signed: isFromLine(label.key) })}`
}

/** What is asked, and the answer it should have: so somebody new to it can see that it is right. */
function checkLine({ ask, target, tolerance }: OperationCheck): string {
  if (target === null) return say(ask)
  const within = tolerance === null ? '' : `, within ${figureText(tolerance)}`
  return `${say(ask)} ${asksForHeight(ask.key) ? figureText(target, { signed: true }) : figureText(target)}${within}.`
}

/** What a hole is for and what it goes into, by names. */
function holeFor(plan: Plan, hole: Hole): string {
  const names = hole.for.map((id) => plan.units.find((u) => u.unit === id)?.name ?? id)
  const studs = studsMarked(plan, hole.wall)
  const into =
    hole.stud !== null && studs.some((s) => s.id === hole.stud) ? `, ${studName(studs, hole.stud)}` : ''
  return `${holePurpose(hole)} of ${names.join(', ')}${into}`
}

/** An operation by what is done, and its id: for those who ask on. */
function titled(plan: Pick<Plan, 'operations'>, id: string): string {
  const operation = plan.operations.find((o) => o.id === id)
  return operation === undefined ? id : `${say(operation.title)}  [${id}]`
}

function becauseLine(r: OrderReason): string {
  return `${say(r.because)} (${r.kind}, ${r.hard ? 'must' : `better so, ${r.cost} min`})`
}

/** Other operations, each with the reasons that tie it and what those rest on. */
function tied(plan: Plan, reasons: readonly OrderReason[], end: 'before' | 'after'): readonly string[] {
  const others = [...new Set(reasons.map((r) => r[end]))]
  return others.flatMap((other) => [
    `    ${titled(plan, other)}`,
    ...reasons
      .filter((r) => r[end] === other)
      .flatMap((r) => [
        `        ${becauseLine(r)}`,
        ...(r.from.length === 0 ? [] : [`          rests on ${factsSaid(r.from, plan)}`]),
      ]),
  ])
}

/** Why an operation stands where it does. */
export function readableWhy(plan: Plan, id: string): string {
  const answer = why(plan, id)
  if (answer === undefined) return `There is no operation ${id} in this plan.\n`
  const out = plan.reasons.filter((r) => r.before === id)
  const lines = [
    titled(plan, id),
    ...(answer.into.length === 0 ? ['  Nothing has to come before it.'] : ['  comes after']),
    ...tied(plan, answer.into, 'before'),
    ...(out.length === 0 ? [] : ['  and comes before']),
    ...tied(plan, out, 'after'),
    'Every fact by its id: --json.',
  ]
  return `${lines.join('\n')}\n`
}

/** What stands against doing an operation first. */
export function readableWhyNotFirst(plan: Plan, id: string): string {
  const answer = whyNotFirst(plan, id)
  if (answer === undefined) return `There is no operation ${id} in this plan.\n`
  if (answer.first.length === 0) return `Nothing stands against doing this first: ${titled(plan, id)}\n`
  const many = answer.first.length === 1 ? '1 operation comes' : `${answer.first.length} operations come`
  const head = [`This cannot be first: ${titled(plan, id)}`, `  ${many} before it. It waits for`]
  return `${[...head, ...tied(plan, answer.blocking, 'before')].join('\n')}\n`
}

/** Why there is no order, and what giving up would make one. */
export function readableNoPlan(no: NoPlan): string {
  const lines = ['No order is possible.']
  for (const c of no.conflicts) {
    lines.push(`  These cannot all hold: ${c.wishes.join(', ')}`)
    for (const id of c.reasons) {
      const reason = no.reasons.find((r) => r.id === id)
      if (reason !== undefined)
        lines.push(`      with ${reason.before} before ${reason.after}: ${becauseLine(reason)}`)
    }
  }
  for (const r of no.repairs) lines.push(`  A way out: give up ${r.drop.join(' and ')}`)
  for (const loop of no.loops)
    lines.push(
      '  A loop that no wish is to blame for:',
      ...loop.map((r) => `      ${r.before} before ${r.after}: ${becauseLine(r)}`),
    )
  for (const t of no.trapped) lines.push(`  ${t.unit}: ${say(t.say)}`)
  return `${lines.join('\n')}\n`
}
