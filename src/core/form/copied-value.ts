import { mmTyped } from './typed'

type Thing = Readonly<Record<string, unknown>>

/** What a thing takes over of the one before it, whose value it is; undefined: nothing that can be told yet. */
export function copiedValue(key: string, value: unknown, before: Thing, thing: Thing): unknown {
  return key === 'feet' ? feetFor(value, before, thing) : value
}

/**
 * Feet stand as far in from the right side of a wider unit as they do from that of a narrower one; undefined where it is
 * not known yet how much wider it is, lest a foot stood at nobody's side.
 */
function feetFor(feet: unknown, before: Thing, thing: Thing): unknown {
  const [was, is] = [mmTyped(before['width']), mmTyped(thing['width'])]
  if (was === undefined || is === undefined || !Array.isArray(feet)) return undefined
  return feet.map((foot: Thing) => ((mmTyped(foot['x']) ?? 0) > was / 2 ? moved(foot, is - was) : foot))
}

/** To the tenth of a micrometre: what is left of adding inches. */
const round = (mm: number): number => Math.round(mm * 1e4) / 1e4

function moved(foot: Thing, by: number): Thing {
  const { x } = foot
  const mm = round((mmTyped(x) ?? 0) + by)
  return { ...foot, x: typeof x === 'object' && x !== null ? { ...x, value: mm } : mm }
}
