import { type Basis, hasValue, type InputId } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import { unitNames } from '../units/names'
import { wallsToDrill } from './drill'
import { dishwasherAsking, floorFall, lowestCeilingRead, mostUnderWorktop, tallestUnit } from './heights'
import { type FirstLine, usual, wallSaid } from './line'
import { roomAlong, runsOf } from './run'

/** Which line to strike first, and what to find out next. */

const LINE = usual('all heights are read up or down from one level line, at about 1 m')
const HIGHEST = usual('units stand on the highest floor; their legs wind out everywhere else')

const strike = (say: FirstLine['say'], facts: readonly InputId[], basis: Basis): FirstLine => ({
  kind: 'strike',
  say,
  facts,
  basis,
})

export function strikeLines(kitchen: Kitchen): readonly FirstLine[] {
  const fall = floorFall(kitchen)
  const [from] = wallsToDrill(kitchen)
  if (kitchen.floor.readings.length > 0) {
    return [strike(message('first.strike.base-tops'), ['floor.readings'], HIGHEST)]
  }
  return [
    strike(
      from === undefined
        ? message('first.strike.line')
        : message('first.strike.line-from', { wall: wallSaid(from) }),
      from === undefined ? ['lines'] : ['lines', factId('walls', from.id)],
      LINE,
    ),
    ...(hasValue(fall) && fall.value > fall.pm
      ? [strike(message('first.strike.highest', { fall }), fall.from, HIGHEST)]
      : []),
  ]
}

/** One thing to find out: asked while `isOpen`. */
interface Ask {
  readonly isOpen: boolean
  readonly say: FirstLine['say']
  readonly facts: readonly InputId[]
  readonly why: string
}

/** What is not known yet, the ten first questions in their order; then what makes their answers sharper. */
export function measureLines(kitchen: Kitchen): readonly FirstLine[] {
  const asks = [...ofTheRoom(kitchen), ...ofHeights(kitchen), ...sharper(kitchen)]
  return asks
    .filter(({ isOpen }) => isOpen)
    .map(({ say, facts, why }) => ({ kind: 'measure', say, facts, basis: usual(why) }))
}

function ofTheRoom(kitchen: Kitchen): readonly Ask[] {
  const { walls, units, survey, crew } = kitchen
  const names = unitNames(kitchen)
  const unread = units.filter(({ kind, width }) => kind !== 'island' && !hasValue(width))
  return [
    {
      isOpen: kitchen.region === null,
      say: message('first.measure.region'),
      facts: ['region'],
      why: 'rules differ from country to country',
    },
    ...(walls.length === 0
      ? [
          {
            isOpen: true,
            say: message('first.measure.width'),
            facts: ['walls'],
            why: 'the smallest width is what the units have',
          },
        ]
      : wallsToDrill(kitchen).map((wall) => ({
          isOpen: !hasValue(roomAlong(wall)),
          say: message('first.measure.width-of', { wall: wallSaid(wall) }),
          facts: [factId('walls', wall.id, 'widths')],
          why: 'the smallest width is what the units have',
        }))),
    {
      isOpen: units.length === 0,
      say: message('first.measure.units'),
      facts: ['units'],
      why: 'the list that came with the units says their widths',
    },
    ...unread.map(({ id }) => ({
      isOpen: true,
      say: message('first.measure.unit-width', { unit: names.get(id) ?? id }),
      facts: [factId('units', id, 'width')],
      why: 'its own sheet goes before everything usual',
    })),
    ...wallsToDrill(kitchen).map((wall) => ({
      isOpen: wall.construction === null,
      say: message('first.measure.wall-kind', { wall: wallSaid(wall) }),
      facts: [factId('walls', wall.id, 'construction')],
      why: 'what a wall is made of is found by looking and knocking',
    })),
    {
      isOpen: survey.houseBuilt === null,
      say: message('first.measure.year'),
      facts: ['survey.houseBuilt'],
      why: 'the deeds or the energy certificate say it',
    },
    {
      isOpen: survey.gas === null,
      say: message('first.measure.gas'),
      facts: ['survey.gas'],
      why: 'a gas meter, a gas hob or a gas boiler shows it',
    },
    {
      isOpen: crew.people.length === 0,
      say: message('first.measure.people'),
      facts: ['crew.people'],
      why: 'what two lift together one does not lift alone',
    },
  ]
}

function ofHeights(kitchen: Kitchen): readonly Ask[] {
  const names = unitNames(kitchen)
  const tall = tallestUnit(kitchen)
  const talls = kitchen.units.filter(({ kind }) => kind === 'tall')
  const unread = talls.filter(({ height }) => !hasValue(height))
  return [
    {
      isOpen: talls.length === 0 && kitchen.units.length === 0,
      say: message('first.measure.tall'),
      facts: ['units'],
      why: 'a tall unit needs more height on the way up than it has',
    },
    ...unread.map(({ id }) => ({
      isOpen: true,
      say: message('first.measure.tall-height', { unit: names.get(id) ?? id }),
      facts: [factId('units', id, 'height')],
      why: 'a tall unit needs more height on the way up than it has',
    })),
    ...(tall === undefined
      ? []
      : [
          {
            isOpen: tall.depth.state !== 'known',
            say: message('first.measure.tall-depth', { unit: names.get(tall.id) ?? tall.id }),
            facts: [factId('units', tall.id, 'depth')],
            why: 'its top corner swings through the diagonal of its height and depth',
          },
        ]),
    {
      isOpen: !hasValue(lowestCeilingRead(kitchen)),
      say: message('first.measure.ceiling'),
      facts: ['ceiling'],
      why: 'the lowest place counts, a beam or a light too',
    },
    {
      isOpen: dishwasherAsking(kitchen) === undefined,
      say: message('first.measure.dishwasher'),
      facts: ['appliances'],
      why: 'its own sheet has the height with its feet wound in',
    },
    {
      isOpen: !hasValue(floorFall(kitchen)),
      say: message('first.measure.fall'),
      facts: ['floor.worstDrop'],
      why: 'a long level over the floor shows how far it falls',
    },
  ]
}

/** What the first answers are not sharp enough for. */
function sharper(kitchen: Kitchen): readonly Ask[] {
  const near = runsOf(kitchen).filter(({ verdict }) => verdict === 'near')
  const few = runsOf(kitchen).filter(({ wall, room }) => hasValue(room) && wall.widths.length < 3)
  const bases = kitchen.units.filter(({ kind }) => kind === 'base' || kind === 'corner-base')
  const fall = floorFall(kitchen)
  const asksLegs = hasValue(fall) || dishwasherAsking(kitchen) !== undefined
  const legless = bases.filter(({ legs }) => !hasValue(legs.max) || !hasValue(legs.min))
  return [
    ...near.map(({ wall, left }) => ({
      isOpen: true,
      say: message('first.measure.again', { wall: wallSaid(wall), pm: String(hasValue(left) ? left.pm : 0) }),
      facts: left.from,
      why: 'a second reading by another hand halves the doubt',
    })),
    ...few.map(({ wall }) => ({
      isOpen: true,
      say: message('first.measure.nine', { wall: wallSaid(wall) }),
      facts: [factId('walls', wall.id, 'widths')],
      why: 'an alcove measured once is narrower somewhere else',
    })),
    {
      isOpen: asksLegs && legless.length > 0 && !hasValue(mostUnderWorktop(kitchen)),
      say: message('first.measure.legs'),
      facts: legless.map(({ id }) => factId('units', id, 'legs')),
      why: 'the reach of the legs decides what the floor may fall and how high the worktop comes',
    },
  ]
}
