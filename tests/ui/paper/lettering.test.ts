/** Nothing that is lettered on the drawing of a wall touches anything else that is lettered there, and all of it is on the sheet. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { workThrough } from '../../../src/core/plan/entry'
import type { Plan, WallFrame } from '../../../src/core/plan/types'
import { withWords } from '../../../src/core/words/with-words'
import { chainLabels, SLASH } from '../../../src/ui/paper/wall/chain'
import { flagsFor, foundOn } from '../../../src/ui/paper/wall/found'
import { markBoxes } from '../../../src/ui/paper/wall/Holes'
import { thingBoxes } from '../../../src/ui/paper/wall/InWall'
import { letteringOf } from '../../../src/ui/paper/wall/lettering'
import { type Pen, penFor } from '../../../src/ui/paper/wall/pen'
import { type Box, distance, overlaps } from '../../../src/ui/paper/wall/spread'

const kitchens = import.meta.glob<unknown>('../../../scenes/*.dryrun.json', {
  eager: true,
  import: 'default',
})
const walls = Object.values(kitchens).flatMap((kitchen) => {
  const outcome = withWords(workThrough(kitchen))
  if (outcome.kind !== 'plan') return []
  const { plan } = outcome
  return plan.walls.map((frame) => ({ title: `${plan.name}, ${frame.name || frame.wall}`, plan, frame }))
})

const shrunk = ({ x, y, w, h }: Box): Box => ({ x: x + 0.5, y: y + 0.5, w: w - 1, h: h - 1 })
const set = (plan: Plan, frame: WallFrame) => {
  const pen = penFor(plan, frame) as Pen
  return { pen, ...letteringOf(plan, frame, foundOn(plan, frame.wall), pen) }
}

test('every wall of every kitchen that has a plan is looked at', () => {
  expect(walls.length).toBeGreaterThanOrEqual(12)
})

describe.each(walls)('$title', ({ plan, frame }) => {
  const { pen, boxes, flags, placed } = set(plan, frame)

  test('no two pieces of lettering touch', () => {
    const touching = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => overlaps(shrunk(a), shrunk(b)))
        .map((b) => `${a.text} and ${b.text}`),
    )
    expect(touching).toEqual([])
  })

  test('all of it is on the sheet, and the sheet on A3 at its scale, in letters of 9 points at least', () => {
    const [left, top, width, height] = pen.viewBox.split(' ').map(Number) as [number, number, number, number]
    const off = boxes.filter(
      ({ x, y, w, h }) => x < left || y < top || x + w > left + width || y + h > top + height,
    )
    expect(off.map((b) => b.text)).toEqual([])
    const scale = pen.print?.scale ?? Number.NaN
    expect(width / scale).toBeCloseTo(pen.print?.width ?? 0, 0)
    expect(width / scale).toBeLessThanOrEqual(396)
    expect(height / scale).toBeLessThanOrEqual(214)
    const points = ((0.88 * pen.text) / scale / 25.4) * 72
    expect(points).toBeGreaterThanOrEqual(9)
  })

  test('no name lies over a socket or a mark, and no number is nearer to another hole than to its own', () => {
    const { names, holes, things } = set(plan, frame)
    const solid = [...thingBoxes(things, pen), ...markBoxes(holes, pen)]
    expect(
      names.filter((name) => solid.some((s) => overlaps(name, s))).map((n) => n.lines.join(' ')),
    ).toEqual([])
    const astray = placed.filter((p) =>
      placed.some((other) => other !== p && distance(p.label, other) < distance(p.label, p) - 1e-6),
    )
    expect(astray.map((p) => p.hole.id)).toEqual([])
  })

  test('every finding with a place along the wall has its flag, and no flag hides a hole’s mark', () => {
    const here = foundOn(plan, frame.wall).filter((f) => f.finding.where?.along !== null)
    expect(flags.map((f) => f.letter)).toEqual(here.map((f) => f.letter))
    const hidden = flags.filter((flag) =>
      placed.some((p) => overlaps(flag, { x: p.x, y: p.y, w: 0.1, h: 0.1 })),
    )
    expect(hidden.map((f) => f.letter)).toEqual([])
  })
})

test('the demo kitchens have flags at all', () => {
  expect(walls.reduce((sum, { plan, frame }) => sum + set(plan, frame).flags.length, 0)).toBeGreaterThan(20)
})

/** Gaps of these widths one after another. */
function inARow(widths: readonly number[]) {
  let at = 0
  return widths.map((w) => {
    const from = at
    at += w
    return { from, to: at }
  })
}

describe('figures of a chain', () => {
  const widths = fc.array(fc.integer({ min: 3, max: 1200 }), { minLength: 1, maxLength: 12 })

  test('touch no other figure, and on the line no slash, whatever the widths', () => {
    fc.assert(
      fc.property(widths, fc.constantFrom(20, 40, 58, 80), (all, size) => {
        const gaps = inARow(all)
        const edges = [0, ...gaps.map((g) => g.to)]
        const length = edges.at(-1) as number
        const labels = chainLabels(gaps, length, size)
        expect(labels).toHaveLength(all.length)
        labels.forEach((a, i) => {
          for (const b of labels.slice(i + 1)) expect(overlaps(shrunk(a), shrunk(b))).toBe(false)
        })
        const reach = (SLASH * size) / 16
        for (const { row, x, w } of labels)
          if (row === 0)
            for (const edge of edges) expect(edge + reach <= x || edge - reach >= x + w).toBe(true)
      }),
    )
  })

  test('narrow gaps at the ends are lettered outside, one in the middle above', () => {
    const gaps = inARow([40, 600, 12, 900, 60])
    const of = (text: string) => chainLabels(gaps, 1612, 58).find((l) => l.text === text)
    expect(of('40')?.x).toBeLessThan(0)
    expect(of('60')?.x).toBeGreaterThan(1612)
    expect(of('12')?.row).toBe(1)
    expect(of('600')?.row).toBe(0)
  })
})

test('a finding without a place along the wall gets no flag', () => {
  const [{ plan, frame }] = walls as unknown as readonly [(typeof walls)[number]]
  const pen = penFor(plan, frame) as Pen
  const nowhere = foundOn(plan, frame.wall).map((f) => ({ ...f, finding: { ...f.finding, where: null } }))
  expect(flagsFor(nowhere, pen, [])).toEqual([])
})
