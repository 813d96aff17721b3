/**
 * Heights are settled as differences between limits. Here each set of differences is written out as a linear programme
 * and given to a solver from elsewhere (HiGHS): whether it can hold at all, and how low and how high each thing may lie.
 */
import loadHighs from 'highs'
import { beforeAll, expect, test } from 'vitest'
import { tightestRoom } from '../../src/core/difference/bounds'
import { type Constraint, isConsistent } from '../../src/core/difference/network'
import { randomFrom } from '../support/prng'

type Solver = Awaited<ReturnType<typeof loadHighs>>
const CASES = 300
const WITHIN = 1e-6
const THINGS = ['line', 'base', 'top', 'worktop', 'wall', 'tall'] as const

let highs: Solver
beforeAll(async () => {
  highs = await loadHighs()
})

/** Limits between heights as a kitchen has them, in tenths of a millimetre; about half of the sets cannot hold. */
function limitsOf(seed: number): readonly Constraint[] {
  const random = randomFrom(seed)
  return Array.from({ length: random.int(2, 14) }, (_, i) => {
    const [from, to] = random.some([...THINGS], 2) as [string, string]
    const isTurned = random.chance(0.5)
    return {
      id: `c${String(i).padStart(2, '0')}`,
      from: isTurned ? to : from,
      to: isTurned ? from : to,
      most: random.step(-600, 1200, 0.5),
    }
  })
}

/** The programme in the file format of the solver; the line is nought, everything else free. */
function programme(goal: string, limits: readonly Constraint[]): string {
  const rows = limits.map(({ id, from, to, most }) => ` ${id}: ${to} - ${from} <= ${most}`)
  const bounds = THINGS.map((t) => (t === 'line' ? ` ${t} = 0` : ` ${t} free`))
  return [goal, 'Subject To', ...rows, 'Bounds', ...bounds, 'End'].join('\n')
}

/** The least or greatest a thing can be; null where nothing holds it. */
function end(limits: readonly Constraint[], of: string, way: 'Minimize' | 'Maximize'): number | null {
  const { Status, ObjectiveValue } = highs.solve(programme(`${way}\n obj: ${of}`, limits))
  if (Status === 'Optimal') return ObjectiveValue
  if (Status === 'Unbounded' || Status === 'Primal infeasible or unbounded') return null
  throw new Error(`${of}: ${Status}`)
}

const canHold = (limits: readonly Constraint[]): boolean =>
  highs.solve(programme('Minimize\n obj: 0 line', limits)).Status === 'Optimal'

test(`${CASES} sets of limits: whether they hold, and the room they leave`, () => {
  let [holding, worst, ends] = [0, 0, 0]
  for (let seed = 0; seed < CASES; seed++) {
    const limits = limitsOf(seed)
    const holds = canHold(limits)
    expect(isConsistent(limits), `seed ${seed}`).toBe(holds)
    const room = tightestRoom(limits, 'line')
    expect(room !== undefined, `seed ${seed}`).toBe(holds)
    if (room === undefined) continue
    holding++
    for (const of of THINGS.filter((t) => t !== 'line')) {
      const ours = room.get(of)
      const isNamed = limits.some((l) => l.from === of || l.to === of)
      if (!isNamed) continue
      const [low, high] = [end(limits, of, 'Minimize'), end(limits, of, 'Maximize')]
      expect([ours?.lowest === null, ours?.highest === null], `seed ${seed}, ${of}`).toEqual([
        low === null,
        high === null,
      ])
      for (const [a, b] of [
        [ours?.lowest?.value, low],
        [ours?.highest?.value, high],
      ]) {
        if (a === undefined || a === null || b === undefined || b === null) continue
        ends++
        worst = Math.max(worst, Math.abs(a - b))
      }
    }
  }
  console.log(
    `linear programmes: ${CASES} sets, ${holding} hold, ${ends} ends, worst difference ${worst.toExponential(1)} mm`,
  )
  expect(holding).toBeGreaterThan(CASES / 5)
  expect(holding).toBeLessThan(CASES - CASES / 5)
  expect(ends).toBeGreaterThan(CASES)
  expect(worst).toBeLessThan(WITHIN)
})
