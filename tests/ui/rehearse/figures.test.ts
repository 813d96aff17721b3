import { expect, test } from 'vitest'
import { figureGroups, leadingFigures } from '../../../src/ui/rehearse/figure-groups'
import { holeRows } from '../../../src/ui/rehearse/hole-rows'
import { planOf } from '../../support/kitchens'

const plans = [planOf('l-shape'), planOf('one-wall')]
const operations = plans.flatMap((p) => p.operations)

test('every figure of every step is shown once, whatever it is gathered with', () => {
  for (const { id, figures } of operations) {
    const { first, rest } = leadingFigures(figures)
    expect([...first, ...rest].map((f) => f.name).sort(), id).toEqual(figures.map((f) => f.name).sort())
    const { onWall, inUnit, others } = holeRows(rest)
    const { large, listed } = figureGroups(others)
    const heights = onWall.flatMap(({ height, depth, holes }) => [
      ...holes.map((h) => h.along),
      ...holes.flatMap(() => [height, depth]),
    ])
    const shown = [...large, ...listed, ...inUnit.rows.flatMap((r) => r.cells), ...heights].filter(
      (f) => f !== null,
    )
    expect(shown, id).toHaveLength(rest.length)
  }
})

test('no more than two figures stand over the words, and none of a hole', () => {
  for (const { figures } of operations) {
    const { first } = leadingFigures(figures)
    expect(first.length).toBeLessThanOrEqual(2)
    expect(first.some((f) => f.label.key.startsWith('label.hole-'))).toBe(false)
  }
})

test('holes of one rail are one group; holes at different heights are not', () => {
  const [plan] = plans
  const groupsOf = (id: string) => holeRows(plan?.operations.find((o) => o.id === id)?.figures ?? []).onWall
  expect(groupsOf('drill-rail:rail-1')).toHaveLength(1)
  const heights = groupsOf('mark-holes:a').map(({ height }) =>
    height === null || height.figure.state === 'unknown' ? null : height.figure.value,
  )
  expect(heights.length).toBeGreaterThan(2)
  expect(new Set(heights).size).toBe(heights.length)
})

test('holes through a unit that hangs already are rows of what is measured inside it', () => {
  const [plan] = plans
  const operation = plan?.operations.find((o) => o.id === 'second-fix:wall-2')
  const { inUnit } = holeRows(operation?.figures ?? [])
  expect(inUnit.heads).toContain('depth stop from the rail')
  expect(inUnit.rows).toHaveLength(operation?.holes.length ?? 0)
})
