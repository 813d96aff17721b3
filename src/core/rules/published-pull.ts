import { type Figure, hasValue } from '../figure'
import { MOST_WITHOUT_CLASS, mayBeMean } from '../fixings/stud-timber'
import { EUROCODE_DIAMETERS } from '../fixings/withdrawal'
import { factId } from '../kitchen/fact-id'
import type { MessageValue } from '../message'
import { overLimit } from '../placing/over-limit'
import type { HoldingPlan, PublishedPull, UnitPlan } from '../plan/types'
import { withdrawalFormula } from '../region/withdrawal'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

interface Held {
  readonly unit: UnitPlan
  readonly holding: HoldingPlan
  readonly published: PublishedPull
}

function heldIn({ units }: Site): readonly Held[] {
  return units.flatMap((unit) => {
    const published = unit.holding?.published
    return unit.holding === null || published === undefined
      ? []
      : [{ unit, holding: unit.holding, published }]
  })
}

function screwOf({ kitchen }: Site, { screw }: PublishedPull) {
  return kitchen.fixings.find(({ id }) => id === screw)
}

function valuesOf(site: Site, { published }: Held): Readonly<Record<string, MessageValue>> {
  const { wall, screw, thread, timber } = published
  return { wall: site.name(wall), screw: screwOf(site, published)?.name ?? screw, thread, timber }
}

/** The hardest worked of the units held by one screw in one wall. */
function hardest(group: readonly Held[]): Held {
  const asked = ({ holding }: Held) => (hasValue(holding.pullPerFixing) ? holding.pullPerFixing.value : -1)
  return [...group].sort((a, b) => asked(b) - asked(a) || (a.unit.unit < b.unit.unit ? -1 : 1))[0] as Held
}

function groupsOf(held: readonly Held[]): readonly (readonly Held[])[] {
  const groups = new Map<string, Held[]>()
  for (const one of held) {
    const key = `${one.published.wall}.${one.published.screw}.${one.published.outside ?? ''}`
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()]
}

/** The figure, or which limit of the formula the screw misses: told once for one screw in one wall. */
function told(site: Site, group: readonly Held[]): readonly Found[] {
  const worst = hardest(group)
  const { published, holding, unit } = worst
  const { wall, screw, outside, pull, thread, formula } = published
  const shared = {
    subjects: [`${wall}.${screw}`],
    about: [...group.map((one) => one.unit.unit), wall],
    where: { wall },
    weight: 'note' as const,
  }
  const values = valuesOf(site, worst)
  if (outside !== null) {
    const fixing = screwOf(site, published)
    const said: Readonly<Record<string, MessageValue>> = {
      ...values,
      ...(fixing === undefined ? {} : { diameter: fixing.diameter, core: fixing.core }),
      least: EUROCODE_DIAMETERS.least,
      most: EUROCODE_DIAMETERS.most,
    }
    return [{ ...shared, said: [`outside.${outside}`, said], ask: ['ask.maker'] }]
  }
  if (pull === null || !hasValue(pull)) return []
  const asked: Figure = holding.pullPerFixing
  const key = hasValue(asked) ? formula : (`${formula}.load-not-known` as const)
  const said = { ...values, pull, ...(hasValue(asked) ? { asked, unit: unit.name } : {}) }
  return [{ ...shared, figures: [thread], said: [key, said], basis: pull.basis, ask: ['ask.maker'] }]
}

/** What is asked of one screw is more than the published figure, or too near it to tell. */
function beyond(site: Site, one: Held): readonly Found[] {
  const { unit, holding, published } = one
  const { pull } = published
  const asked = holding.pullPerFixing
  if (pull === null || !hasValue(pull)) return []
  const over = sum('N', pull.basis, [asked], [pull])
  const stands = overLimit(over)
  const within = holding.verdict === 'below the figure you entered'
  if (stands !== 'over' && (stands !== 'near' || within)) return []
  const key = stands === 'near' ? 'near' : within ? 'exceeds-not-entered' : 'exceeds'
  return [
    {
      subjects: [unit.unit],
      about: [unit.unit, published.wall],
      weight: stands === 'near' ? 'ask' : within ? 'warn' : 'stop',
      said: [key, { ...valuesOf(site, one), unit: unit.name, asked, pull }],
      figures: [over],
      where: { wall: published.wall, along: unit.left, height: unit.top },
      basis: pull.basis,
      ask: ['ask.maker'],
    },
  ]
}

/** A density without a strength class that is more than any characteristic one here: it may be the mean. */
function meanDensities(site: Site): readonly Found[] {
  if (withdrawalFormula(site.region?.id ?? null) !== 'eurocode') return []
  return site.kitchen.walls.filter(mayBeMean).map((wall): Found => {
    const { density } = wall.studTimber
    const values = { wall: site.name(wall.id), density, most: MOST_WITHOUT_CLASS }
    return {
      subjects: [wall.id],
      weight: 'ask',
      dangerous: false,
      said: ['may-be-mean', values],
      from: [factId('walls', wall.id, 'studTimber', 'grade')],
      where: { wall: wall.id },
      ask: ['ask.grade'],
    }
  })
}

/** What a published formula gives for the planned screw in the timber that was entered, beside what is asked of it. */
export const rule: Rule = {
  id: 'published-pull',
  heading: 'What a published formula gives for a screw',
  catches: ['F94'],
  dangerous: true,
  basis: {
    kind: 'standard',
    source: 'EN 1995-1-1:2004+A1:2008 (Eurocode 5); NDS in North America',
    where: '8.7.2; 12.2: pull of one screw in timber; secondary copies',
  },
  why: 'A screw maker’s figure decides; where none is to hand, the published formula shows what order of load a screw in this timber is reckoned with.',
  words: {
    eurocode:
      'By the published formula, in studs with a characteristic density of {timber}: {pull} for each screw “{screw}” in {wall}, with {thread} of thread in the stud. The most asked of one is {asked}, by {unit}. It is not your screw maker’s figure, and the code’s own factors still make it less.',
    'eurocode.load-not-known':
      'By the published formula, in studs with a characteristic density of {timber}: {pull} for each screw “{screw}” in {wall}, with {thread} of thread in the stud. What is asked of one is not known yet. It is not your screw maker’s figure, and the code’s own factors still make it less.',
    american:
      'By the published formula, in studs with a specific gravity of {timber}: {pull} for each screw “{screw}” in {wall}, with {thread} of thread in the stud. The most asked of one is {asked}, by {unit}. It is not your screw maker’s figure, and the code’s own factors still apply.',
    'american.load-not-known':
      'By the published formula, in studs with a specific gravity of {timber}: {pull} for each screw “{screw}” in {wall}, with {thread} of thread in the stud. What is asked of one is not known yet. It is not your screw maker’s figure, and the code’s own factors still apply.',
    'outside.diameter':
      'The published formula gives no figure for the screw “{screw}” in {wall}: it is {diameter} thick, and the formula holds from {least} to {most} mm.',
    'outside.core':
      'The published formula gives no figure for the screw “{screw}” in {wall}: between its threads it is {core} thick, of {diameter}. The formula holds from 0.6 to 0.75 of the diameter.',
    'outside.penetration':
      'The published formula gives no figure for the screw “{screw}” in {wall}: {thread:pm} of its thread is in the stud, and the formula asks for six times its diameter of {diameter}.',
    exceeds:
      '{unit} asks {asked} of one screw “{screw}”. That exceeds the published figure for it in these studs, {pull}.',
    'exceeds-not-entered':
      '{unit} asks {asked} of one screw “{screw}”. That exceeds the published figure for it in these studs, {pull}, though not the figures you entered. The two do not fit together: look at both again.',
    near: '{unit} asks {asked:pm} of one screw “{screw}”. That is too near the published figure for it in these studs, {pull:pm}, to say.',
    'may-be-mean':
      'The density entered for the studs of {wall} is {density}. That may be what the timber weighs on average; the formula takes the characteristic density, which is less, {most} kg/m³ at most in the usual classes. No figure is worked from it.',
    'ask.maker':
      'Ask the screw’s maker for the pull it may be given in this timber, and enter that: it comes before any formula.',
    'ask.grade': 'Read the stamp on the studs for their strength class, and enter it.',
  },
  check: (site) => {
    const held = heldIn(site)
    return [
      ...groupsOf(held).flatMap((group) => told(site, group)),
      ...held.flatMap((one) => beyond(site, one)),
      ...meanDensities(site),
    ]
  },
}
