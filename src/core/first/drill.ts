import { knockDoubt } from '../fixings/wall-kind'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Wall } from '../kitchen/schema'
import { message } from '../message'
import { asbestosYear } from '../operations/make-safe'
import type { RegionPack } from '../region/region'
import { type FirstLine, usual, wallSaid } from './line'
import { standingOn } from './run'

/** Why nothing is drilled yet: each reason by the fact it falls with. */

const TRACED = usual('cables and pipes are traced before the first hole, on both faces of a thin wall')
const DEAD = usual(
  'the circuits in and behind a wall are switched off, locked off and proved dead by someone competent before it is drilled',
)
const KIND = usual('what a wall is made of decides which fixing holds in it; it is found without drilling')

/** The walls the units stand at; all of them while none is said to. */
export function wallsToDrill(kitchen: Kitchen): readonly Wall[] {
  const used = kitchen.walls.filter(
    ({ id }) => standingOn(kitchen, id).length > 0 || kitchen.units.some(({ wall }) => wall === id),
  )
  return used.length > 0 ? used : kitchen.walls
}

const line = (say: FirstLine['say'], facts: readonly string[], basis: FirstLine['basis']): FirstLine => ({
  kind: 'do-not-drill',
  say,
  facts,
  basis,
})

function ofHouse(kitchen: Kitchen, region: RegionPack | null): readonly FirstLine[] {
  const { houseBuilt, gas } = kitchen.survey
  const limit = asbestosYear(region)
  const isOld = houseBuilt !== null && houseBuilt < limit
  return [
    ...(region === null
      ? [
          line(
            message('first.drill.region'),
            ['region'],
            usual('the rules for cables differ from country to country'),
          ),
        ]
      : []),
    ...(isOld
      ? [
          line(
            message('first.drill.asbestos', { year: String(houseBuilt), limit: String(limit) }),
            ['survey.houseBuilt', 'region'],
            region?.asbestosBefore.basis ?? usual('homes built before 2000 may hold asbestos'),
          ),
        ]
      : []),
    ...(houseBuilt === null
      ? [
          line(
            message('first.drill.year-open'),
            ['survey.houseBuilt'],
            usual('a house of unknown age may hold asbestos'),
          ),
        ]
      : []),
    ...(gas === true
      ? [
          line(
            message('first.drill.gas'),
            ['survey.gas'],
            usual('gas pipes run to what they feed, and are not always seen'),
          ),
        ]
      : []),
  ]
}

function ofWall(wall: Wall): readonly FirstLine[] {
  const of = (key: string) => factId('walls', wall.id, key)
  const values = { wall: wallSaid(wall) }
  const doubt = wall.knock === null ? null : knockDoubt(wall)
  return [
    ...(wall.traced === 'whole'
      ? []
      : [line(message('first.drill.not-traced', values), [of('traced')], TRACED)]),
    ...(wall.provedDead === true
      ? []
      : [line(message('first.drill.not-dead', values), [of('provedDead')], DEAD)]),
    ...(wall.construction === null
      ? [line(message('first.drill.kind-open', values), [of('construction')], KIND)]
      : []),
    ...(doubt === null
      ? []
      : [line(message(`first.drill.knock-${doubt}`, values), [of('knock'), of('construction')], KIND)]),
  ]
}

/** Do not drill yet, and why; where no reason is left of these, the plan and its making safe still come first. */
export function drillLines(kitchen: Kitchen, region: RegionPack | null): readonly FirstLine[] {
  const walls = wallsToDrill(kitchen)
  const none = [line(message('first.drill.nothing-traced'), ['walls'], TRACED)]
  const why = [...ofHouse(kitchen, region), ...(walls.length === 0 ? none : walls.flatMap(ofWall))]
  const first = usual(
    'holes are marked from the plan, and judged against every band and pipe, before any is drilled',
  )
  return why.length > 0 ? why : [line(message('first.drill.plan-first'), ['walls'], first)]
}
