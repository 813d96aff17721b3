import { derive, type Figure } from '../figure'
import type { Kitchen, Wall } from '../kitchen/schema'
import type { Survey } from '../survey/survey'
import type { WallThing } from './types'

const geometry = { kind: 'geometry', why: 'half its size either side of its middle' } as const
const edge = (centre: Figure, size: Figure, sign: 1 | -1): Figure =>
  derive('mm', geometry, [centre, size], (c, s) => c + (sign * s) / 2)

/** What drawings show in and on the walls: studs, noggings, accessories of the room's own face, doors and windows. */
export function wallThings(kitchen: Kitchen, survey: Survey): readonly WallThing[] {
  return kitchen.walls.flatMap((wall) => [
    ...studs(wall, survey),
    ...noggings(wall, survey),
    ...accessories(wall, survey),
    ...openings(wall, survey),
  ])
}

function studs(wall: Wall, survey: Survey): readonly WallThing[] {
  return wall.studs.map((stud) => {
    const centre = survey.along(wall.id, stud.centre)
    return {
      id: `${wall.id}.${stud.id}`,
      wall: wall.id,
      kind: 'stud',
      left: edge(centre, stud.width, -1),
      right: edge(centre, stud.width, 1),
      bottom: null,
      top: null,
    }
  })
}

function noggings(wall: Wall, survey: Survey): readonly WallThing[] {
  return wall.noggings.map((n) => {
    const from = survey.along(wall.id, n.from)
    const centre = survey.height(n.centre, { wall: wall.id, along: from, out: zero })
    return {
      id: `${wall.id}.${n.id}`,
      wall: wall.id,
      kind: n.kind,
      left: from,
      right: survey.along(wall.id, n.to),
      bottom: edge(centre, n.depth, -1),
      top: edge(centre, n.depth, 1),
    }
  })
}

const zero = derive('mm', { kind: 'geometry', why: 'on the face of the wall' }, [], () => 0)

function accessories(wall: Wall, survey: Survey): readonly WallThing[] {
  return wall.accessories
    .filter((a) => a.face === 'room')
    .map((a) => {
      const centre = survey.along(wall.id, a.along)
      const height = survey.height(a.height, { wall: wall.id, along: centre, out: zero })
      return {
        id: `${wall.id}.${a.id}`,
        wall: wall.id,
        kind: 'accessory',
        left: edge(centre, a.width, -1),
        right: edge(centre, a.width, 1),
        bottom: edge(height, a.tall, -1),
        top: edge(height, a.tall, 1),
      }
    })
}

function openings(wall: Wall, survey: Survey): readonly WallThing[] {
  return wall.openings.map((o) => {
    const left = survey.along(wall.id, o.left)
    const at = { wall: wall.id, along: left, out: zero }
    return {
      id: `${wall.id}.${o.id}`,
      wall: wall.id,
      kind: o.kind,
      left,
      right: survey.along(wall.id, o.right),
      bottom: survey.height(o.bottom, at),
      top: survey.height(o.top, at),
    }
  })
}
