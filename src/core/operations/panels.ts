import { type Figure, hasValue, restingOn } from '../figure'
import type { FinishingPart } from '../kitchen/schema'
import type { Message } from '../message'
import type { NamedFigure, Operation, OperationCheck, Stage } from '../plan/types'
import { partName } from '../units/part-name'
import { listed } from '../words/listed'
import { cornerTaper, endBy, endOf, type FillerPlace, fillerPlace, widthAtFront } from './fillers'
import type { Job } from './job'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { cornerEnd, group } from './neighbours'
import { TOLERANCE, usual } from './tolerances'

/** Less out of square than this over the depth of a unit is not seen, mm. */
const SEEN = 1

/** A corner that is not square, and what that does at the face of the unit. */
interface Taper {
  readonly does: readonly Message[]
  readonly figures: readonly NamedFigure[]
}

const SQUARE: Taper = { does: [], figures: [] }

/** The figure, resting also on what makes it a figure of this step. */
const knownBy = (figure: Figure, by: readonly Figure[]): Figure =>
  restingOn(
    figure,
    by.flatMap(({ from }) => from),
  )

const depthOf = (job: Job, part: FinishingPart): Figure | undefined =>
  part.of.flatMap((id) => job.unit(id)?.plan.depth ?? [])[0]

/** At the end of a wall: how wide the filler comes out at the face, where the wall beside it is not square to this one. */
function endTaper(job: Job, part: FinishingPart): Taper {
  const place = job.context.parts.find((p) => p.part.id === part.id)
  const end = endOf(job, place)
  const depth = depthOf(job, part)
  if (place?.wall == null || end === null || depth === undefined) return SQUARE
  const found = cornerTaper(job, place.wall, end, depth)
  if (found === null) return SQUARE
  const taper = knownBy(found, endBy(job, place, end))
  const atFront = widthAtFront(part.width, taper)
  return {
    does: sayTaper(taper, 'taper', { front: atFront, depth }),
    figures: [
      shown('taper', taper, 'corner-taper'),
      shown('width-at-front', atFront, 'width-at-front', { part: partName(job.kitchen, part) }),
    ],
  }
}

function sayTaper(taper: Figure, key: string, values: Readonly<Record<string, Figure>>): readonly Message[] {
  if (!hasValue(taper)) return [told('panel', `${key}.unknown`)]
  if (Math.abs(taper.value) < SEEN) return []
  const size = { ...taper, value: Math.abs(taper.value) }
  return [toldFigure('panel', `${key}.${taper.value > 0 ? 'wider' : 'narrower'}`, { ...values, taper: size })]
}

/** In a corner: how far the two runs are from square to each other over the depth of the units. */
function cornerWords(job: Job, { first, by }: FillerPlace): Taper {
  const end = cornerEnd(job, first)
  const depth = first.plan.depth
  const found = end === null ? null : cornerTaper(job, first.wall, end, depth)
  if (found === null) return SQUARE
  const taper = knownBy(found, by)
  return {
    does: sayTaper(taper, 'corner-taper', { depth }),
    figures: [shown('taper', taper, 'corner-taper')],
  }
}

function stageOf(place: FillerPlace | null): Stage {
  if (place === null) return 'end-panels'
  if (group(place.next) === 'hung') return 'wall-units'
  return place.at === 'corner' ? 'corner-base' : 'base-units'
}

/** A filler that sets the place of the next unit goes on before that is pushed home. */
function setIn(job: Job, part: FinishingPart, place: FillerPlace): readonly Message[] {
  const { at, first, next, onto } = place
  const values = { first: first.name, next: next.name, onto: onto.name }
  return [
    told('panel', at, values),
    toldFigure('panel', 'width', { width: part.width }),
    ...(at === 'corner' ? cornerWords(job, place).does : []),
    told('panel', onto.id === next.id ? 'onto-before' : 'onto', values),
  ]
}

/** Whether it belongs to spaces for appliances alone: there is no side to screw it to. */
function standsFree(job: Job, { of }: FinishingPart): boolean {
  const spaces = job.kitchen.units.filter(({ kind }) => kind === 'appliance-space').map(({ id }) => id)
  return of.length > 0 && of.every((id) => spaces.includes(id))
}

/** Scribed when the run stands fast: a panel to wall and floor, a filler to the wall it closes the run against. */
function scribed(job: Job, part: FinishingPart): readonly Message[] {
  const units = listed(part.of.map((id) => job.name(id)))
  const isPanel = part.kind === 'end-panel'
  return [
    ...when(part.of.length > 0, told('panel', 'at', { units })),
    toldFigure('panel', 'width', { width: part.width }),
    ...(isPanel ? [] : endTaper(job, part).does),
    told('panel', isPanel ? 'scribe' : 'scribe-filler'),
    told('panel', isPanel && standsFree(job, part) ? 'stands-free' : 'fix'),
  ]
}

function checksOf(job: Job, part: FinishingPart, place: FillerPlace | null): readonly OperationCheck[] {
  const values = { part: partName(job.kitchen, part) }
  if (place === null) return [check(`panel.${part.id}`, 'scribe-gap', values, usual(0), TOLERANCE.scribeGap)]
  return [
    check(
      `panel.${part.id}.width`,
      'filler-width',
      values,
      knownBy(part.width, place.by),
      knownBy(TOLERANCE.mark, place.by),
    ),
    check(`panel.${part.id}.flush`, 'filler-flush', { ...values, unit: place.onto.name }),
  ]
}

/** An end panel, a filler or a scribe. */
export function fitPanel(job: Job, part: FinishingPart): Operation {
  const position = job.context.parts.find((p) => p.part.id === part.id)
  const place = fillerPlace(job, part)
  const name = partName(job.kitchen, part)
  const wall = part.wall
  const taper = place?.at === 'corner' ? cornerWords(job, place) : endTaper(job, part)
  return operation(job, {
    kind: 'panel',
    on: [part.id],
    stage: stageOf(place),
    title: told('panel', place?.at === 'corner' ? 'title.corner' : `title.${part.kind}`, { part: name }),
    does: place === null ? scribed(job, part) : setIn(job, part, place),
    figures: [
      shown('width', part.width, 'part-width', { part: name }),
      ...(position === undefined || wall === null
        ? []
        : [shown('left', position.left, 'left-side', { unit: name, wall: job.wallName(wall) })]),
      ...(part.kind === 'end-panel' ? [] : taper.figures),
    ],
    checks: checksOf(job, part, place),
    cautions: [caution('W022', 'blades'), caution('M016', 'dust'), caution('M004', 'eyes')],
    tools:
      place === null
        ? ['scribe-block', 'saw', 'plane', 'clamps', 'drill-driver']
        : ['saw', 'clamps', 'drill-driver', 'screwdriver'],
    minutes: minutesFor(WORK.panel),
    wall,
    facts: [`finishing.${part.id}`, `finishing.${part.id}.kind`, `finishing.${part.id}.of`],
  })
}
