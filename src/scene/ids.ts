/** Part names in the order of their ids; the id picture gives each its own flat colour. */
export type Ids = readonly string[]

/** Steps between colours, so that rounding on the way to the screen can't mix two parts up. */
const STEP = 8
const LEVELS = 256 / STEP

/** The flat colour of the part at a place of the list, as #rrggbb. Black is nothing. */
export function idColour(at: number): string {
  const n = at + 1
  const channel = (k: number) => {
    const value = Math.floor(n / LEVELS ** k) % LEVELS
    return (value * STEP + (value > 0 ? STEP / 2 : 0)).toString(16).padStart(2, '0')
  }
  return `#${channel(0)}${channel(1)}${channel(2)}`
}

/** Which part a pixel of the id picture shows; undefined for the ground. */
export function partAt(ids: Ids, red: number, green: number, blue: number): string | undefined {
  const level = (c: number) => Math.floor(c / STEP)
  const n = level(red) + level(green) * LEVELS + level(blue) * LEVELS ** 2
  return ids[n - 1]
}
