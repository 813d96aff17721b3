import { type InputId, sortedIds } from '../figure'
import type { Kitchen, Wall } from '../kitchen/schema'
import { type Message, message } from '../message'
import type { Band, Finding, Hole } from '../plan/types'
import type { CableBands, RegionPack } from '../region/region'
import type { Survey } from '../survey/survey'
import { accessoryBands, isThin } from './accessory-bands'
import { ceilingStrip } from './ceiling-strip'
import { cornerStrips, type Doubt } from './corner-strips'
import { finding } from './finding'
import { lintelBands } from './lintels'
import { nameOnWall } from './name-on-wall'
import { serviceBands } from './service-bands'
import { zoneBands } from './zone-bands'

export type SurveyForBands = Pick<Survey, 'frames' | 'along' | 'height' | 'floorAt' | 'ceilingOver'>

export interface WorkedBands {
  /** Every band that counts for any hole on its wall. */
  readonly bands: readonly Band[]
  /** Bands of accessories on the other face of thick walls: they count for holes whose tip comes near that face. */
  readonly deep: readonly Band[]
  /** What decides whether some of the bands are there at all: corners, and the thickness of walls with a face behind. */
  readonly doubts: readonly Doubt[]
  readonly findings: readonly Finding[]
}

/**
 * Every band of every wall: where cables are to be expected by the rules of the region, where services are known to
 * run, where lintels lie. Without a region there are no cable bands, and every hole is asked about for that reason.
 */
export function workOutBands(
  kitchen: Kitchen,
  survey: SurveyForBands,
  region: RegionPack | null,
): WorkedBands {
  const rules = region?.bands ?? null
  const perWall = kitchen.walls.map((wall) => ofWall(wall, survey, rules))
  const corners = rules === null ? { bands: [], doubts: [] } : cornerStrips(kitchen, survey.frames, rules)
  const bands = [...perWall.flatMap((w) => w.bands), ...corners.bands]
  return {
    bands,
    deep: perWall.flatMap((w) => w.deep),
    doubts: [...corners.doubts, ...perWall.flatMap((w) => w.doubts)],
    findings: kitchen.walls.flatMap((wall) => unknownBands(wall, nameOf(wall, survey), kitchen, bands)),
  }
}

function ofWall(wall: Wall, survey: SurveyForBands, rules: CableBands | null): Omit<WorkedBands, 'findings'> {
  const always = [...serviceBands(wall, survey), ...lintelBands(wall, survey)]
  const frame = survey.frames.find((f) => f.wall === wall.id)
  if (rules === null || frame === undefined) return { bands: always, deep: [], doubts: [] }
  const accessories = accessoryBands(wall, survey, rules)
  const thin = isThin(wall, rules)
  const counts = (b: Band) => b.face === 'room' || thin
  return {
    bands: [
      ...accessories.filter(counts),
      ...zoneBands(wall, frame, survey, rules),
      ...ceilingStrip(wall, frame, survey, rules),
      ...always,
    ],
    deep: accessories.filter((b) => !counts(b)),
    doubts: accessories.some((b) => b.face === 'other') ? [thicknessDoubt(wall)] : [],
  }
}

/** Whether what is on the other face counts here hangs on the thickness of the wall. */
function thicknessDoubt(wall: Wall): Doubt {
  const { thickness } = wall
  const missing: readonly InputId[] = thickness.state === 'unknown' ? thickness.missing : []
  return { wall: wall.id, left: null, right: null, from: thickness.from, missing }
}

/** Only where something is fixed: a band that cannot be placed on a bare wall hurts nobody. */
function isFixedTo(wall: Wall, kitchen: Kitchen): boolean {
  return kitchen.units.some((unit) => unit.wall === wall.id && unit.kind !== 'island')
}

/** An unread ceiling matters where something hangs or is held at its top, not for a run of base units. */
export function reachesCeiling(kind: Kitchen['units'][number]['kind']): boolean {
  return (
    kind === 'wall' || kind === 'corner-wall' || kind === 'tall' || kind === 'bridging' || kind === 'open-end'
  )
}

function nameOf(wall: Wall, survey: SurveyForBands): string {
  return survey.frames.find((frame) => frame.wall === wall.id)?.name ?? wall.id
}

function unknownBands(
  wall: Wall,
  name: string,
  kitchen: Kitchen,
  bands: readonly Band[],
): readonly Finding[] {
  if (!isFixedTo(wall, kitchen)) return []
  const high = kitchen.units.some((unit) => unit.wall === wall.id && reachesCeiling(unit.kind))
  const lacking = bands.filter(
    (b) => b.wall === wall.id && b.unknownBecause.length > 0 && (b.kind !== 'ceiling' || high),
  )
  const subjects = sortedIds(lacking.map((b) => (b.kind === 'ceiling' ? 'ceiling' : (b.about[0] as string))))
  return subjects.map((about) => {
    const its = lacking.filter((b) => (b.kind === 'ceiling' ? about === 'ceiling' : b.about[0] === about))
    return finding({
      rule: 'band-unknown',
      subjects: [`${wall.id}.${about}`],
      weight: 'ask',
      dangerous: true,
      about: [about, wall.id],
      where: { wall: wall.id },
      say: message(`holes.band-unknown-${kindOf(its[0] as Band)}`, {
        about: nameOnWall(wall, about),
        wall: name,
      }),
      from: its.flatMap((b) => b.unknownBecause),
      basis: (its[0] as Band).basis,
      ask: howToPlace(its[0] as Band, nameOnWall(wall, about)),
    })
  })
}

function howToPlace({ kind }: Band, about: string): Message {
  if (kind === 'ceiling') return message('holes.read-the-ceiling')
  return kind === 'corner' ? message('holes.measure-the-wall') : message('holes.measure-its-place', { about })
}

function kindOf(band: Band): 'accessory' | 'ceiling' | 'corner' | 'service' | 'lintel' {
  return band.kind === 'accessory-horizontal' || band.kind === 'accessory-vertical' ? 'accessory' : band.kind
}

/** The bands a plan lists: those that count everywhere, and of the rest those that some hole has reached. */
export function bandsOfPlan(worked: WorkedBands, holes: readonly Hole[]): readonly Band[] {
  const hit = new Set(holes.flatMap((hole) => hole.hitBands))
  return [...worked.bands, ...worked.deep.filter((b) => hit.has(b.id))]
}
