import { sortedIds } from '../figure'
import { partLiftFindings } from '../lifting/part-lifts'
import { message } from '../message'
import type { Finding } from '../plan/types'
import { applianceSaid } from '../units/part-name'
import { tippingFacts, tipsOnItsFeet } from '../units/tips'
import { listed } from '../words/listed'
import { asbestosYear, gasAppliances, mayHoldAsbestos } from './make-safe'
import type { OperationContext } from './operation-context'

function asbestosAge({ kitchen, region }: OperationContext): readonly Finding[] {
  if (kitchen.units.length === 0 || !mayHoldAsbestos(kitchen, region)) return []
  const { houseBuilt } = kitchen.survey
  const limit = String(asbestosYear(region))
  return [
    {
      id: 'asbestos-age:room',
      rule: 'asbestos-age',
      called: message('called.asbestos-age'),
      weight: 'ask',
      dangerous: true,
      about: ['room'],
      where: null,
      say:
        houseBuilt === null
          ? message('finding.asbestos-age.year-not-known', { limit })
          : message('finding.asbestos-age', { year: String(houseBuilt), limit }),
      figures: [],
      from: ['survey.houseBuilt'],
      basis: region?.asbestosBefore.basis ?? {
        kind: 'common-practice',
        why: 'homes built before 2000 are taken to hold asbestos until a sample says otherwise',
      },
      ask: message('finding.asbestos-age.ask'),
      waysOut: [],
    },
  ]
}

function isolateFirst({ kitchen }: OperationContext): readonly Finding[] {
  if (kitchen.units.length === 0) return []
  return [
    {
      id: 'isolate-first:room',
      rule: 'isolate-first',
      called: message('called.isolate-first'),
      weight: 'note',
      dangerous: false,
      about: ['room'],
      where: null,
      say: message(kitchen.survey.gas === false ? 'finding.isolate-first.no-gas' : 'finding.isolate-first'),
      figures: [],
      from: ['survey.gas', ...kitchen.units.map((unit) => `units.${unit.id}`)],
      basis: { kind: 'common-practice', why: 'services are off, and proved off, before any hole' },
      ask: message('finding.isolate-first.ask'),
      waysOut: [],
    },
  ]
}

function gasTrade({ kitchen, region }: OperationContext): readonly Finding[] {
  const appliances = gasAppliances(kitchen)
  if (appliances.length === 0) return []
  return [
    {
      id: 'gas-trade:gas',
      rule: 'gas-trade',
      called: message('called.gas-trade'),
      weight: 'note',
      dangerous: false,
      about: appliances.map((a) => a.id),
      where: null,
      say: message('finding.gas-trade', { appliances: listed(appliances.map(applianceSaid)) }),
      figures: [],
      from: ['survey.gas', ...appliances.map((a) => `appliances.${a.id}.fuel`)],
      basis: region?.trades.gas ?? { kind: 'common-practice', why: 'gas is for registered people only' },
      ask: message('finding.gas-trade.ask'),
      waysOut: [],
    },
  ]
}

/** Units that stand on their feet alone until they are fixed, and would tip. A tall is held from the first. */
function tipping({ kitchen, units, names }: OperationContext): readonly Finding[] {
  const plans = new Map(units.map((plan) => [plan.unit, plan]))
  const standing = kitchen.units.filter(({ kind }) => kind !== 'tall' && kind !== 'appliance-space')
  return standing.flatMap((unit): readonly Finding[] => {
    const plan = plans.get(unit.id)
    if (plan === undefined || !tipsOnItsFeet(unit, plan)) return []
    return [
      {
        id: `unit-tips:${unit.id}`,
        rule: 'unit-tips',
        called: message('called.unit-tips'),
        weight: 'ask',
        dangerous: true,
        about: [unit.id],
        where: null,
        say: message('finding.unit-tips', { unit: names.get(unit.id) ?? unit.id }),
        figures: [],
        from: sortedIds([...tippingFacts(unit), ...plan.width.from, ...plan.depth.from]),
        basis: {
          kind: 'geometry',
          why: 'the middle of its carcass does not lie over the area between its feet',
        },
        ask: message('finding.unit-tips.ask'),
        waysOut: [],
      },
    ]
  })
}

/** What is to be said of the work before any of it is done: asbestos, isolation, gas, what tips, lifts of what is no unit. */
export function operationFindings(context: OperationContext): readonly Finding[] {
  return [
    ...asbestosAge(context),
    ...isolateFirst(context),
    ...gasTrade(context),
    ...tipping(context),
    ...partLiftFindings(context),
  ]
}
