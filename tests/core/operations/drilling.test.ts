/**
 * What is said at every hole. The figures were worked out by hand from the files before the code was written; how stands
 * beside each.
 */
import { describe, expect, test } from 'vitest'
import { assumed, known, unknown } from '../../../src/core/figure'
import { bitFor, clearHole } from '../../../src/core/fixings/pilot'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { insideSentences, insideUnit } from '../../../src/core/operations/inside-unit'
import { readJob } from '../../../src/core/operations/job'
import { workOutOperations } from '../../../src/core/operations/operations'
import type { Operation } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { outcomeOf } from '../../support/kitchens'
import { base, contextOf, hung, workKitchen } from '../../support/work-kitchen'

type Scene = Parameters<typeof outcomeOf>[0]

function sceneWork(scene: Scene): readonly Operation[] {
  const outcome = outcomeOf(scene)
  if (outcome.kind !== 'plan') throw new Error(`${scene}: ${outcome.kind}`)
  return outcome.plan.operations
}

const saidBy = (work: readonly Operation[], id: string): readonly string[] =>
  (work.find((o) => o.id === id)?.does ?? []).map((m) => say(m).replaceAll('\u202f', ' '))
const figureOf = (work: readonly Operation[], id: string, name: string) =>
  work.find((o) => o.id === id)?.figures.find((f) => f.name === name)?.figure

const mm = (value: number) => known(value, 0.5, 'mm', ['test'])
const none = unknown('mm', ['test'])

describe('bits', () => {
  // 0.65 × 4 = 2.6 → 2.5; × 4.5 = 2.925 → 3; × 6 = 3.9 → 4; × 5 = 3.25, half way: the smaller, 3.
  test.each([
    [4, 2.5],
    [4.5, 3],
    [6, 4],
  ])('a %d mm wood screw whose pilot nobody entered gets %d mm, assumed', (diameter, bit) => {
    const figure = bitFor({ kind: 'wood-screw', diameter: mm(diameter), bit: none })
    expect(figure).toMatchObject({ state: 'assumed', value: bit })
  })

  test('a 5 mm screw gets 3 mm, as the trade does', () => {
    expect(bitFor({ kind: 'wood-screw', diameter: mm(5), bit: none })).toMatchObject({ value: 3 })
  })

  test('what was entered is used, and the bit of a plug is never guessed', () => {
    expect(bitFor({ kind: 'wood-screw', diameter: mm(5), bit: mm(3.5) })).toMatchObject({
      value: 3.5,
      pm: 0,
      state: 'known',
    })
    expect(bitFor({ kind: 'screw-and-plug', diameter: mm(5), bit: none }).state).toBe('unknown')
    expect(bitFor({ kind: 'wood-screw', diameter: none, bit: none }).state).toBe('unknown')
  })

  test('the clear hole of a 5 mm screw is 5.5 mm', () => {
    expect(clearHole({ diameter: mm(5) })).toMatchObject({ value: 5.5, pm: 0 })
    expect(clearHole({ diameter: assumed(4.5, 0.5, 'mm', [], { kind: 'maker' }) })).toMatchObject({
      value: 5,
      state: 'assumed',
    })
  })
})

describe('a rail on studs', () => {
  const work = sceneWork('l-shape')

  test('screw, pilot, depth from the finished face; the refused stud is not counted', () => {
    // Usable studs under the rail: s3, s5, s6, s7, s8; s4 is in the socket's band. Screw 50 − rail 2 = 48 deep.
    const said = saidBy(work, 'drill-rail:rail-1')
    expect(said).toContain('Drill 5 holes at their marks, all +1 062 mm from the line.')
    expect(said).toContain(
      'For 5 × 50 mm wood screws: pilot 3 mm, 48 mm deep from the finished face of the wall.',
    )
    expect(said.join(' ')).toContain('once more with the detector')
    expect(said.join(' ')).toContain('the hole moves with it')
    expect(saidBy(work, 'fix-rail:rail-1')).toContain('Screw: 5 × 50 mm wood screws, one in each hole (5).')
  })

  test('two rails on one wall are told apart by the units they carry', () => {
    const titles = work
      .filter((o) => o.kind === 'drill-rail' || o.kind === 'fix-rail')
      .map((o) => say(o.title))
    expect([...titles].sort()).toEqual([
      'Drill for the rail from wall unit 1 to wall unit 3',
      'Drill for the rail of wall unit 4',
      'Fix the rail from wall unit 1 to wall unit 3',
      'Fix the rail of wall unit 4',
    ])
  })

  test('the trace counts only holes that are to be drilled', () => {
    // Wall a: 5 + 2 of the rails, 8 second, 6 brackets, 2 restraints: 23; two more are refused.
    expect(saidBy(work, 'trace:a').join(' ')).toContain('its holes (23)')
  })
})

describe('second fixings through the unit', () => {
  const work = sceneWork('l-shape')
  const said = saidBy(work, 'second-fix:wall-2')

  test('where each comes inside the unit', () => {
    // wall-2 runs from 1240; board 18. Stud s6 at 1490: 1490 − 1240 − 18 = 232. Nogging hole 1318: 60.
    // Hole +452, underside +392, bottom panel 18: 42 up inside.
    expect(said).toContain(
      'Hole 11: inside the unit, 232 mm from the inner face of its left side and 42 mm up from the upper face of its bottom panel.',
    )
    expect(said).toContain(
      'Hole 9: inside the unit, 60 mm from the inner face of its left side and 42 mm up from the upper face of its bottom panel.',
    )
    expect(figureOf(work, 'second-fix:wall-2', 'second.wall-2.a-s6.in')).toMatchObject({ value: 232 })
    expect(figureOf(work, 'second-fix:wall-2', 'second.wall-2.a-s6.up')).toMatchObject({ value: 42 })
  })

  test('clear hole, pilot, and the depth stop from the face of the rail', () => {
    // Rail 16 + packing 16 = 32; wall 80 − 32 = 48; so the stop stands at 80.
    expect(said).toContain('First a clear hole, 5.5 mm, through the rail only.')
    expect(said).toContain(
      'Then the pilot through it, 3 mm. Depth stop 80 mm from the face of the rail: 32 mm of rail and packing, 48 mm of wall. Where they measure less, the stop goes back as much.',
    )
    expect(said).toContain('Screw: 5 × 80 mm wood screws, one in each hole (2).')
    expect(figureOf(work, 'second-fix:wall-2', 'second.wall-2.a-s6.stop')).toMatchObject({ value: 80 })
  })

  test('its marks are gone over with the detector before it hides them', () => {
    expect(saidBy(work, 'hang:wall-2').join(' ')).toContain('it will hide them')
  })

  test('behind a unit whose bottom rail is 18 up and 60 high', () => {
    // w3 runs from 1000 on wall b, studs 220 + 400 i: only 1420 lies within; 1420 − 1000 − 18 = 402; 48 − 18 = 30 up.
    const work = workOutOperations(contextOf(workKitchen()).context)
    expect(saidBy(work, 'second-fix:w3').join(' ')).toMatch(
      /402 mm( \(assumed\))? from the inner face of its left side and 30 mm( \(assumed\))? up from the upper face of its bottom panel\./,
    )
  })

  test('with the board not known, it is measured from outside', () => {
    const { context } = contextOf(workKitchen())
    const unit = readJob(context).unit('w3')
    const hole = context.holes.find((h) => h.purpose === 'second-fixing' && h.for.includes('w3'))
    if (unit === undefined || hole === undefined) throw new Error('w3 has no second fixing')
    const boardless = { ...unit, unit: { ...unit.unit, board: none } }
    // 1420 − 1000 = 420; 18 + 60 / 2 = 48 up from its underside.
    expect(insideUnit(boardless, hole)).toMatchObject({
      inside: false,
      across: { value: 420 },
      upright: { value: 48 },
    })
    expect(
      insideSentences(boardless, [hole])
        .map((m) => say(m))
        .join(' '),
    ).toMatch(/from the outside of its left side/)
  })
})

describe('plates on brick', () => {
  const work = sceneWork('one-wall')

  test('the bit is the size of the plug, the plug sits in the brick', () => {
    // Plaster 12 + hole 55 = 67, deeper than the tip at 65 − 2 = 63; assumed, for the plate's 2 mm is.
    expect(saidBy(work, 'drill-plates:wall-1')).toContain(
      'For plugs with 6 × 65 mm screws: bit 8 mm, the size of the plug, 67 mm (assumed) deep from the finished face of the wall.',
    )
    const fixed = saidBy(work, 'fix-plates:wall-1')
    expect(fixed).toContain('Draw the dust out of every hole with a vacuum and a brush; do not blow it out.')
    expect(fixed).toContain(
      'Tap each plug in until it is flush with the brick, 12 mm behind the finished face. In plaster alone it holds nothing.',
    )
    expect(fixed.join(' ')).toContain('6 × 65 mm screws in their plugs')
    expect(work.find((o) => o.id === 'fix-plates:wall-1')?.checks.map((c) => c.ask.key)).toContain(
      'check.plugs-in-the-solid',
    )
  })
})

describe('brackets', () => {
  const work = sceneWork('l-shape')

  test('at the sides where the studs are there', () => {
    // base-1: 640 to 1240, studs 690 and 1190: both 32 from the inside of a side.
    expect(saidBy(work, 'fix:base-1').join(' ')).toContain('L bracket at each side')
  })

  test('where a stud is not at a side, that is said', () => {
    // base-2: 1240 to 2140, studs 1490 (232 from the left side inside) and 2092 (30 from the right side inside).
    const said = saidBy(work, 'fix:base-2').join(' ')
    expect(said).not.toContain('at each side')
    expect(said).toContain('Hole 10 is not at a side')
    expect(said).toContain(
      'Hole 10: inside the unit, 232 mm from the inner face of its left side and 40 mm down from the upper edge of that side.',
    )
  })

  test('with no hole nothing is said of brackets, packing or screws', () => {
    const said = saidBy(work, 'fix:base-3')
    expect(said).toHaveLength(1)
    expect(said.join(' ')).not.toMatch(/bracket at|Pack|last screw/)
  })
})

describe('hanging', () => {
  const said = saidBy(sceneWork('l-shape'), 'hang:wall-1').join(' ')

  test('together, from the floor, nobody climbs, and both hooks are felt', () => {
    expect(said).toMatch(/Lift together/)
    expect(said).toMatch(/Nobody climbs with the unit in hand/)
    expect(said).toMatch(/tug/i)
  })
})

describe('supply', () => {
  test('comes off, has a stand-in meanwhile, and comes back after the last hole', () => {
    const work = workOutOperations(contextOf(workKitchen()).context)
    expect(saidBy(work, 'isolate:room').join(' ')).toMatch(/RCD/)
    const back = work.find((o) => o.id === 'restore-supply:room')
    expect(back?.holdPoint).toBe(true)
    expect(back?.stage).toBe('connect-and-test')
  })

  test('is there only where something was made off', () => {
    const file: KitchenFile = {
      ...workKitchen(),
      units: [],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    }
    expect(workOutOperations(contextOf(file).context).map((o) => o.kind)).not.toContain('restore-supply')
  })
})

describe('timber in the wall', () => {
  test('is looked for first, cut in after the trace, closed before the marks', () => {
    const file: KitchenFile = {
      ...workKitchen(),
      units: [base('b9', 'a', 0, 600), hung('w3', 'b', 1000, 600, { stands: 'plates' })],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    }
    const work = workOutOperations(contextOf(file).context)
    const timber = work.find((o) => o.kind === 'fit-nogging')
    const said = saidBy(work, timber?.id ?? '').join(' ')
    expect(said).toMatch(/already there/)
    // The board of wall b is 12.5 mm ± 1: said as whole millimetres.
    expect(said).toMatch(/no deeper than the board, 1[23] mm/)
    expect(said).toMatch(/Close the board/)
    expect(said).toMatch(/wood screws/)
  })

  const timberOf = (file: KitchenFile) => {
    const { context } = contextOf(file)
    const timber = workOutOperations(context).find(
      (o) => o.kind === 'fit-nogging' && !o.id.endsWith('-plate'),
    )
    const figure = (name: string) => timber?.figures.find((f) => f.name === name)?.figure
    return { said: timber === undefined ? '' : saidBy([timber], timber.id).join(' '), figure, context }
  }
  const alone = (more: Partial<KitchenFile> = {}): KitchenFile => ({
    ...workKitchen(),
    units: [hung('w3', 'b', 1000, 600, { stands: 'plates' })],
    rails: [],
    appliances: [],
    finishing: [],
    worktops: [],
    ...more,
  })

  test('to be bought is said by its section: a usual one, marked, and how little will not do', () => {
    const { said, figure } = timberOf(alone())
    expect(said).toMatch(
      /Take timber 95 mm \(assumed\) high on the wall and 45 mm \(assumed\) thick: common practice/,
    )
    // 12 mm to either edge, with a mark 5 mm out: 2 × 17.
    expect(said).toMatch(/Less than 34 mm high it may not be: a screw must lie 12 mm inside both its edges/)
    expect(figure('high')).toMatchObject({ state: 'assumed', basis: { kind: 'common-practice' } })
    expect(timberOf(alone({ region: 'north-america' })).said).toMatch(/Take timber .*(89|3 1\/2)/)
  })

  test('how far its screws reach into it is the depth of their holes less the board, and asked for with no screw entered', () => {
    const { figure, context } = timberOf(alone())
    const depths = context.holes.filter((h) => h.purpose === 'second-fixing').map((h) => h.depth)
    const deepest = Math.max(...depths.map((d) => (d.state === 'unknown' ? Number.NaN : d.value)))
    expect(figure('reach')).toMatchObject({ value: deepest - 12.5 })
    expect(timberOf(alone({ fixings: [] })).said).toMatch(
      /screws reach into it is not known yet: choose the screw/,
    )
  })

  test('that is in the survey is said as the survey has it, asked for where it is not, and told of where it is too thin', () => {
    const walls = (more: { depth?: number; thickness?: number }) =>
      workKitchen().walls?.map((wall) =>
        wall.id === 'b'
          ? {
              ...wall,
              noggings: [
                {
                  id: 'n',
                  kind: 'nogging' as const,
                  from: { at: 900 },
                  to: { at: 1700 },
                  centre: { up: 0 },
                  ...more,
                },
              ],
            }
          : wall,
      )
    const withTimber = (more: { depth?: number; thickness?: number }) =>
      timberOf(alone({ walls: walls(more) }))
    expect(withTimber({ depth: 145, thickness: 45 }).said).toMatch(
      /The piece is 145 mm high on the wall and 45 mm thick, as the survey has it/,
    )
    expect(withTimber({}).said).toMatch(/how thick the piece is nobody has entered: measure both/)
  })
})

describe('what is found about fixings', () => {
  const outcome = outcomeOf('l-shape')
  const found = new Map(
    outcome.kind === 'plan'
      ? outcome.plan.findings.map((f) => [f.id, say(f.say).replaceAll('\u202f', ' ')] as const)
      : [],
  )

  test('names what the screws are for', () => {
    expect(found.get('screw-length-marginal:a.base-bracket')).toMatch(/^The screws for the base brackets on/)
    expect(found.get('screw-length-marginal:a.second-fixing')).toMatch(
      /^The screws for the second fixings on/,
    )
    expect(found.get('screw-length-marginal:a.rail')).toMatch(/^The screws for the rail on/)
  })

  test('a stud behind the unit that is only supposed is spoken of', () => {
    // base-3 runs from 2140 to 2940; the stud at 2490 gave one beep.
    expect(found.get('bracket-needs-timber:base-3')).toMatch(
      /^No proved stud lies behind base unit 3 .* The one at 2 490 mm is only supposed/,
    )
  })

  test('holes are named by their place, not by their id', () => {
    expect(
      [...found.values()].filter((words) => /\b(rail|second|base-bracket|plate)\.[a-z]/.test(words)),
    ).toEqual([])
  })
})
