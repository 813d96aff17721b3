import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { HUNG_KINDS } from '../kitchen/kinds'
import type { Wall } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { liesBetween } from '../survey/between'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a college marking sheet rejects front edges of a run that are out of line by more than 2 mm',
}
const IN_LINE = known(2, 0, 'mm', [], practice)

interface Bow {
  readonly id: string
  readonly along: Figure
  readonly height: Figure
  /** Out into the room: +, a hollow: −. */
  readonly belly: Figure
}

const turned: Basis = {
  kind: 'geometry',
  why: 'a belly stands out into the room by what the straightedge shows',
}

function bowsOf(site: Site, wall: Wall): readonly Bow[] {
  return wall.straightness.map(({ id, along: at, height, bow }) => {
    const along = site.survey.along(wall.id, at)
    return {
      id,
      along,
      height: site.onFace(wall.id, along, height),
      belly: derive('mm', turned, [bow], (b) => -(b as number)),
    }
  })
}

const isBehind = (unit: UnitPlan, { along, height }: Bow) =>
  liesBetween(along, unit.left, unit.right) !== 'no' && liesBetween(height, unit.underside, unit.top) !== 'no'

/** A belly deeper than the space behind the back: the back of the unit lies on it, and the unit rocks. */
function rocks(site: Site, unit: UnitPlan, bow: Bow): readonly Found[] {
  const stated = site.stated(unit.unit)
  const out = site.positions.find((one) => one.unit.id === unit.unit)?.out
  if (stated === undefined || out === undefined || unit.kind === 'appliance-space') return []
  const over = sum('mm', rule.basis, [bow.belly], [stated.void, out])
  const stands = overLimit(over)
  if (stands !== 'over' && (stands !== 'near' || !hasValue(bow.belly) || bow.belly.value <= 0)) return []
  const isSure = stands === 'over'
  const to = hasValue(over) && hasValue(out) ? Math.ceil(out.value + over.value + over.pm) : 0
  return [
    {
      subjects: [unit.unit],
      about: [unit.unit, unit.wall],
      weight: isSure ? 'stop' : 'ask',
      said: [
        isSure ? 'rocks' : 'may-rock',
        {
          unit: unit.name,
          wall: site.name(unit.wall),
          along: bow.along,
          belly: bow.belly,
          space: stated.void,
          over,
        },
      ],
      where: { wall: unit.wall, along: bow.along, height: bow.height },
      ask: ['ask'],
      waysOut: [
        {
          said: ['out', { unit: unit.name, to }],
          cost: 'an hour',
          edits: [{ set: factId('units', unit.unit, 'standOff'), to }],
        },
      ],
    },
  ]
}

/** The deepest hollow or belly behind a row: what is packed, so that the fronts come into one line. */
function packed(
  site: Site,
  wall: string,
  row: 'low' | 'high',
  units: readonly UnitPlan[],
  bows: readonly Bow[],
): readonly Found[] {
  const behind = bows.flatMap((bow) =>
    hasValue(bow.belly) && units.some((unit) => isBehind(unit, bow))
      ? [{ bow, by: Math.abs(bow.belly.value), out: bow.belly.value > 0 }]
      : [],
  )
  const most = behind.sort((a, b) => b.by - a.by)[0]
  if (most === undefined) return []
  const pack = derive('mm', turned, [most.bow.belly], (b) => Math.abs(b as number))
  if (overLimit(sum('mm', practice, [pack], [IN_LINE])) !== 'over') return []
  return [
    {
      subjects: [wall, row],
      about: [wall, ...units.map(({ unit }) => unit)],
      weight: 'warn',
      said: [most.out ? 'belly' : 'hollow', { wall: site.name(wall), along: most.bow.along, pack }],
      where: { wall, along: most.bow.along, height: most.bow.height },
      ask: ['ask.pack'],
    },
  ]
}

/** F47: a wall that bellies or is hollow behind a run. */
export const rule: Rule = {
  id: 'wall-bellies',
  heading: 'A wall that is not flat',
  catches: ['F47'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'what the straightedge shows against the space behind the backs' },
  why: 'Screwed tight to a wall that is not straight, carcasses pull out of square and the fronts run in waves.',
  words: {
    rocks:
      'Behind {unit} the wall bellies out by {belly}, {along} along it. The space behind its back is {space}: it stands on the belly and rocks, {over} off the wall.',
    'may-rock':
      'Behind {unit} the wall bellies out by {belly}, {along} along it, about as much as the space behind its back. Readings this near cannot tell: measure both.',
    belly:
      '{wall} bellies out by {pack}, {along} along it. Begin there, and pack the other units out to it by up to {pack}.',
    hollow:
      '{wall} is hollow by {pack}, {along} along it. Pack behind the rail or bracket there by {pack}: never pull a unit in to the wall.',
    ask: 'Lay the straightedge again, at the height of the back. Blown plaster can be taken off.',
    'ask.pack': 'Have packs of that thickness ready. Where the run comes out, the worktop overhangs less.',
    out: 'Stand {unit} {to} mm off the wall, and bring its neighbours into line.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap((wall) => {
      const bows = bowsOf(site, wall)
      if (bows.length === 0) return []
      const units = site.along(wall.id)
      const worst = (unit: UnitPlan) =>
        bows
          .flatMap((bow) =>
            hasValue(bow.belly) && isBehind(unit, bow) ? [{ bow, by: bow.belly.value }] : [],
          )
          .sort((a, b) => b.by - a.by)[0]?.bow
      const rows = {
        low: units.filter(({ kind }) => !HUNG_KINDS.includes(kind)),
        high: units.filter(({ kind }) => HUNG_KINDS.includes(kind)),
      }
      return [
        ...units.flatMap((unit) => {
          const bow = worst(unit)
          return bow === undefined ? [] : rocks(site, unit, bow)
        }),
        ...packed(site, wall.id, 'low', rows.low, bows),
        ...packed(site, wall.id, 'high', rows.high, bows),
      ]
    }),
}
