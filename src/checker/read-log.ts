import { at, isRecord, itemsAt, ownId, rootSpot, type Spot, textAt } from './json'
import { isKnown, type Measure, measureAt, work } from './measure'

/**
 * What the day log says was done and reached. This is the one place where what was achieved replaces what is derived:
 * undersides read on the day, the floor found under a foot, facts seen to be otherwise.
 */
export interface Achieved {
  readonly entries: ReadonlySet<string>
  readonly done: ReadonlySet<string>
  /** Edge of a carcass as read, re the line. */
  readonly edges: ReadonlyMap<string, { readonly edge: 'underside' | 'top'; readonly level: Measure }>
  /** Floor under one foot as found, by `unit.foot`, re the line. */
  readonly floorAtFoot: ReadonlyMap<string, Measure>
  /** Facts as found, by fact id. */
  readonly observed: ReadonlyMap<string, unknown>
  /** Screws and legs were tried: what a turn does may then differ from the file. */
  readonly turnsTried: boolean
}

export function readLog(dayLog: unknown): Achieved {
  const entries = itemsAt(rootSpot(dayLog), 'entries')
  const holding = entriesThatHold(entries)
  const ofKind = (kind: string): readonly Spot[] => holding.filter((e) => textAt(e, 'kind') === kind)
  return {
    entries: new Set(entries.map(ownId)),
    done: new Set(ofKind('done').map((e) => textAt(e, 'operation') ?? '')),
    edges: new Map(
      ofKind('set').map((e) => [
        textAt(e, 'unit') ?? '',
        { edge: textAt(e, 'edge') === 'top' ? ('top' as const) : ('underside' as const), level: upOrDown(e) },
      ]),
    ),
    floorAtFoot: new Map(
      ofKind('floor-at-foot').map((e) => [
        `${textAt(e, 'unit') ?? ''}.${textAt(e, 'foot') ?? ''}`,
        work([measureAt(e, 'drop')], (drop) => -drop),
      ]),
    ),
    observed: new Map(ofKind('observed').map((e) => [textAt(e, 'fact') ?? '', at(e, 'value').json ?? null])),
    turnsTried: ofKind('tried').length > 0,
  }
}

/** A correction takes back the entry it names, and may itself be taken back by a later one. */
function entriesThatHold(entries: readonly Spot[]): readonly Spot[] {
  const taken = new Set<string>()
  for (let i = entries.length - 1; i >= 0; i--) {
    const entry = entries[i]
    if (entry === undefined || textAt(entry, 'kind') !== 'correct') continue
    if (!taken.has(ownId(entry))) taken.add(textAt(entry, 'entry') ?? '')
  }
  return entries.filter((e) => isRecord(e.json) && textAt(e, 'kind') !== 'correct' && !taken.has(ownId(e)))
}

function upOrDown(entry: Spot): Measure {
  const up = measureAt(entry, 'up')
  return isKnown(up) ? up : work([measureAt(entry, 'down')], (down) => -down)
}
