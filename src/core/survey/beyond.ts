import { type Basis, type Figure, hasValue, type InputId, quantise, sortedIds } from '../figure'
import { fitPlane, heightOn, type Plane } from '../geometry/plane'
import { mergedIds } from '../ids'
import { type Frame, framesAlong, linksBetween, pointIn, type WallChains } from './wall-chain'

/** A place given by its wall. */
export interface Spot {
  readonly wall: number
  readonly along: Figure
  readonly out: Figure
}

interface Reading extends Spot {
  readonly z: Figure
}

/** The plane through all readings, and where the walls concerned stand; null: one wall, which is its own frame. */
interface Lie {
  readonly plane: Plane | null
  readonly frames: readonly Frame[] | null
}

/** How the plane lies with an input at its value and more, and less, by its precision. */
type Moved = readonly [up: Lie, down: Lie]

/** The plane through all readings, over one stretch of walls. */
interface Fit {
  readonly first: number
  /** Places and heights of the readings, then the links between the walls. */
  readonly inputs: readonly Figure[]
  readonly from: readonly InputId[]
  /** Null while any input is unknown. */
  readonly lies: { readonly asRead: Lie; readonly moved: readonly Moved[] } | null
}

const beyond: Basis = {
  kind: 'geometry',
  why: 'outside the readings: the least-squares plane through all of them',
}

/**
 * Heights outside the readings, on the plane through all of them, wherever they were taken; unknown if any of them is.
 * Precision is that of `derive`: every input in turn off by its own. The plane depends on the walls concerned and not on
 * the place, so it is laid once for each stretch of walls and serves every place.
 */
export function planeBeyond(chains: WallChains, readings: readonly Reading[]): (place: Spot) => Figure {
  const walls = readings.map(({ wall }) => wall)
  const fits = new Map<string, Fit>()
  return (place) => {
    const [first, last] = [Math.min(place.wall, ...walls), Math.max(place.wall, ...walls)]
    const key = `${first} ${last}`
    const fit = fits.get(key) ?? fitOver(chains, readings, first, last)
    fits.set(key, fit)
    return heightOf(fit, place)
  }
}

function fitOver(chains: WallChains, readings: readonly Reading[], first: number, last: number): Fit {
  const links = linksBetween(chains, first, last)
  const inputs = [
    ...readings.flatMap(({ along, out }) => [along, out]),
    ...readings.map(({ z }) => z),
    ...links,
  ]
  const from = mergedIds(inputs.map((input) => input.from))
  if (!inputs.every(hasValue)) return { first, inputs, from, lies: null }
  const walls = readings.map(({ wall }) => wall - first)
  const values = inputs.map(({ value }) => value)
  const asRead = lieOf(walls, values)
  const lieWith = (i: number, value: number) => lieOf(walls, values.with(i, value))
  const moved = inputs.map(({ value, pm }, i): Moved => {
    return pm === 0 ? [asRead, asRead] : [lieWith(i, value + pm), lieWith(i, value - pm)]
  })
  return { first, inputs, from, lies: { asRead, moved } }
}

/** The plane by the values of a fit's inputs. `walls`: of each reading, counted from the first concerned. */
function lieOf(walls: readonly number[], values: readonly number[]): Lie {
  const links = values.slice(3 * walls.length)
  const frames = links.length === 0 ? null : framesAlong(links)
  const samples = walls.map((wall, i) => ({
    at: pointOn(frames, wall, values[2 * i] as number, values[2 * i + 1] as number),
    z: values[2 * walls.length + i] as number,
  }))
  return { plane: fitPlane(samples), frames }
}

function pointOn(frames: readonly Frame[] | null, wall: number, along: number, out: number) {
  return frames === null ? { x: along, y: out } : pointIn(frames[wall] as Frame, along, out)
}

function heightOf({ first, inputs, from, lies }: Fit, { wall, along, out }: Spot): Figure {
  const all = mergedIds([from, along.from, out.from])
  if (lies === null || !hasValue(along) || !hasValue(out)) {
    const missing = [along, out, ...inputs].flatMap((input) => (hasValue(input) ? [] : input.missing))
    return { state: 'unknown', unit: 'mm', basis: beyond, from: all, missing: sortedIds(missing) }
  }
  const height = ({ plane, frames }: Lie, x = along.value, y = out.value) =>
    plane === null ? Number.NaN : heightOn(plane, pointOn(frames, wall - first, x, y))
  const value = height(lies.asRead)
  const worse = (up: number, down: number) => Math.max(Math.abs(up - value), Math.abs(down - value))
  const { asRead } = lies
  let pm = worse(height(asRead, along.value + along.pm), height(asRead, along.value - along.pm))
  pm += worse(
    height(asRead, along.value, out.value + out.pm),
    height(asRead, along.value, out.value - out.pm),
  )
  for (const [up, down] of lies.moved) pm += worse(height(up), height(down))
  const isAssumed = [along, out, ...inputs].some((input) => input.state === 'assumed')
  return {
    state: isAssumed ? 'assumed' : 'known',
    value: quantise(value),
    pm: quantise(pm),
    unit: 'mm',
    basis: beyond,
    from: all,
  }
}
