import { type Figure, hasValue } from '../figure'
import type { FinishingPart } from '../kitchen/schema'
import type { Message } from '../message'
import { finishAtPlinth } from '../placing/plinth-line'
import type { Operation } from '../plan/types'
import { partName } from '../units/part-name'
import { listed } from '../words/listed'
import type { Job } from './job'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { minutesFor, WORK } from './minutes'
import { fitPanel } from './panels'
import { plinthEnds } from './plinth-ends'
import { TOLERANCE, usual } from './tolerances'

const MM_PER_METRE = 1000

type Kind = FinishingPart['kind']
const PANELS: readonly Kind[] = ['end-panel', 'filler', 'scribe']
const ON_WORKTOP: readonly Kind[] = ['upstand', 'splashback']

/** Which operation fits a finishing part. */
export function operationKindFor(part: Pick<FinishingPart, 'kind'>): 'panel' | 'plinth' | 'finish' {
  if (PANELS.includes(part.kind)) return 'panel'
  return part.kind === 'plinth' ? 'plinth' : 'finish'
}

/** Whether it sits on the worktop, and so comes after it. */
export function sitsOnWorktop(part: Pick<FinishingPart, 'kind'>): boolean {
  return ON_WORKTOP.includes(part.kind)
}

const partFacts = (part: FinishingPart) => [
  `finishing.${part.id}`,
  `finishing.${part.id}.kind`,
  `finishing.${part.id}.of`,
]

const unitNames = (job: Job, part: FinishingPart) => listed(part.of.map((id) => job.name(id)))

/** The metres of a part: its own length, else the widths it runs along; one where neither is known. */
function metresOf(job: Job, part: FinishingPart): number {
  if (hasValue(part.length)) return part.length.value / MM_PER_METRE
  const widths = part.of.flatMap((id) => {
    const width: Figure | undefined = job.unit(id)?.plan.width
    return width !== undefined && hasValue(width) ? [width.value] : []
  })
  const sum = widths.reduce((all, w) => all + w, 0)
  return sum > 0 ? sum / MM_PER_METRE : 1
}

/** The floor finish is laid before a plinth is cut to it; while nobody has said, it is asked. */
function floorFirst(job: Job): Message {
  const finish = finishAtPlinth(job.kitchen)
  const comes = !hasValue(finish) || finish.value > 0
  return comes ? toldFigure('plinth', 'floor-first', { finish }) : told('plinth', 'floor-there')
}

/** The board ripped to what is needed at its two ends; along several walls each end is among the figures. */
function cutTo(part: FinishingPart, ends: ReturnType<typeof plinthEnds>): Message {
  const [only, ...others] = ends
  if (only === undefined || others.length > 0) return toldFigure('plinth', 'height', { height: part.height })
  return toldFigure('plinth', 'cut', { left: only.left, right: only.right })
}

function fitPlinth(job: Job, part: FinishingPart): Operation {
  const ends = plinthEnds(job, part)
  return operation(job, {
    kind: 'plinth',
    on: [part.id],
    stage: 'fronts-and-plinths',
    title: told('plinth', 'title', { part: partName(job.kitchen, part) }),
    does: [
      ...when(part.of.length > 0, told('plinth', 'under', { units: unitNames(job, part) })),
      floorFirst(job),
      cutTo(part, ends),
      told('plinth', 'rip'),
      told('plinth', 'clip'),
    ],
    figures: [
      shown('height', part.height, 'plinth-height', { part: partName(job.kitchen, part) }),
      shown('set-back', part.setBack, 'plinth-set-back', { part: partName(job.kitchen, part) }),
      ...ends.flatMap((end) => end.figures),
    ],
    checks: [
      check(
        `plinth.${part.id}`,
        'plinth-gap',
        { part: partName(job.kitchen, part) },
        usual(0),
        TOLERANCE.plinthGap,
      ),
    ],
    cautions: [caution('W022', 'blades'), caution('M016', 'dust')],
    tools: ['saw', 'scribe-block', 'tape'],
    minutes: minutesFor(WORK.plinth, metresOf(job, part)),
    wall: part.wall,
    facts: partFacts(part),
  })
}

function finishPart(job: Job, part: FinishingPart): Operation {
  const onWorktop = sitsOnWorktop(part)
  return operation(job, {
    kind: 'finish',
    on: [part.id],
    stage: onWorktop ? 'worktops' : 'fronts-and-plinths',
    title: told('finish', `title.${part.kind}`, { part: partName(job.kitchen, part) }),
    does: [
      ...when(part.of.length > 0, told('finish', 'at', { units: unitNames(job, part) })),
      told('finish', part.kind),
      told('finish', onWorktop ? 'seal' : 'mitre'),
    ],
    figures: [shown('height', part.height, 'part-height', { part: partName(job.kitchen, part) })],
    checks: [
      check(`finish.${part.id}`, onWorktop ? 'sits-tight' : 'lines-through', {
        part: partName(job.kitchen, part),
      }),
    ],
    cautions: onWorktop
      ? [caution('M004', 'eyes')]
      : [caution('W008', 'stepladder'), caution('W022', 'blades'), caution('M004', 'eyes')],
    tools: onWorktop ? ['saw', 'sealant-gun'] : ['mitre-saw', 'stepladder', 'drill-driver'],
    minutes: minutesFor(onWorktop ? WORK.upstand : WORK.cornice, metresOf(job, part)),
    wall: part.wall,
    facts: partFacts(part),
  })
}

/** Panels, fillers, plinths, cornices, pelmets, upstands: each by its own operation. */
export function fitFinishing(job: Job): readonly Operation[] {
  const make = { panel: fitPanel, plinth: fitPlinth, finish: finishPart }
  return job.kitchen.finishing.map((part) => make[operationKindFor(part)](job, part))
}
