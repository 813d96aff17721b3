/** Words that may stand in the id of a foot or a corner. */
const WORDS: ReadonlySet<string> = new Set(['front', 'back', 'left', 'right', 'middle', 'centre'])
const SHORT: Readonly<Record<string, string>> = {
  fl: 'front left',
  fr: 'front right',
  bl: 'back left',
  br: 'back right',
}
const ARM = /^arm-(left|right)-(outer|inner)$/

/** Where a foot stands under its unit; sizes null while they are not known. */
export interface FootPlace {
  readonly x: number | null
  readonly y: number | null
  readonly width: number | null
  readonly depth: number | null
}

/**
 * What a foot or a corner of a box is called: "front right". Left and right as the unit stands, seen from the front. Its
 * id says it where it is made of such words; else its place under the unit does; else the id is all there is.
 */
export function footName(id: string, place?: FootPlace): string {
  const short = SHORT[id]
  if (short !== undefined) return short
  const arm = ARM.exec(id)
  if (arm !== null) return `${arm[2]} corner of the ${arm[1]} arm`
  const parts = id.split('-')
  if (parts.every((part) => WORDS.has(part))) return parts.join(' ')
  return byPlace(place) ?? parts.join(' ')
}

/** In thirds of the width, so that a leg under the middle is not called left or right. */
function byPlace(place: FootPlace | undefined): string | undefined {
  if (place === undefined) return undefined
  const { x, y, width, depth } = place
  if (x === null || y === null || width === null || depth === null) return undefined
  const side = x < width / 3 ? 'left' : x > (2 * width) / 3 ? 'right' : 'middle'
  return `${y < depth / 2 ? 'back' : 'front'} ${side}`
}
