import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import type { Problem } from '../../../src/core/kitchen/problem'
import type { Kitchen, KitchenFile } from '../../../src/core/kitchen/schema'

/** A small invented kitchen in which all is well: a closed room of four walls, three units, and one of most other things. */
export function exampleFile(change: Partial<KitchenFile> = {}): KitchenFile {
  return {
    format: 'dryrun-kitchen',
    version: 1,
    name: 'A small kitchen',
    region: 'uk',
    closed: true,
    lines: [{ id: 'line', offset: 0 }],
    walls: [
      { id: 'a', length: 3000, cornerRight: { angle: 90 } },
      {
        id: 'b',
        length: '2,4 m',
        cornerRight: { thisLeg: 900, nextLeg: 1200, across: 1500 },
        construction: 'timber-stud',
        thickness: 100,
        layers: [{ id: 'board', material: 'plasterboard', thickness: 12.5 }],
        studs: [
          { id: 's1', centre: { at: 400 }, width: 38, confirmed: 'both-edges' },
          { id: 's2', centre: { from: 'right', at: { value: 800, pm: 5 } }, width: null },
        ],
        accessories: [
          { id: 'socket-1', kind: 'socket', along: { at: 1200 }, height: { up: 120 }, width: 86, tall: 86 },
        ],
      },
      { id: 'c', length: 3000, cornerRight: { angle: 90 } },
      { id: 'd', length: 2400, cornerRight: { angle: 90 } },
    ],
    floor: {
      readings: [
        { id: 'f1', at: { wall: 'b', along: { at: 300 }, out: 100 }, drop: 1003 },
        { id: 'f2', at: { wall: 'b', along: { at: 900 }, out: 600 }, drop: { value: 1009, pm: 2 } },
      ],
    },
    units: [
      { id: 'base-1', kind: 'base', wall: 'b', order: { left: { at: 600 } }, width: 600, stands: 'legs' },
      { id: 'base-2', kind: 'base', wall: 'b', order: { rightOf: 'base-1' }, width: 500, height: 720 },
      {
        id: 'wall-1',
        kind: 'wall',
        wall: 'b',
        order: { left: { at: 600 } },
        width: '24 in',
        height: { value: 700, assumed: true, because: 'read off the plan' },
        stands: 'rail',
      },
    ],
    rails: [{ id: 'rail-1', wall: 'b', units: ['wall-1'], maxSpacing: 400 }],
    appliances: [{ id: 'sink', kind: 'sink', over: 'base-2' }],
    finishing: [{ id: 'plinth-1', kind: 'plinth', wall: 'b', of: ['base-1', 'base-2'] }],
    worktops: [{ id: 'top-1', over: ['base-1', 'base-2'], thickness: 38 }],
    fixings: [{ id: 'screw-1', kind: 'wood-screw', diameter: 5, length: 70 }],
    wishes: {
      heights: [{ id: 'h1', of: 'worktop-top', max: { aboveFloor: 910 } }],
      order: [{ id: 'o1', before: { kind: 'level', on: 'base-1' }, after: { kind: 'hang' }, minLag: 30 }],
    },
    ...change,
  }
}

/** The problems of a value, as "place: message" lines; empty when it was read. */
export function linesOf(problems: readonly Problem[]): readonly string[] {
  return problems.map(({ path, message }) => `${path}: ${message}`)
}

export function problemsOf(value: unknown): readonly Problem[] {
  const read = parseKitchen(value)
  return read.ok ? [] : read.error
}

export function kitchenOf(value: unknown): Kitchen {
  const read = parseKitchen(value)
  if (!read.ok) throw new Error(linesOf(read.error).join('\n'))
  return read.value.kitchen
}
