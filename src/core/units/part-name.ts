import type { Appliance, FinishingPart, Kitchen, Worktop } from '../kitchen/schema'
import { eachOnce } from './each-once'
import { type NamingKitchen, partPlace, runsAlong } from './part-place'

const KIND_WORDS: Readonly<Record<FinishingPart['kind'], string>> = {
  'end-panel': 'end panel',
  filler: 'filler',
  plinth: 'plinth',
  cornice: 'cornice',
  pelmet: 'pelmet',
  upstand: 'upstand',
  splashback: 'splashback',
  scribe: 'scribe',
}

/** One of several alike by its number in the file, a single one by what it is. */
function numbered(word: string, alike: readonly { readonly id: string }[], id: string): string {
  if (alike.length < 2) return word
  return `${word} ${alike.findIndex((one) => one.id === id) + 1}`
}

/**
 * What a finishing part is called: the user's own text, else its kind and place ("filler on the left of base unit 4");
 * one that runs along several units, and is the only one of its kind, by its kind alone. No two are called alike.
 */
export function partName(kitchen: NamingKitchen, part: FinishingPart): string {
  if (part.name !== undefined) return part.name
  const at = kitchen.finishing.findIndex(({ id }) => id === part.id)
  return (
    eachOnce(kitchen.finishing.map((one) => one.name ?? placedName(kitchen, one)))[at] ??
    placedName(kitchen, part)
  )
}

function placedName(kitchen: NamingKitchen, part: FinishingPart): string {
  const word = KIND_WORDS[part.kind]
  const alike = kitchen.finishing.filter(({ kind }) => kind === part.kind)
  const isOnly = alike.length < 2 && runsAlong(part)
  const place = isOnly ? null : partPlace(kitchen, part)
  return place === null ? word : `${word} ${place}`
}

/** What a worktop is called: the user's own text, else "worktop", and its number where there are several. */
export function worktopName(
  { worktops }: Pick<Kitchen, 'worktops'>,
  top: Pick<Worktop, 'id' | 'name'>,
): string {
  return top.name ?? numbered('worktop', worktops, top.id)
}

/** What an appliance is called: the user's own text, else its kind, and its number where there are several. */
export function applianceName({ appliances }: Pick<Kitchen, 'appliances'>, one: Appliance): string {
  const alike = appliances.filter(({ kind }) => kind === one.kind)
  return one.name ?? numbered(one.kind.replaceAll('-', ' '), alike, one.id)
}

/** Names that stand as they are: with their number ("hob 2"), an article, or whose it is. */
const AS_IT_IS = /^(the|an?|my|our|your|their|his|her|its)\b|^\S+['’]s\b|^\S+( \S+)? \d+$/i

/**
 * A name as it is said within a sentence: "the hob", "the filler on the left of base unit 4". One with its number, an
 * article or an owner is said as it is.
 */
export function nameSaid(name: string): string {
  return AS_IT_IS.test(name) ? name : `the ${name}`
}

/** An appliance as it is said within a sentence: "the dishwasher", "hob 2". */
export function applianceSaid({ name, kind }: Pick<Appliance, 'name' | 'kind'>): string {
  return nameSaid(name ?? kind.replaceAll('-', ' '))
}

/** The kitchen with a name for every part, worktop and appliance, so that none has to be called by its id. */
export function withPartNames(kitchen: Kitchen): Kitchen {
  return {
    ...kitchen,
    finishing: kitchen.finishing.map((part) => ({ ...part, name: partName(kitchen, part) })),
    worktops: kitchen.worktops.map((top) => ({ ...top, name: worktopName(kitchen, top) })),
    appliances: kitchen.appliances.map((one) => ({ ...one, name: applianceName(kitchen, one) })),
  }
}
