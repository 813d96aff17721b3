import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import type { Accessory } from '../kitchen/schema'
import { type CornerSide, cornerSides, fromCorner } from '../placing/corners'
import { lapOf, meeting, type Stretch } from '../placing/laps'
import { type RunPiece, runPieces } from '../placing/run-pieces'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'fingers, and a screwdriver for the plate, beside a panel',
}
const FINGERS = known(25, 0, 'mm', [], practice)
/** A run that ends nearer than this to a wall hides what is on that wall beside it, mm. Common practice. */
const BESIDE_A_WALL = 300

/** The plate of an accessory along its wall or up it: half its size each way of its middle; a point where it is not known. */
function plate(middle: Figure, size: Figure): Stretch {
  const half = hasValue(size) ? derive('mm', rule.basis, [size], (s) => (s as number) / 2) : NOTHING
  return { from: sum('mm', rule.basis, [middle], [half]), to: sum('mm', rule.basis, [middle, half]) }
}

const NOTHING = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the middle of the plate' })

interface Plate {
  readonly wall: string
  readonly accessory: Accessory
  readonly along: Stretch
  readonly upright: Stretch
}

function found(
  site: Site,
  piece: RunPiece,
  { wall, accessory, upright }: Plate,
  laps: readonly Figure[],
): Found | null {
  const meets = meeting([...laps, lapOf(upright, { from: piece.bottom, to: piece.top })])
  const along = site.survey.along(wall, accessory.along)
  const common = {
    subjects: [piece.id, `${wall}.${accessory.id}`],
    about: [piece.id, accessory.id],
    where: { wall, along },
    figures: [...laps, along],
    ask: ['ask'] as const,
  }
  const values = { what: piece.name, wall: site.name(wall), along, room: FINGERS }
  if (meets === 'yes') return { ...common, weight: 'stop', said: ['behind', values] }
  if (meets === 'perhaps') return { ...common, weight: 'ask', said: ['near', values] }
  return null
}

/** On the wall of the run: behind a unit or panel, or too close beside it. */
function onItsWall(site: Site, piece: RunPiece, plated: Plate): Found | null {
  const lap = lapOf(plated.along, { from: piece.left, to: piece.right })
  const hit = found(site, piece, plated, [lap])
  const upright = lapOf(plated.upright, { from: piece.bottom, to: piece.top })
  if (hit !== null || !hasValue(lap) || meeting([upright]) !== 'yes') return hit
  const gap = derive('mm', rule.basis, [lap], (l) => -(l as number))
  const short = sum('mm', practice, [FINGERS], [gap])
  if (!hasValue(short) || !hasValue(gap) || gap.value < 0 || short.value <= short.pm) return null
  return {
    subjects: [piece.id, `${plated.wall}.${plated.accessory.id}`],
    about: [piece.id, plated.accessory.id],
    weight: 'warn',
    said: ['beside', { what: piece.name, wall: site.name(plated.wall), gap, room: FINGERS }],
    where: { wall: plated.wall, along: piece.left },
    ask: ['ask'],
  }
}

/** On the wall at the end of a run: the end unit or panel stands in front of it. */
function roundTheCorner(site: Site, side: CornerSide, piece: RunPiece, plated: Plate): Found | null {
  const gap = fromCorner(side, 'own', piece[side.end])
  if (!hasValue(gap) || gap.value >= BESIDE_A_WALL) return null
  const ends = [plated.along.from, plated.along.to].map((at) => fromCorner(side, 'other', at)) as [
    Figure,
    Figure,
  ]
  const reach = side.otherEnd === 'left' ? { from: ends[0], to: ends[1] } : { from: ends[1], to: ends[0] }
  return found(site, piece, plated, [lapOf(reach, { from: piece.back, to: piece.front })])
}

function platesOf(site: Site): readonly Plate[] {
  return site.kitchen.walls.flatMap(({ id: wall, accessories }) =>
    accessories
      .filter(({ kind, face }) => kind === 'switch' && face === 'room')
      .map((accessory) => {
        const along = site.survey.along(wall, accessory.along)
        const height = site.onFace(wall, along, accessory.height)
        return {
          wall,
          accessory,
          along: plate(along, accessory.width),
          upright: plate(height, accessory.tall),
        }
      }),
  )
}

/** F06: a light switch behind the end of a run, or so close to its panel that no finger gets at it. */
export const rule: Rule = {
  id: 'switch-behind',
  heading: 'A switch that will be covered',
  catches: ['F06'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'the plate of the switch against the sides of units and panels' },
  why: 'The switch by the door is found again the evening the tall panel stands, behind it.',
  words: {
    behind: 'The switch on {wall}, at {along} from its left corner, will be behind {what}.',
    near: 'The switch on {wall}, at {along} from its left corner, may be behind {what}. Readings this near cannot tell: measure both from the same corner.',
    beside: 'There are {gap} between the switch on {wall} and {what}. Fingers and a screwdriver need {room}.',
    ask: 'Have an electrician move it while the wall is still open, or end the run before it.',
  },
  check: (site) => {
    const plates = platesOf(site)
    if (plates.length === 0) return []
    const pieces = runPieces(site)
    const sides = cornerSides(site.kitchen, site.survey)
    return plates.flatMap((plated) => [
      ...pieces
        .filter(({ wall }) => wall === plated.wall)
        .flatMap((piece) => onItsWall(site, piece, plated) ?? []),
      ...sides
        .filter(({ other }) => other === plated.wall)
        .flatMap((side) =>
          pieces
            .filter(({ wall }) => wall === side.own)
            .flatMap((piece) => roundTheCorner(site, side, piece, plated) ?? []),
        ),
    ])
  },
}
