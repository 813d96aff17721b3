import type { Wall } from '../kitchen/schema'

/** How a wall takes a fixing: into its masonry anywhere, or only where there is timber or a stud. Null: not known. */
export type WallKind = 'masonry' | 'studs' | null

const KIND_OF: Readonly<Record<NonNullable<Wall['construction']>, NonNullable<WallKind>>> = {
  masonry: 'masonry',
  aircrete: 'masonry',
  'old-brick': 'masonry',
  'dot-and-dab': 'masonry',
  concrete: 'masonry',
  'insulated-lining': 'masonry',
  'over-opening': 'masonry',
  'chimney-breast': 'masonry',
  'timber-stud': 'studs',
  'metal-stud': 'studs',
  'lath-and-plaster': 'studs',
}

/** Plasterboard never carries a unit, nor does the board of dot-and-dab: what counts is what stands behind it. */
export function wallKind(wall: Pick<Wall, 'construction'>): WallKind {
  return wall.construction === null ? null : KIND_OF[wall.construction]
}

/**
 * Does knocking contradict what the wall is said to be made of? Blown plaster always asks for a test. A solid sound
 * over studs, or a hollow one over masonry that is not board on dabs or a lining, asks which of the two is right.
 */
export function knockDoubt(wall: Wall): 'blown' | 'solid' | 'hollow' | null {
  const kind = wallKind(wall)
  if (wall.knock === 'blown') return 'blown'
  if (kind === 'studs' && wall.knock === 'solid') return 'solid'
  const isBoarded = wall.construction === 'dot-and-dab' || wall.construction === 'insulated-lining'
  return kind === 'masonry' && !isBoarded && wall.knock === 'hollow' ? 'hollow' : null
}
