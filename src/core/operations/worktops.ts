import type { Worktop } from '../kitchen/schema'
import { type PartLift, worktopLift } from '../lifting/part-lifts'
import { massOfWorktop } from '../lifting/worktop-mass'
import type { Message } from '../message'
import type { Operation } from '../plan/types'
import { worktopName } from '../units/part-name'
import { listed } from '../words/listed'
import type { Job } from './job'
import { crewWords } from './lift'
import { caution, check, operation, shown, told, toldFigure, when } from './make'
import { inTurn, type Minutes, minutesFor, WORK } from './minutes'
import { hasNoFixing, noFixingFacts, notHeldUnder } from './not-held'
import { TOLERANCE, usual } from './tolerances'

function minutesOf(top: Worktop): Minutes {
  if (top.material === 'stone') return minutesFor(WORK.stone)
  return inTurn(
    minutesFor(WORK.straightCut),
    minutesFor(WORK.layWorktop),
    ...top.joints.map(() => minutesFor(WORK.joint)),
    ...top.cutouts.map(() => minutesFor(WORK.cutOut)),
  )
}

/** How it is lifted: so many of you, end by end, by those who fit it, or not by this crew. */
function liftSentence({ mass, end, people, aid }: PartLift): Message {
  const words = aid === 'none' ? crewWords(people) : aid
  return toldFigure('worktop', `lift.${words}`, { mass, end: end ?? mass })
}

function layWorktop(job: Job, top: Worktop): Operation {
  const stone = top.material === 'stone'
  const name = worktopName(job.kitchen, top)
  const lift = worktopLift(top, job.context)
  const { whole, heaviestPiece } = massOfWorktop(top, job.context)
  const under = top.over.flatMap((id) => job.unit(id) ?? [])
  const height = job.context.heights.values.find((v) => v.of === 'worktop-top')?.height
  return operation(job, {
    kind: 'worktop',
    on: [top.id],
    stage: 'worktops',
    title: told('worktop', 'title', { worktop: name }),
    does: [
      told('worktop', stone ? 'stone' : 'cut', { units: listed(top.over.map((id) => job.name(id))) }),
      ...when(!stone && top.cutouts.length > 0, told('worktop', 'cutouts', { count: top.cutouts.length })),
      ...when(!stone && top.joints.length > 0, told('worktop', 'joints', { count: top.joints.length })),
      liftSentence(lift),
      ...(height === undefined
        ? []
        : [toldFigure('worktop', 'height', { height, thickness: top.thickness })]),
    ].slice(0, 5),
    figures: [
      shown('thickness', top.thickness, 'worktop-thickness'),
      shown('mass', whole, 'worktop-mass'),
      ...when(top.joints.length > 0, shown('piece', heaviestPiece, 'worktop-piece')),
      ...(lift.end === null || lift.aid !== 'end-by-end' ? [] : [shown('end', lift.end, 'worktop-end')]),
      ...(height === undefined ? [] : [shown('worktop-top', height, 'height.worktop-top')]),
    ],
    checks: [
      check(`worktop.${top.id}.level`, 'worktop-level', { worktop: name }, usual(0), TOLERANCE.worktopLevel),
      check(`worktop.${top.id}.overhang`, 'overhang', { worktop: name }, usual(0), TOLERANCE.overhang),
      ...(height === undefined
        ? []
        : [check(`worktop.${top.id}.height`, 'worktop-height', { worktop: name }, height, TOLERANCE.mark)]),
    ],
    cautions: [
      ...notHeldUnder(job, under),
      caution('M017', stone ? 'stone-dust' : 'worktop-dust'),
      caution('M003', 'router-noise'),
      caution('M004', 'eyes'),
      caution('P001', 'no-gloves-at-router'),
      caution('W024', 'worktop-fingers'),
    ],
    tools: stone ? ['level', 'sealant-gun'] : ['router', 'trestles', 'saw', 'clamps', 'level', 'sealant-gun'],
    people: lift.people,
    minutes: minutesOf(top),
    holdPoint: lift.aid === 'stop',
    facts: [
      `worktops.${top.id}`,
      `worktops.${top.id}.material`,
      `worktops.${top.id}.over`,
      ...top.joints.map((j) => `worktops.${top.id}.joints.${j.id}`),
      ...top.cutouts.map((c) => `worktops.${top.id}.cutouts.${c.id}`),
      ...under.filter((unit) => hasNoFixing(job, unit)).flatMap((unit) => noFixingFacts(job, unit)),
    ],
  })
}

export function layWorktops(job: Job): readonly Operation[] {
  return job.kitchen.worktops.map((top) => layWorktop(job, top))
}
