import type { Problem } from '../../../core/kitchen/problem'

/** Where a field stands, as problems with a file name it: `walls.a.length` is `walls "a" › length`. */
export function placeOf(path: string): string {
  const parts: string[] = []
  for (const key of path.split('.')) {
    const before = parts.at(-1) ?? ''
    // `order` is a list among the wishes, and a place along the wall everywhere else.
    const isId = before === 'order' ? parts.at(-2) === 'wishes' : LISTS.has(before)
    if (isId) parts.push(`${parts.pop()} "${key}"`)
    else parts.push(key)
  }
  return parts.join(' › ')
}

/** Keys of the kitchen file that are lists of things with ids. */
const LISTS: ReadonlySet<string> = new Set([
  'lines',
  'walls',
  'layers',
  'layersToCome',
  'studs',
  'noggings',
  'widths',
  'plumb',
  'straightness',
  'accessories',
  'services',
  'points',
  'lintels',
  'openings',
  'readings',
  'ceiling',
  'boxes',
  'access',
  'route',
  'units',
  'feet',
  'doors',
  'drawers',
  'rails',
  'appliances',
  'finishing',
  'worktops',
  'joints',
  'cutouts',
  'fixings',
  'heights',
  'order',
  'overrides',
  'people',
  'windows',
])

/** What is wrong with a field, or with something inside it. */
export function problemsAt(problems: readonly Problem[], path: string): readonly Problem[] {
  const place = placeOf(path)
  return problems.filter((p) => p.path === place || p.path.startsWith(`${place} › `))
}
