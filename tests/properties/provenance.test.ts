/**
 * Every figure says what it came from. Take a fact away, and what rested on it goes, and nothing else moves; change a
 * fact that an order reason cites, and the reason goes or changes; know nothing, and nothing is claimed.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { hasValue } from '../../src/core/figure'
import type { KitchenFile } from '../../src/core/kitchen/schema'
import { workThrough } from '../../src/core/plan/entry'
import type { OrderReason, Plan } from '../../src/core/plan/types'
import { english } from '../../src/core/words/en/index'
import { say } from '../../src/core/words/say'
import {
  type Before,
  type Blanked,
  beforeBlanking,
  blanked,
  compareBlanked,
  type Fault,
  planOrWhy,
} from '../support/blanking'
import { knownFacts, withoutFact } from '../support/facts'
import { mutantsOf, patternOf } from '../support/mutations'
import { messagesIn } from '../support/plan-properties'
import { type Scene, sceneFile } from '../support/scene-sheets'

const LONG = process.env['DRYRUN_LONG'] === '1'

function planOf(file: KitchenFile): Plan {
  const outcome = planOrWhy(file)
  if ('why' in outcome) throw new Error(outcome.why)
  return outcome.plan
}

// ------------------------------------------------------------------------------------------------ facts taken away

/**
 * Bands that are drawn whether the fact is known or not, because what is not known is taken for the worse: a corner
 * whose angle nobody has read counts as an inside corner, a wall of unknown thickness as a thin one.
 */
function isTakenForTheWorse({ fact, name, what, was, is }: Fault): boolean {
  if (what !== 'kept its value' || was !== is) return false
  const corner = name.startsWith('bands/corner.') && fact.includes('.cornerRight.')
  const thin = /^bands\/accessory-(vertical|horizontal)\./.test(name) && fact.endsWith('.thickness')
  return corner || thin
}

function grouped(faults: readonly Fault[]): readonly string[] {
  const groups = new Map<string, Fault[]>()
  for (const fault of faults) {
    const name = fault.name
      .split('/')
      .map((part, i) => (i === 1 || /\d/.test(part) ? '#' : part))
      .join('/')
    const key = `${fault.what}: ${name}, without ${patternOf(fault.fact)}`
    groups.set(key, [...(groups.get(key) ?? []), fault])
  }
  return [...groups]
    .sort((a, b) => b[1].length - a[1].length)
    .map(
      ([key, its]) =>
        `${its.length} × ${key} (${its[0]?.fact} → ${its[0]?.name}: ${its[0]?.was}, then ${its[0]?.is})`,
    )
}

interface Taken {
  readonly faults: readonly Fault[]
  readonly worse: number
  readonly said: string
}

/** Takes away every surveyed fact: those that a figure cites one at a time, those that none cites all at once. */
function takeAway(scene: Scene): Taken {
  const file = sceneFile(scene)
  const before = beforeBlanking(planOf(file))
  const cited = new Set([...before.figures.values()].flatMap((f) => [...f.from]))
  const facts = knownFacts(file)
  const rounds = [
    facts.filter((id) => !cited.has(id)),
    ...facts.filter((id) => cited.has(id)).map((id) => [id]),
  ]
  const results = rounds.map((ids) => without(file, ids, before))
  const all = results.flatMap((r) => r.faults)
  const faults = all.filter((f) => !isTakenForTheWorse(f))
  const sum = (of: (b: Blanked) => number) => results.reduce((total, r) => total + of(r), 0)
  const said = `${scene}: ${facts.length} surveyed facts, ${rounds.length - 1} of them cited by ${before.figures.size} figures; taken away, ${sum((r) => r.unknown)} figures became unknown, ${sum((r) => r.gone)} went, ${sum((r) => r.elsewhere)} rest on something else, ${sum((r) => r.whole)} went with their hole, line, finding or operation; ${all.length - faults.length} edges of bands stay, being taken for the worse`
  return { faults, worse: all.length - faults.length, said }
}

function without(file: KitchenFile, ids: readonly string[], before: Before): Blanked {
  const { outcome } = blanked(file, ids)
  const [fact = ''] = ids
  if ('why' in outcome) {
    const fault: Fault = { fact, name: 'plan', what: 'gone', was: 'a plan', is: outcome.why }
    return { faults: [fault], unknown: 0, gone: 0, elsewhere: 0, whole: 0 }
  }
  return compareBlanked(fact, before, beforeBlanking(outcome.plan))
}

test.each(['one-wall', 'l-shape'] as const)(
  '%s: without a fact what rested on it is unknown, and nothing else moves',
  (scene) => {
    const taken = takeAway(scene)
    console.log(taken.said)
    expect(grouped(taken.faults)).toEqual([])
  },
  300_000,
)

// ------------------------------------------------------------------------------------------------ nothing known

/** Words that would say that something is well. Whoever is asked, or told to make it so, may hear them. */
const WELL =
  /\b(safe|safely|fine|harmless|all right|no danger|no risk|nothing to fear|cannot go wrong|is clear)\b/i
const NOT_A_CLAIM = [/^fine saw$/, /\?$/]

function claims(words: string): boolean {
  return WELL.test(words) && !NOT_A_CLAIM.some((pattern) => pattern.test(words))
}

test('no sentence of the tool says that something is well', () => {
  expect(Object.keys(english).length).toBeGreaterThan(100)
  expect(Object.values(english).filter(claims)).toEqual([])
})

/** Every surveyed quantity taken away. */
function nothingMeasured(scene: Scene): KitchenFile {
  const file = sceneFile(scene)
  return knownFacts(file).reduce((f, id) => withoutFact(f, id), file)
}

/** Every quantity of the file taken away, and every choice a survey or a sheet makes. */
function nothingKnown(scene: Scene): KitchenFile {
  const file = sceneFile(scene)
  const parts = [
    'survey',
    'lines',
    'walls',
    'ceiling',
    'boxes',
    'floor',
    'units',
    'rails',
    'appliances',
    'finishing',
    'worktops',
    'fixings',
  ] as const
  const bare = knownFacts(file, parts).reduce((f, id) => withoutFact(f, id), file)
  return {
    ...bare,
    region: null,
    closed: null,
    survey: {},
    fixings: [],
    walls: (bare.walls ?? []).map(({ id, length, cornerRight }) => ({ id, length, cornerRight })),
    units: (bare.units ?? []).map(({ id, kind, wall, order }) => ({ id, kind, wall, order })),
  }
}

const NO_WALLS: KitchenFile = { format: 'dryrun-kitchen', version: 1, name: 'Nothing yet', region: 'uk' }

const EMPTY: readonly (readonly [string, () => KitchenFile])[] = [
  ['one-wall with nothing measured', () => nothingMeasured('one-wall')],
  ['l-shape with nothing measured', () => nothingMeasured('l-shape')],
  ['l-shape with nothing known at all', () => nothingKnown('l-shape')],
  ['no walls', () => NO_WALLS],
]

describe.each(EMPTY)('%s', (_, fileOf) => {
  let plan: Plan
  beforeAll(() => {
    plan = planOf(fileOf())
  })

  test('says what to measure next, what settles most first', () => {
    expect(plan.measureNext.length).toBeGreaterThan(0)
    const settles = plan.measureNext.map((m) => m.settles)
    expect(settles).toEqual([...settles].sort((a, b) => b - a))
  })

  test('never says that something is well', () => {
    const said = [...new Set(messagesIn(plan).map((m) => say(m)))]
    expect(said.filter(claims)).toEqual([])
  })

  test('lets no hole be drilled', () => {
    const drilled = plan.holes.filter((h) => h.verdict !== 'ask' && h.verdict !== 'refused')
    expect(drilled.map((h) => `${h.id}: ${h.verdict}`)).toEqual([])
  })

  test('names no number of people for a mass it does not know', () => {
    const named = plan.units.filter(
      (u) => u.kind !== 'appliance-space' && !hasValue(u.lift.massStripped) && u.lift.people !== null,
    )
    expect(named.map((u) => `${u.unit}: ${u.lift.people}`)).toEqual([])
  })

  test('finds no load within a figure it has not got', () => {
    const below = plan.units.filter((u) => u.holding?.verdict === 'below the figure you entered')
    expect(
      below.filter((u) => u.holding !== null && !hasValue(u.holding.pullPerFixing)).map((u) => u.unit),
    ).toEqual([])
  })
})

// ------------------------------------------------------------------------------------------------ reasons

interface Pair {
  readonly rule: string
  readonly input: string
  readonly reason: OrderReason
}

/** Each rule with each input it cites; unless it is the long run, one input of each pattern stands for the others. */
function pairsOf(plan: Plan): readonly Pair[] {
  const pairs = new Map<string, Pair>()
  for (const reason of plan.reasons.filter((r) => r.hard)) {
    for (const input of reason.from) {
      const key = `${reason.rule} ${LONG ? input : patternOf(input)}`
      if (!pairs.has(key)) pairs.set(key, { rule: reason.rule, input, reason })
    }
  }
  return [...pairs.values()]
}

function reasonsAfter(file: KitchenFile): readonly OrderReason[] | null {
  const outcome = workThrough(file)
  if (outcome.kind === 'refused') return null
  return outcome.kind === 'plan' ? outcome.plan.reasons : outcome.noPlan.reasons
}

/**
 * A height rests on every demand it is tied to, whether that demand sets its room or another leaves less: a fact of one
 * that sets nothing here is cited, and moves nothing.
 */
function isOfIdleDemand(plan: Plan, input: string): boolean {
  const binding = new Set(plan.heights.values.flatMap((v) => [...v.lowestBy, ...v.highestBy]))
  return plan.heights.demands.some(
    (d) => !binding.has(d.id) && [d.min, d.max].some((limit) => limit?.from.includes(input)),
  )
}

/** Of the pairs on one input, those whose reason is there, unchanged, in every world where the input is another. */
function unmoved(file: KitchenFile, input: string, pairs: readonly Pair[], plan: Plan): readonly Pair[] {
  let left = pairs
  for (const mutant of mutantsOf(file, input, plan)) {
    if (left.length === 0) break
    const reasons = reasonsAfter(mutant)
    if (reasons === null) continue
    const now = new Map(reasons.map((r) => [r.id, JSON.stringify(r)]))
    left = left.filter(({ reason }) => now.get(reason.id) === JSON.stringify(reason))
  }
  return left
}

/** The larger one by DRYRUN_LONG=1: the same is asked of it, fact by fact of each sort, in cited-facts.test.ts. */
const REASONED: readonly Scene[] = LONG ? ['one-wall', 'l-shape'] : ['one-wall']

test.each(REASONED)(
  '%s: a reason goes or changes with each fact it cites',
  (scene) => {
    const file = sceneFile(scene)
    const plan = planOf(file)
    const pairs = pairsOf(plan)
    const inputs = [...new Set(pairs.map((p) => p.input))]
    const still = inputs.flatMap((input) =>
      unmoved(
        file,
        input,
        pairs.filter((p) => p.input === input),
        plan,
      ),
    )
    const idle = still.filter((p) => isOfIdleDemand(plan, p.input))
    console.log(
      `${scene}: ${pairs.length} pairs of rule and cited fact, ${inputs.length} facts changed, ${still.length} pairs do not react, ${idle.length} of them on facts of demands that set no height here: ${[...new Set(idle.map((p) => p.input))].join(', ')}`,
    )
    expect(pairs.length).toBeGreaterThan(100)
    const others = still.filter((p) => !idle.includes(p))
    expect(others.map((p) => `${p.rule} cites ${p.input} (${p.reason.id})`)).toEqual([])
  },
  LONG ? 3_600_000 : 300_000,
)
