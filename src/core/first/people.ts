import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import { tradeFor } from '../operations/connect'
import { asbestosYear, mayHoldAsbestos } from '../operations/make-safe'
import type { RegionPack } from '../region/region'
import { unitNames } from '../units/names'
import { applianceSaid } from '../units/part-name'
import { listed } from '../words/listed'
import { wallsToDrill } from './drill'
import { type FirstLine, usual, wallSaid } from './line'

/** Whom to book, and what to borrow, as follows from what has been said. */

const book = (say: FirstLine['say'], facts: readonly string[], basis: FirstLine['basis']): FirstLine => ({
  kind: 'book',
  say,
  facts,
  basis,
})
const borrow = (say: FirstLine['say'], facts: readonly string[], why: string): FirstLine => ({
  kind: 'borrow',
  say,
  facts,
  basis: usual(why),
})

/**
 * Everybody who has to be booked: said after ten questions and on the first sheet alike. Whoever a step of the plan is
 * only for is among them; while nobody has said what that rests on, it is said with its condition.
 */
export function bookLines(kitchen: Kitchen, region: RegionPack | null): readonly FirstLine[] {
  const walls = wallsToDrill(kitchen).filter(({ provedDead }) => provedDead !== true)
  return [
    ...asbestosLines(kitchen, region),
    ...gasLines(kitchen, region),
    ...(walls.length > 0
      ? [
          book(
            message('first.book.electrician', { walls: listed(walls.map(wallSaid)) }),
            walls.map(({ id }) => factId('walls', id, 'provedDead')),
            usual('proving dead is for someone competent with the right instrument'),
          ),
        ]
      : []),
    ...connectLines(kitchen),
    ...helperLines(kitchen),
  ]
}

/** Appliances that this trade connects, as the plan has it. */
const connectedBy = (kitchen: Kitchen, trade: 'gas-engineer' | 'electrician' | 'plumber') =>
  kitchen.appliances.filter((appliance) => tradeFor(appliance) === trade)

const connectFacts = (appliances: Kitchen['appliances']): readonly string[] =>
  appliances.flatMap(({ id }) => ['kind', 'fuel'].map((key) => factId('appliances', id, key)))

function connectLines(kitchen: Kitchen): readonly FirstLine[] {
  return (['electrician', 'plumber'] as const).flatMap((trade): readonly FirstLine[] => {
    const theirs = connectedBy(kitchen, trade)
    if (theirs.length === 0) return []
    const say = message(`first.book.connect.${trade}`, { appliances: listed(theirs.map(applianceSaid)) })
    return [book(say, connectFacts(theirs), CONNECT_WHY[trade])]
  })
}

const CONNECT_WHY = {
  electrician: usual('what is wired to a circuit of its own is connected and tested by an electrician'),
  plumber: usual(
    'what takes water or gives waste is connected and tried by a plumber, or by who can do it right',
  ),
}

function asbestosLines(kitchen: Kitchen, region: RegionPack | null): readonly FirstLine[] {
  const { houseBuilt } = kitchen.survey
  if (!mayHoldAsbestos(kitchen, region)) return []
  const basis = region?.asbestosBefore.basis ?? usual('homes built before 2000 may hold asbestos')
  if (houseBuilt !== null) {
    const say = message('first.book.asbestos', { year: String(houseBuilt) })
    return [book(say, ['survey.houseBuilt', 'region'], basis)]
  }
  if (kitchen.units.length === 0) return []
  const say = message('first.book.asbestos-open', { limit: String(asbestosYear(region)) })
  return [book(say, ['survey.houseBuilt', 'region'], basis)]
}

/** Gas in the house, or an appliance that burns it. */
function gasLines(kitchen: Kitchen, region: RegionPack | null): readonly FirstLine[] {
  const burning = connectedBy(kitchen, 'gas-engineer')
  if (kitchen.survey.gas !== true && burning.length === 0) return []
  const say =
    burning.length === 0
      ? message('first.book.gas')
      : message('first.book.gas-for', { appliances: listed(burning.map(applianceSaid)) })
  const facts = ['survey.gas', 'region', ...connectFacts(burning)]
  return [book(say, facts, region?.trades.gas ?? usual('work on gas is for registered engineers only'))]
}

/** A second pair of hands: for what is stood up or hung, and where somebody has said to be alone. */
function helperLines(kitchen: Kitchen): readonly FirstLine[] {
  const { people } = kitchen.crew
  const names = unitNames(kitchen)
  const heavy = kitchen.units.filter(
    ({ kind }) => kind === 'tall' || kind === 'wall' || kind === 'corner-wall',
  )
  const facts = ['crew.people', ...heavy.map(({ id }) => factId('units', id, 'kind'))]
  const basis = usual('tall units are stood up and wall units hung by two')
  const isAlone = people.length === 1
  if (heavy.length === 0) return isAlone ? [book(message('first.book.helper'), ['crew.people'], basis)] : []
  const units = listed(heavy.map(({ id }) => names.get(id) ?? id))
  if (people.length === 0) return [book(message('first.book.helper-open', { units }), facts, basis)]
  return [
    book(
      isAlone ? message('first.book.helper-for', { units }) : message('first.book.helper-day', { units }),
      facts,
      basis,
    ),
  ]
}

const HARD: readonly string[] = [
  'masonry',
  'aircrete',
  'old-brick',
  'dot-and-dab',
  'concrete',
  'chimney-breast',
]
const STUDDED: readonly string[] = ['timber-stud', 'metal-stud', 'lath-and-plaster']

export function borrowLines(kitchen: Kitchen): readonly FirstLine[] {
  const walls = wallsToDrill(kitchen)
  const of = (some: typeof walls, key: string) => some.map(({ id }) => factId('walls', id, key))
  const untraced = walls.filter(({ traced }) => traced !== 'whole')
  const hard = walls.filter(({ construction }) => construction !== null && HARD.includes(construction))
  const studded = walls.filter(({ construction }) => construction !== null && STUDDED.includes(construction))
  const talls = kitchen.units.filter(({ kind }) => kind === 'tall')
  const hung = kitchen.units.filter(({ kind }) => kind === 'wall' || kind === 'corner-wall')
  const isAlone = kitchen.crew.people.length === 1
  const said = (some: typeof walls) => listed(some.map(wallSaid))
  const line: readonly FirstLine[] =
    kitchen.floor.readings.length === 0
      ? [
          borrow(
            message('first.borrow.level'),
            ['floor.readings'],
            'a level line is struck before any height is taken',
          ),
        ]
      : []
  return [
    ...line,
    ...(untraced.length === 0
      ? []
      : [
          borrow(
            message('first.borrow.detector', { walls: said(untraced) }),
            of(untraced, 'traced'),
            TRACE_WHY,
          ),
        ]),
    ...(studded.length === 0
      ? []
      : [
          borrow(
            message('first.borrow.magnet', { walls: said(studded) }),
            of(studded, 'construction'),
            STUD_WHY,
          ),
        ]),
    ...(hard.length === 0
      ? []
      : [borrow(message('first.borrow.hammer', { walls: said(hard) }), of(hard, 'construction'), HARD_WHY)]),
    ...(talls.length === 0
      ? []
      : [
          borrow(
            message('first.borrow.blocks'),
            talls.map(({ id }) => factId('units', id, 'kind')),
            BLOCKS_WHY,
          ),
        ]),
    ...(isAlone && hung.length > 0
      ? [
          borrow(
            message('first.borrow.prop'),
            ['crew.people', ...hung.map(({ id }) => factId('units', id, 'kind'))],
            PROP_WHY,
          ),
        ]
      : []),
  ]
}

const TRACE_WHY = 'a detector for cables, pipes and metal goes over the whole wall before any hole'
const STUD_WHY = 'screws of the boards show the studs to a magnet; one beep of a detector is not a stud'
const HARD_WHY = 'holes in brick, block and concrete are drilled with hammer and with the dust drawn off'
const BLOCKS_WHY = 'a tall unit turns on its edge over blocks, on a covered floor'
const PROP_WHY = 'one person does not hold a wall unit and hook it on'
