/** All that the picture brings to the fore at a step is also named in the words of its slip. */
import { describe, expect, test } from 'vitest'
import galley from '../../../scenes/galley.dryrun.json'
import northAmerican from '../../../scenes/north-american.dryrun.json'
import { type Figure, valueOf } from '../../../src/core/figure'
import { workThrough } from '../../../src/core/plan/entry'
import { standingAt } from '../../../src/core/plan/standing-at'
import type { HeightLine, Operation, Plan } from '../../../src/core/plan/types'
import { figureText } from '../../../src/core/words/format'
import { withWords } from '../../../src/core/words/with-words'
import { targetText } from '../../../src/ui/Checks'
import { words } from '../../../src/ui/words'
import { planOf } from '../../support/kitchens'

const worked = (file: unknown): Plan => {
  const outcome = withWords(workThrough(file))
  if (outcome.kind !== 'plan') throw new Error(outcome.kind)
  return outcome.plan
}

/** The words of a slip: title, what to do, figures with what they are, cautions, checks with their targets. */
function wordsOf(o: Operation): string {
  return [
    words(o.title),
    ...o.does.map(words),
    ...o.figures.map((f) => `${words(f.label)} ${figureText(f.figure, { signed: true })}`),
    ...o.cautions.map((c) => words(c.say)),
    ...o.checks.map((c) => `${words(c.ask)} ${targetText(c) ?? ''}`),
  ]
    .join('\n')
    .replace(/[^\S\n]/g, ' ')
}

const LINES: Readonly<Record<string, RegExp>> = {
  line: /\bline\b/,
  plate: /plate/,
  rail: /rail/,
  bracket: /bracket|hold the tall units? back|back rail|screws through/,
  'base-underside': /underside of the base/,
  'base-top': /top of the base|Top of the base/,
  'worktop-top': /top of the worktop/i,
  'wall-underside': /underside of the wall/i,
  'wall-top': /top of the wall/i,
  'tall-underside': /underside of the tall/i,
  'tall-top': /top of the tall/i,
}

/** The number of a figure as it stands in a sentence, with its sign. */
const bare = (figure: Figure, signed = false): string =>
  figureText(figure, { signed, withUnit: false }).replace(/\s/g, ' ').replace(' (assumed)', '')

/** What is shown as now and not named; each as it would be looked for. */
function unnamed(plan: Plan, index: number): readonly string[] {
  const operation = plan.operations[index] as Operation
  const text = wordsOf(operation)
  const says = (name: string) => text.toLowerCase().includes(name.toLowerCase())
  const standing = standingAt(plan, index, 0.5)
  const heightOf = (line: HeightLine) => bare(line.height, true)
  return [
    ...standing.units.filter((u) => u.isInHand && !says(u.unit.name)).map((u) => `unit ${u.unit.name}`),
    ...standing.places.filter((p) => !says(p.unit.name)).map((p) => `place of ${p.unit.name}`),
    ...standing.holes
      .filter(
        ({ hole, isNow }) =>
          isNow &&
          hole.number !== null &&
          !new RegExp(`\\bholes? (\\d+(, | and ))*${hole.number}\\b`, 'i').test(text),
      )
      .map(({ hole }) => `hole ${hole.number}`),
    ...standing.holes
      .filter(
        ({ hole, isNow }) =>
          isNow && hole.verdict === 'refused' && !text.includes(`No hole ${bare(hole.along)} mm`),
      )
      .map(({ hole }) => `refused hole ${hole.id}`),
    ...standing.lines
      .filter(({ line, isNow }) => isNow && !(LINES[line.of]?.test(text) ?? false))
      .map(({ line }) => `line ${line.id}`),
    ...standing.lines
      .filter(({ line, isNow }) => isNow && valueOf(line.height) !== 0 && !text.includes(heightOf(line)))
      .map(({ line }) => `height of ${line.id}: ${heightOf(line)}`),
    ...standing.parts
      .filter(({ part, isNow }) => isNow && part.kind !== 'front' && !says(part.name))
      .map(({ part }) => `part ${part.name}`),
    ...standing.parts
      .filter(({ part, isNow }) => isNow && part.kind === 'front' && !/fronts|door|drawer/i.test(text))
      .map(({ part }) => `front ${part.name}`),
    ...standing.rails
      .filter(({ isNow }) => isNow && !/\brail\b/.test(text))
      .map(({ rail }) => `rail ${rail.rail}`),
    ...standing.plates
      .filter(({ isNow }) => isNow && !/\bplates?\b/.test(text))
      .map(({ plate }) => `plate ${plate}`),
    ...standing.wallThings
      .filter(({ isNow }) => isNow && !/nogging|timber|board/.test(text))
      .map(({ thing }) => `in the wall ${thing.id}`),
    ...standing.places
      .filter(({ unit, wall }) => wall !== null && wall.left >= 1 && !text.includes(bare(unit.left)))
      .map(({ unit }) => `how far along ${unit.name} goes: ${bare(unit.left)}`),
    ...standing.marks
      .filter(({ mark, isNow }) => isNow && mark.kind === 'stud' && !/stud/.test(text))
      .map(({ mark }) => `mark ${mark.id}`),
  ]
}

const PLANS: readonly (readonly [string, Plan])[] = [
  ['one-wall', planOf('one-wall')],
  ['l-shape', planOf('l-shape')],
  ['galley', worked(galley)],
  ['north-american', worked(northAmerican)],
]

describe.each(PLANS)('%s', (_, plan) => {
  test('holes, lines, units and parts of every step are named in its words', () => {
    const missing = plan.operations.flatMap((o, i) => unnamed(plan, i).map((what) => `${o.id}: ${what}`))
    expect(missing).toEqual([])
  })
})

test('a step whose words were left out is found', () => {
  const plan = planOf('l-shape')
  const operations = plan.operations.map((o) => ({ ...o, does: [], figures: [], checks: [] }))
  const missing = operations.flatMap((_, i) => unnamed({ ...plan, operations }, i))
  for (const sort of ['hole ', 'line ', 'how far along ']) {
    expect(missing.filter((what) => what.startsWith(sort)).length, sort).toBeGreaterThan(5)
  }
})
