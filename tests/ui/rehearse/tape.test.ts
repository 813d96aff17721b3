import { describe, expect, test } from 'vitest'
import { stepTarget, tapeTarget } from '../../../src/ui/rehearse/step-keys'
import { stretches, tapeScale } from '../../../src/ui/rehearse/tape-scale'

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

test('keys: arrows step, Home and End go to the ends; only the tape takes up and down', () => {
  expect(['ArrowRight', 'ArrowLeft', 'Home', 'End', 'ArrowUp', 'x'].map((k) => stepTarget(k, 5, 20))).toEqual(
    [6, 4, 0, 19, undefined, undefined],
  )
  expect(['ArrowUp', 'ArrowDown', 'PageUp', 'PageDown'].map((k) => tapeTarget(k, 12, 20))).toEqual([
    13, 11, 22, 2,
  ])
})
