/**
 * A row of two base units and a dishwasher's space on a brick wall of 6000, over a floor that falls 2 mm in a metre to the
 * right and is level out of the wall: −1000 − 0.002 x. Undersides wished at −860. All figures are worked by hand.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { workOutOperations } from '../../../src/core/operations/operations'
import type { Operation } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { plain } from '../../support/surveyed'
import { base, contextOf, workKitchen } from '../../support/work-kitchen'

type Wall = NonNullable<KitchenFile['walls']>[number]

const reading = (id: string, at: number, out: number, drop: number) => ({
  id,
  at: { wall: 'a', along: { at }, out },
  drop,
})

function row(more: Partial<KitchenFile> = {}): KitchenFile {
  const [brick] = workKitchen().walls ?? []
  const wall = {
    ...(brick as NonNullable<typeof brick>),
    length: 6000,
    accessories: [
      {
        id: 'behind',
        kind: 'cooker-outlet',
        along: { at: 1300 },
        height: { aboveFloor: 500 },
        width: 86,
        tall: 86,
      },
      { id: 'in-bay', kind: 'socket', along: { at: 2000 }, height: { down: 950 }, width: 86, tall: 86 },
      { id: 'over', kind: 'socket', along: { at: 1400 }, height: { up: 80 }, width: 86, tall: 86 },
    ],
    services: [
      {
        id: 'waste',
        kind: 'waste',
        points: [
          { id: 'low', along: { at: 4500, from: 'right' }, height: { down: 1000 } },
          { id: 'stub', along: { at: 4500, from: 'right' }, height: { down: 500 } },
        ],
        width: 40,
      },
      {
        id: 'in-the-wall',
        kind: 'cable',
        points: [
          { id: 'one', along: { at: 1200 }, height: { down: 300 } },
          { id: 'two', along: { at: 1600 }, height: { down: 300 } },
        ],
      },
    ],
  } as NonNullable<KitchenFile['walls']>[number]
  return {
    ...workKitchen(),
    walls: [wall],
    floor: {
      finishToCome: 8,
      finishWhere: 'up-to-plinth',
      readings: [
        reading('f1', 0, 0, 1000),
        reading('f2', 6000, 0, 1012),
        reading('f3', 0, 700, 1000),
        reading('f4', 6000, 700, 1012),
      ],
    },
    units: [
      base('b1', 'a', 500, 600, { legs: { min: 80, max: 180, delivered: 150, perTurn: 2 } }),
      base('b2', 'a', 1100, 600, { standOff: 20, legs: { min: 80, max: 180, delivered: 130, perTurn: 2 } }),
      {
        id: 'dw',
        name: 'dishwasher space',
        kind: 'appliance-space',
        wall: 'a',
        order: { left: { at: 1700 } },
        width: 600,
        height: 720,
        depth: 560,
        applianceBay: 'dishwasher',
      },
    ],
    rails: [],
    finishing: [{ id: 'kick', kind: 'plinth', wall: 'a', of: ['b1', 'b2', 'dw'], height: 150, setBack: 40 }],
    worktops: [{ id: 'top', over: ['b1', 'b2', 'dw'], thickness: 38 }],
    appliances: (workKitchen().appliances ?? []).filter(({ id }) => id === 'dishwasher'),
    wishes: { heights: [{ id: 'w', of: 'base-underside', min: { down: 860 }, max: { down: 860 } }] },
    ...more,
  }
}

let all: readonly Operation[]
const get = (id: string, from = all) => from.find((operation) => operation.id === id) as Operation
const words = (id: string, from = all) =>
  get(id, from)
    .does.map((m) => say(m))
    .join(' ')
const figures = (id: string, from = all) =>
  get(id, from).figures.map(({ label, figure }) => `${say(label)}: ${plain(figure)}`)
const operationsOf = (file: KitchenFile) => workOutOperations(contextOf(file).context)

beforeAll(() => {
  all = operationsOf(row())
})

describe('legs', () => {
  test('say how far, how many turns from how they came, and which way', () => {
    // Floor at 550: −1001.1, at 1050: −1002.1. (141.1 − 150) / 2 = −4.45, (142.1 − 150) / 2 = −3.95.
    expect(figures('set-legs:b1').slice(0, 4)).toEqual([
      'back left leg, floor to underside of the unit: 141.1',
      'back left leg, wind in from how it came (in lets down): -4.45',
      'back right leg, floor to underside of the unit: 142.1',
      'back right leg, wind in from how it came (in lets down): -3.95',
    ])
    // Floor at 1150: −1002.3. (142.3 − 130) / 2 = 6.15.
    expect(figures('set-legs:b2')[1]).toBe('back left leg, wind out from how it came (out lifts): 6.15')
  })

  test('a leg within an eighth of a turn is left as it came', () => {
    const file = row()
    const units = (file.units ?? []).map((u) =>
      u.id === 'b1' ? { ...u, legs: { min: 80, max: 180, delivered: 141, perTurn: 2 } } : u,
    )
    expect(figures('set-legs:b1', operationsOf({ ...file, units }))[1]).toBe(
      'back left leg, leave it as it came: 0.05',
    )
  })

  test('left and right are as the unit will stand, and swap while it is upside down', () => {
    expect(words('set-legs:b1')).toMatch(
      /upside down on a blanket.*as the unit will stand, seen from the front\. Upside down they are swapped/,
    )
    expect(words('set-legs:b1')).toMatch(/back left 141 mm, back right 142 mm, front left 141 mm/)
    expect(words('set-legs:b1')).toMatch(/Out makes a leg longer and lifts/)
  })
})

describe('the front line', () => {
  test('is one distance from the wall at both ends: the furthest of the fronts', () => {
    // 560 and 20 + 560.
    expect(figures('set-out-widths:a').slice(-2)).toEqual([
      'front edge of the bases from brick wall, at the left side of base unit 1: 580',
      'front edge of the bases from brick wall, at the right side of base unit 2: 580',
    ])
    expect(words('level:b1')).toMatch(/front edge to the string line, 580 mm out from the wall/)
  })

  test('is not known while a depth is not, and is then asked for', () => {
    const { context } = contextOf(row())
    const open = context.units.map((u) =>
      u.unit === 'b2'
        ? { ...u, depth: { ...u.depth, state: 'unknown' as const, missing: ['units.b2.depth'] } }
        : u,
    )
    const from = workOutOperations({ ...context, units: open })
    expect(words('set-out-widths:a', from)).toMatch(/not known yet: find out how deep they are/)
  })
})

test('a mark that two share is said once, what ends there first', () => {
  expect(figures('set-out-widths:a').slice(0, 4)).toEqual([
    'left side of base unit 1, from the left corner of brick wall: 500',
    'right side of base unit 1, left side of base unit 2, from the left corner of brick wall: 1100',
    'right side of base unit 2, left side of dishwasher space, from the left corner of brick wall: 1700',
    'right side of dishwasher space, from the left corner of brick wall: 2300',
  ])
})

test('the L of two walls: neighbours above and below share a mark too', () => {
  const of = operationsOf(workKitchen())
  // t1 ends and b1 begins at 600; w1 ends and w2 begins at 1300, where nothing stands below.
  expect(figures('set-out-widths:a', of)).toContain(
    'right side of tall unit 1, left side of base unit 1, from the left corner of brick wall: 600',
  )
  expect(figures('set-out-widths:a', of)).toContain(
    'right side of wall unit 1, left side of wall unit 2, from the left corner of brick wall: 1300',
  )
})

test('bracket holes of bases and holes that hold talls back are told apart', () => {
  const labels = figures('set-out-heights:a', operationsOf(workKitchen()))
  expect(labels.filter((l) => l.startsWith('bracket holes of the base units'))).toHaveLength(1)
  expect(labels.filter((l) => l.startsWith('holes that hold the tall units back'))).toHaveLength(1)
  expect(new Set(labels.map((l) => l.replace(/: [^:]*$/, ''))).size).toBe(labels.length)
})

test('levelling: back to the line, across, front to back, and every leg carries', () => {
  expect(get('level:b1').checks.map((c) => say(c.ask))).toEqual([
    'How high is the top of base unit 1 at the back, from the line?',
    'How far is base unit 1 out of level, left to right?',
    'How far is base unit 1 out of level, front to back?',
    'Does every leg of base unit 1 carry, and none turn freely by hand?',
  ])
  expect(
    get('level:b1')
      .checks.slice(0, 3)
      .map((c) => [plain(c.target ?? undefined), plain(c.tolerance ?? undefined)]),
  ).toEqual([
    [-140, 1],
    [0, 1],
    [0, 1],
  ])
})

test('a corner base is levelled both ways and stands off both walls', () => {
  const of = operationsOf(workKitchen())
  expect(words('level:c1', of)).toMatch(/in both directions: along brick wall, then along stud wall/)
  // From 3100 to 4000 on a wall of 4000.
  expect(figures('level:c1', of)).toContain('side of corner base unit 1, off stud wall: 0')
})

describe('what comes out of the wall behind a unit', () => {
  test('is cut for before the unit is lifted: from its left, up from its underside', () => {
    // 1300 − 1100; floor −1002.6 + 500 + 860. 6000 − 4500 − 1100; −500 + 860. The cable stays in the wall, the socket over
    // the worktop needs no hole, the pipe's low end is under the unit.
    expect(figures('place:b2').filter((f) => f.startsWith('hole for'))).toEqual([
      'hole for the cooker outlet: its middle from the left side of base unit 2, seen from the front: 200',
      'hole for the cooker outlet: its middle up from the underside of base unit 2: 357.4',
      'hole for the cooker outlet: how wide: 96',
      'hole for the cooker outlet: how tall: 96',
      'hole for the waste pipe: its middle from the left side of base unit 2, seen from the front: 400',
      'hole for the waste pipe: its middle up from the underside of base unit 2: 360',
      'hole for the waste pipe: how wide across: 50',
    ])
    expect(words('place:b2')).toMatch(
      /^First cut the holes in its back \(2\) for: cooker outlet and waste pipe\./,
    )
    expect(figures('place:b1').filter((f) => f.startsWith('hole for'))).toEqual([])
    // Plate of 86 and pipe of 40, with 5 all round.
    expect(words('place:b2')).toMatch(/Cut each 5 mm larger all round than what goes through it/)
    const { figure } = get('place:b2').figures.find((f) => f.name === 'cut-out.waste.stub.wide') ?? {}
    expect(figure).toMatchObject({ value: 50, basis: { kind: 'common-practice' } })
    expect(figure?.from).toContain('walls.a.services.waste.width')
    // That it lies behind this unit is of it too.
    expect(figure?.from).toContain('walls.a.services.waste.points.stub.along.at')
    expect(words('place:b2')).not.toMatch(/nobody has entered/)
  })

  test('what nobody has measured is measured first: a pipe with no width, a sink with no waste behind its unit', () => {
    const file = row()
    const walls = (more: (wall: Wall) => Partial<Wall>) =>
      (file.walls ?? []).map((w) => ({ ...w, ...more(w) }))
    const noWidth = operationsOf({
      ...file,
      walls: walls((w) => ({ services: (w.services ?? []).map(({ width: _, ...service }) => service) })),
    })
    expect(words('place:b2', noWidth)).toMatch(
      /How large it is nobody has entered: waste pipe\. Measure that first/,
    )
    const across = noWidth
      .find((o) => o.id === 'place:b2')
      ?.figures.find((f) => f.name === 'cut-out.waste.stub.wide')?.figure
    expect(across).toMatchObject({ state: 'unknown', missing: ['walls.a.services.waste.width'] })

    const sink = [...(file.appliances ?? []), { id: 'sink', kind: 'sink' as const, over: 'b2' }]
    expect(words('place:b2', operationsOf({ ...file, appliances: sink }))).not.toMatch(/Where the waste/)
    const noWaste = operationsOf({
      ...file,
      appliances: sink,
      walls: walls(() => ({ services: [], accessories: [] })),
    })
    expect(words('place:b2', noWaste)).toMatch(
      /Where the waste of .*sink goes out of base unit 2, and how thick its pipe is, nobody has entered\..* 5 mm larger all round/,
    )
    expect(noWaste.find((o) => o.id === 'place:b2')?.tools).toContain('hole-saw')
    expect(words('place:b1', noWaste)).not.toMatch(/waste/)
  })

  test('a socket in the space of an appliance is out of reach: said at the hold point', () => {
    expect(words('prove:room')).toMatch(
      /The socket lies inside the dishwasher space: nobody can reach its plug/,
    )
    expect(figures('prove:room')).toContain(
      'socket in dishwasher space, from the left corner of brick wall: 2000',
    )
    expect(get('prove:room').checks.map((c) => c.id)).toContain('prove.outlets')
  })

  test('with the socket in the unit beside it, the plug goes there', () => {
    const file = row()
    const walls = (file.walls ?? []).map((w) => ({
      ...w,
      accessories: (w.accessories ?? []).filter((a) => a.id !== 'in-bay'),
    }))
    const from = operationsOf({ ...file, walls })
    expect(words('prove:room', from)).toMatch(
      /in the dishwasher space plugs in inside base unit 2, where the cooker outlet is/,
    )
  })
})

describe('the plinth', () => {
  test('is cut at both ends to the finished floor, the finish laid first', () => {
    // Floor at 500: −1001, at 2300: −1004.6; 8 of finish on it: 860 − 993 and 860 − 996.6, up.
    expect(figures('plinth:kick').slice(-2)).toEqual([
      'plinth under base unit 1, height to the finished floor at its left end: 133',
      'plinth under dishwasher space, height to the finished floor at its right end: 136.6',
    ])
    expect(words('plinth:kick')).toMatch(/Floor finish first: 8 mm is still to come/)
  })

  test('where no finish is to come the floor is as it is; where nobody has said, that is asked', () => {
    const file = row()
    const readings = file.floor?.readings ?? []
    const bare = operationsOf({ ...file, floor: { finishWhere: 'none', readings } })
    expect(figures('plinth:kick', bare).slice(-2)).toEqual([
      'plinth under base unit 1, height to the finished floor at its left end: 141',
      'plinth under dishwasher space, height to the finished floor at its right end: 144.6',
    ])
    expect(words('plinth:kick', bare)).toMatch(/No floor finish is to come/)
    const unsaid = operationsOf({ ...file, floor: { readings } })
    expect(words('plinth:kick', unsaid)).toMatch(/Find out first whether a floor finish is still to come/)
  })
})

// Two men between knuckle and elbow: ⅔ × (25 + 25) = 33.3 kg.
test.each([
  [33, false],
  [34, true],
])('a box of %d kg is carried whole or not', (massEmpty, isTooHeavy) => {
  const crew = { people: ['one', 'two'].map((id) => ({ id, filter: 'man' as const })) }
  const file = row({ crew })
  const units = (file.units ?? []).map((unit, i) =>
    i === 0 ? { ...unit, massEmpty } : { ...unit, massEmpty: 10 },
  )
  const check = get('check-delivery:room', operationsOf({ ...file, units }))
  expect(check.does.some((m) => say(m).includes('carry it in parts'))).toBe(isTooHeavy)
})

describe('people who are only there at times', () => {
  const crew = (windows: { id: string; from: string; to: string }[]) => ({
    people: [
      { id: 'one', filter: 'man' as const },
      { id: 'two', name: 'Sam', filter: 'man' as const, alwaysThere: false, windows },
    ],
  })
  const told = (file: KitchenFile, id: string) => get(id, operationsOf(file)).cautions.map((c) => say(c.say))

  test('a step for two says when the second is there, one for one says nothing', () => {
    const file = row({ crew: crew([{ id: 'w', from: '2026-10-17T09:00', to: '2026-10-17T13:00' }]) })
    expect(told(file, 'check-delivery:room')).toContain(
      'This takes 2 people. Sam is there only at set times: 2026-10-17, 09:00 to 13:00. Wait for them.',
    )
    expect(told(file, 'strike:line').filter((t) => t.includes('Sam'))).toEqual([])
  })

  test('without windows they are only not always there', () => {
    expect(told(row({ crew: crew([]) }), 'check-delivery:room')).toContain(
      'This takes 2 people. Sam is not always there. Wait for them.',
    )
  })
})

test('every step says how it is seen to be right', () => {
  const mine =
    /^(check-delivery|assemble|set-legs|strike|read-floor|set-out-heights|set-out-widths|find-studs|mark-holes|place|level|prove|snag|plinth):/
  expect(all.filter((o) => mine.test(o.id) && o.checks.length === 0).map((o) => o.id)).toEqual([])
})
