import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inOneRow, stageLabels } from '../../../src/ui/rehearse/stage-lettering'
import { stepTarget, tapeTarget } from '../../../src/ui/rehearse/step-keys'
import { stretches, tapeScale } from '../../../src/ui/rehearse/tape-scale'
import { planOf } from '../../support/kitchens'

describe('the tape', () => {
  test('every tick is found again at its own place', () => {
    const scale = tapeScale(104, 40, 1440, 6)
    for (let i = 0; i < 104; i++) expect(scale.indexAt(scale.x(i))).toBe(i)
  })

  test.each([0, 52, 103])('on a narrow screen the hook is in sight at step %d', (index) => {
    const scale = tapeScale(104, index, 390, 10)
    expect(scale.x(index)).toBeGreaterThan(0)
    expect(scale.x(index)).toBeLessThan(390)
  })

  test('a press beyond either end takes the end', () => {
    const scale = tapeScale(10, 3, 500, 6)
    expect(scale.indexAt(-50)).toBe(0)
    expect(scale.indexAt(900)).toBe(9)
  })

  test('a stage worked in two goes is lettered twice', () => {
    const stages = ['survey', 'survey', 'assemble', 'survey'] as const
    expect(stretches(stages.map((stage) => ({ stage })))).toEqual([
      { stage: 'survey', from: 0, to: 1 },
      { stage: 'assemble', from: 2, to: 2 },
      { stage: 'survey', from: 3, to: 3 },
    ])
  })
})

test('keys: anywhere the arrows step; only the tape takes up and down, pages and both ends', () => {
  expect(['ArrowRight', 'ArrowLeft'].map((k) => stepTarget(k, 5))).toEqual([6, 4])
  const others = ['Home', 'End', 'PageUp', 'PageDown', 'ArrowUp', 'ArrowDown', 'x']
  expect(others.filter((k) => stepTarget(k, 5) !== undefined)).toEqual([])
  expect(['ArrowRight', 'ArrowLeft', ...others].map((k) => tapeTarget(k, 12, 20))).toEqual([
    ...[13, 11, 0, 19, 22, 2, 13, 11],
    undefined,
  ])
})

describe('the names of the stages along the tape', () => {
  const of = (name: 'l-shape' | 'one-wall', index: number, width: number, least: number, letter: number) => {
    const { operations } = planOf(name)
    const scale = tapeScale(operations.length, index, width, least)
    return {
      all: stretches(operations),
      labels: stageLabels(stretches(operations), scale, index, width, letter),
    }
  }

  test.each(['l-shape', 'one-wall'] as const)('%s: at 1440 and at 1024 every stage is lettered', (name) => {
    for (const width of [1440, 1024]) {
      const { all, labels } = of(name, 0, width, 6, 7.2)
      expect(labels.map((l) => l.from)).toEqual(all.map((s) => s.from))
    }
  })

  test('on a telephone the stage at the hook always is, and none touches the next or leaves the tape', () => {
    const count = planOf('l-shape').operations.length
    for (let index = 0; index < count; index += 1) {
      const { all, labels } = of('l-shape', index, 390, 10, 8.2)
      const now = all.find((s) => index >= s.from && index <= s.to)
      expect(labels.map((l) => l.from)).toContain(now?.from)
      labels.forEach((l, i) => {
        expect(l.x).toBeGreaterThanOrEqual(0)
        expect(l.x + l.w).toBeLessThanOrEqual(390)
        const next = labels[i + 1]
        if (next !== undefined) expect(l.x + l.w).toBeLessThanOrEqual(next.x + 1e-6)
      })
    }
  })

  test('names that have room stay at their stage; a crowd stays in order and about its middle', () => {
    expect(inOneRow([0, 100, 200], [50, 50, 50], 0, 400)).toEqual([0, 100, 200])
    expect(inOneRow([100, 100, 100], [50, 50, 50], 0, 400)).toEqual([50, 100, 150])
    expect(inOneRow([390, 395], [50, 50], 0, 400)).toEqual([300, 350])
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 10, max: 60 })), {
          maxLength: 14,
        }),
        (all) => {
          const wanted = all.map(([at]) => at).sort((a, b) => a - b)
          const widths = all.map(([, w]) => w)
          const placed = inOneRow(wanted, widths, 0, 1000)
          placed.forEach((x, i) => {
            if (i > 0)
              expect(x).toBeGreaterThanOrEqual((placed[i - 1] as number) + (widths[i - 1] as number) - 1e-6)
            expect(x).toBeGreaterThanOrEqual(0)
            expect(x + (widths[i] as number)).toBeLessThanOrEqual(1000 + 1e-6)
          })
        },
      ),
    )
  })
})
