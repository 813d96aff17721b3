import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import { asbestosYear } from '../operations/make-safe'
import type { RegionPack } from '../region/region'
import { unitNames } from '../units/names'
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

export function bookLines(kitchen: Kitchen, region: RegionPack | null): readonly FirstLine[] {
  const { houseBuilt, gas } = kitchen.survey
  const walls = wallsToDrill(kitchen).filter(({ provedDead }) => provedDead !== true)
  const isOld = houseBuilt !== null && houseBuilt < asbestosYear(region)
  return [
    ...(isOld
      ? [
          book(
            message('first.book.asbestos', { year: String(houseBuilt) }),
            ['survey.houseBuilt', 'region'],
            region?.asbestosBefore.basis ?? usual('homes built before 2000 may hold asbestos'),
          ),
        ]
      : []),
    ...(gas === true
      ? [
          book(
            message('first.book.gas'),
            ['survey.gas', 'region'],
            region?.trades.gas ?? usual('work on gas is for registered engineers only'),
          ),
        ]
      : []),
    ...(walls.length > 0
      ? [
          book(
            message('first.book.electrician', { walls: listed(walls.map(wallSaid)) }),
            walls.map(({ id }) => factId('walls', id, 'provedDead')),
            usual('proving dead is for someone competent with the right instrument'),
          ),
        ]
      : []),
    ...helperLines(kitchen),
  ]
}

/** A second pair of hands: for what is stood up or hung, and where somebody has said to be alone. */
function helperLines(kitchen: Kitchen): readonly FirstLine[] {
  const { people } = kitchen.crew
  if (people.length === 0) return []
  const names = unitNames(kitchen)
  const heavy = kitchen.units.filter(
    ({ kind }) => kind === 'tall' || kind === 'wall' || kind === 'corner-wall',
  )
  const facts = ['crew.people', ...heavy.map(({ id }) => factId('units', id, 'kind'))]
  const basis = usual('tall units are stood up and wall units hung by two')
  const isAlone = people.length < 2
  if (heavy.length === 0) return isAlone ? [book(message('first.book.helper'), ['crew.people'], basis)] : []
  const units = listed(heavy.map(({ id }) => names.get(id) ?? id))
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
