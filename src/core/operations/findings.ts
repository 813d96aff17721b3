import { partLiftFindings } from '../lifting/part-lifts'
import { message } from '../message'
import type { Finding } from '../plan/types'
import { applianceSaid } from '../units/part-name'
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
      weight: 'note',
      dangerous: false,
      about: ['room'],
      where: null,
      say: message('finding.isolate-first'),
      figures: [],
      from: kitchen.units.map((unit) => `units.${unit.id}`),
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

/** What is to be said of the work before any of it is done: asbestos, isolation, gas, lifts of what is no unit. */
export function operationFindings(context: OperationContext): readonly Finding[] {
  return [
    ...asbestosAge(context),
    ...isolateFirst(context),
    ...gasTrade(context),
    ...partLiftFindings(context),
  ]
}
