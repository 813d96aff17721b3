import type { Kitchen } from '../kitchen/schema'
import type { Operation } from '../plan/types'
import type { RegionPack } from '../region/region'
import { applianceSaid } from '../units/part-name'
import { listed } from '../words/listed'
import { isHungByHoles } from './connect'
import type { Job } from './job'
import { caution, check, operation, told, when } from './make'
import { minutesFor, WORK } from './minutes'

/** Homes built from this year on are not asked about asbestos; the region may say otherwise. */
const ASBESTOS_YEAR = 2000

export function asbestosYear(region: RegionPack | null): number {
  return region?.asbestosBefore.value ?? ASBESTOS_YEAR
}

/** Whether the house may hold asbestos: it is old enough, or nobody knows how old it is. */
export function mayHoldAsbestos(kitchen: Kitchen, region: RegionPack | null): boolean {
  const { houseBuilt } = kitchen.survey
  return houseBuilt === null || houseBuilt < asbestosYear(region)
}

/** Appliances that burn gas, in a house not known to be without it. */
export function gasAppliances(kitchen: Kitchen): Kitchen['appliances'] {
  if (kitchen.survey.gas === false) return []
  return kitchen.appliances.filter((a) => a.fuel === 'gas' || a.fuel === 'both')
}

/** Electricity, water and gas off, and proved so, before anything is drilled. Nothing of them is altered. */
export function isolate(job: Job): readonly Operation[] {
  if (job.units.length === 0) return []
  const gas = job.kitchen.survey.gas
  return [
    operation(job, {
      kind: 'isolate',
      on: ['room'],
      stage: 'make-safe',
      title: told('isolate', gas === false ? 'title.no-gas' : 'title'),
      does: [
        told('isolate', 'electricity'),
        told('isolate', 'tester'),
        told('isolate', 'water'),
        ...when(gas !== false, told('isolate', gas === true ? 'gas' : 'gas-not-known')),
        told('isolate', 'supply'),
        told('isolate', 'note'),
      ],
      checks: [
        check('isolate.dead', 'proved-dead'),
        check('isolate.water', 'water-off'),
        ...when(gas !== false, check('isolate.gas', 'gas-off')),
      ],
      cautions: [
        caution('M021', 'disconnect'),
        caution('W012', 'not-proved-dead'),
        caution('P031', 'leave-it-off'),
      ],
      tools: ['proving-unit', 'lamp'],
      minutes: minutesFor(WORK.isolate),
      holdPoint: true,
      facts: ['survey.gas', ...job.units.map((u) => `units.${u.id}`)],
    }),
  ]
}

/** Appliances that are wired to a circuit of their own, which stays off until that has been done. */
const WIRED: readonly Kitchen['appliances'][number]['kind'][] = ['hob', 'oven', 'hood', 'boiler']
/** Switching on again, less than making safe. */
const BACK_ON = 0.5

/** Whether an appliance needs electricity to be connected and tried; while nobody has said what it runs on, it does. */
export function isElectrical({ kind, fuel }: Pick<Kitchen['appliances'][number], 'kind' | 'fuel'>): boolean {
  return kind !== 'sink' && fuel !== 'gas' && fuel !== 'none'
}

/**
 * The supply comes back when the last hole in a wall has been drilled and before an appliance is connected and tried: by
 * whoever made it off, after a look at every wall that was drilled.
 */
export function restoreSupply(job: Job): readonly Operation[] {
  if (job.units.length === 0) return []
  const { appliances, survey } = job.kitchen
  const wired = appliances.filter((a) => WIRED.includes(a.kind) && isElectrical(a) && !isHungByHoles(a))
  return [
    operation(job, {
      kind: 'restore-supply',
      on: ['room'],
      stage: 'connect-and-test',
      title: told('restore-supply', 'title'),
      does: [
        told('restore-supply', 'last-hole'),
        told('restore-supply', 'look'),
        told('restore-supply', 'electricity'),
        ...when(
          wired.length > 0,
          told('restore-supply', 'wired', { appliances: listed(wired.map(applianceSaid)) }),
        ),
        told('restore-supply', 'water'),
        ...when(survey.gas !== false, told('restore-supply', 'gas')),
      ],
      checks: [
        check('restore-supply.walls', 'no-damage-at-walls'),
        check('restore-supply.tested', 'supply-tested'),
        ...appliances
          .filter(isHungByHoles)
          .map((hood) => check(`restore-supply.${hood.id}`, 'works', { appliance: applianceSaid(hood) })),
      ],
      cautions: [caution('W012', 'live-again')],
      tools: ['proving-unit'],
      minutes: minutesFor(WORK.isolate, BACK_ON),
      holdPoint: true,
      facts: [
        'survey.gas',
        ...job.units.map((u) => `units.${u.id}`),
        ...wired.flatMap((a) => [`appliances.${a.id}`, `appliances.${a.id}.fuel`]),
        ...appliances.filter(isHungByHoles).flatMap((a) => [`appliances.${a.id}`, `appliances.${a.id}.kind`]),
      ],
    }),
  ]
}

/** In a home that may hold asbestos: stop until a competent firm has sampled it. */
export function asbestosCheck(job: Job): readonly Operation[] {
  const { kitchen, context } = job
  if (job.units.length === 0 || !mayHoldAsbestos(kitchen, context.region)) return []
  const { houseBuilt } = kitchen.survey
  const limit = asbestosYear(context.region)
  return [
    operation(job, {
      kind: 'asbestos-check',
      on: ['room'],
      stage: 'make-safe',
      title: told('asbestos-check', 'title'),
      does: [
        houseBuilt === null
          ? told('asbestos-check', 'year-not-known', { limit: String(limit) })
          : told('asbestos-check', 'year', { year: String(houseBuilt), limit: String(limit) }),
        told('asbestos-check', 'stop'),
        told('asbestos-check', 'sample'),
      ],
      checks: [check('asbestos-check.result', 'asbestos-result')],
      cautions: [caution('P010', 'asbestos'), caution('W001', 'asbestos-dust')],
      tools: ['telephone'],
      trade: 'asbestos-surveyor',
      minutes: minutesFor(WORK.booking),
      holdPoint: true,
      facts: ['survey.houseBuilt'],
    }),
  ]
}

/** Gas is for registered people only: they are booked early. */
export function callTrade(job: Job): readonly Operation[] {
  const appliances = gasAppliances(job.kitchen)
  if (appliances.length === 0) return []
  return [
    operation(job, {
      kind: 'call-trade',
      on: ['gas'],
      stage: 'make-safe',
      title: told('call-trade', 'title'),
      does: [
        told('call-trade', 'book', { appliances: listed(appliances.map(applianceSaid)) }),
        told('call-trade', 'nobody-else'),
        told('call-trade', 'clearances'),
      ],
      checks: [check('call-trade.booked', 'gas-booked')],
      cautions: [caution('P010', 'gas-fittings'), caution('P003', 'smell-of-gas')],
      tools: ['telephone'],
      trade: 'gas-engineer',
      minutes: minutesFor(WORK.booking),
      facts: ['survey.gas', ...appliances.map((a) => `appliances.${a.id}.fuel`)],
    }),
  ]
}
