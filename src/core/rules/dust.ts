import { type InputId, valueOf } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Wall } from '../kitchen/schema'
import type { Found, Rule, Site } from './rule'

const MINERAL: readonly unknown[] = [
  'brick',
  'old-brick',
  'dense-block',
  'aircrete',
  'concrete',
  'stone',
  'tile',
]

/** Mineral layers of a wall that its deepest hole goes into, by their facts. */
function drilledThrough({ holes }: Site, wall: Wall): readonly InputId[] {
  const depths = holes
    .filter((hole) => hole.wall === wall.id && hole.verdict !== 'refused')
    .map(({ depth }) => depth)
  if (depths.length === 0) return []
  const deepest = Math.max(...depths.map((depth) => valueOf(depth) ?? Number.POSITIVE_INFINITY))
  let front = 0
  return wall.layers.flatMap(({ id, material, thickness }) => {
    const reached = front < deepest
    front += valueOf(thickness) ?? 0
    return reached && material !== null && MINERAL.includes(material)
      ? [factId('walls', wall.id, 'layers', id, 'material')]
      : []
  })
}

/** What sets free stone dust in this kitchen: holes in masonry, cuts in stone. */
function stoneDust(site: Site): readonly InputId[] {
  const { walls, worktops } = site.kitchen
  const stone = worktops.filter(({ material }) => material === 'stone')
  return [
    ...walls.flatMap((wall) => drilledThrough(site, wall)),
    ...stone.map(({ id }) => factId('worktops', id, 'material')),
  ]
}

/** F93: stone dust in the air, and one long lead for everything. */
export const rule: Rule = {
  id: 'dust',
  heading: 'Dust of stone or brick',
  catches: ['F93'],
  dangerous: true,
  basis: {
    kind: 'standard',
    source: 'HSE, Construction dust: CIS36',
    where: 'silica: extraction on the tool and a mask fitted to the face; from memory',
  },
  why: 'Dust of brick, concrete and stone scars lungs, and cannot be seen at the size that does it.',
  words: {
    without:
      'Holes and cuts here set free stone dust, and there is no extraction at the tools. Get it, and a mask fitted to the face, before the first hole.',
    'not-said':
      'Holes and cuts here set free stone dust. Is there extraction at the drill and saw, and a mask fitted to the face?',
    ask: 'Hire a vacuum of the right class with the tools, on a lead of its own and unrolled.',
  },
  check: (site): readonly Found[] => {
    const from = stoneDust(site)
    const { extraction } = site.kitchen.crew
    if (from.length === 0 || extraction === true) return []
    const none = extraction === false
    return [
      {
        subjects: ['room'],
        about: ['room'],
        weight: 'ask',
        dangerous: none,
        said: [none ? 'without' : 'not-said'],
        from: ['crew.extraction', ...from],
        ask: ['ask'],
      },
    ]
  },
}
