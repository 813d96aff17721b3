/** The plan of the second demo kitchen read as somebody at the wall would: what comes where, and what is said there. */
import { expect, test } from 'vitest'
import { why } from '../../../src/core/order/why'
import { say } from '../../../src/core/words/say'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const ids = plan.operations.map(({ id }) => id)
const place = (id: string) => {
  expect(ids).toContain(id)
  return ids.indexOf(id)
}
const said = (id: string) => (plan.operations[place(id)]?.does ?? []).map((m) => say(m))

test.each(['base-1', 'base-2', 'base-3', 'base-4', 'base-5', 'corner-1'])(
  '%s is levelled where it was set, before another is touched',
  (unit) => {
    expect(ids[place(`place:${unit}`) + 1]).toBe(`level:${unit}`)
  },
)

test('the base units of one wall are set before those of the other', () => {
  const walls = plan.operations
    .filter((o) => o.kind === 'place' && o.stage === 'base-units')
    .map(({ wall }) => wall)
  const turns = walls.filter((wall, i) => i > 0 && wall !== walls[i - 1])
  expect(turns).toHaveLength(1)
})

test('a hood is hung while all is off and tried when it is on; a sink is there before the machine that drains by it', () => {
  expect(place('connect:hood-1')).toBeLessThan(place('restore-supply:room'))
  const checks = (id: string) => (plan.operations[place(id)]?.checks ?? []).map(({ ask }) => ask.key)
  expect(checks('connect:hood-1')).not.toContain('check.works')
  expect(checks('restore-supply:room')).toContain('check.works')
  expect(place('connect:sink-1')).toBeLessThan(place('connect:dishwasher-1'))
})

test('why a stage comes after another is told where the step shows it', () => {
  expect(why(plan, 'hang:wall-1')?.stage?.rule).toBe('tall-before-wall')
  expect(why(plan, 'place:base-1')?.stage?.rule).toBe('wall-before-base')
  expect(why(plan, 'strike:line')?.stage).toBeNull()
})

test('refused places are named where holes are marked, each with what speaks against it', () => {
  const refused = plan.holes.filter((h) => h.wall === 'a' && h.verdict === 'refused')
  expect(refused.length).toBeGreaterThan(0)
  const lines = said('mark-holes:a').filter((line) => line.startsWith('No hole '))
  expect(lines).toHaveLength(refused.length)
  for (const hole of refused) {
    const [why] = hole.against.map((m) => say(m))
    expect(lines.some((line) => why !== undefined && line.endsWith(why))).toBe(true)
  }
})

test('who holds and who works is said from hook to last screw', () => {
  for (const id of ['level:wall-1', 'second-fix:wall-1'])
    expect(said(id).join(' ')).toMatch(/One of you keeps hold of .*; the other /)
  expect(said('lock:wall-1').join(' ')).toContain('The one who holds wall unit 1 holds on')
})

test('a tall unit comes down from its blocks before it is walked', () => {
  const lines = said('place:tall-1')
  const down = lines.findIndex((line) => line.includes('draws the block out'))
  const walked = lines.findIndex((line) => line.startsWith('Two of you move'))
  expect(down).toBeGreaterThanOrEqual(0)
  expect(down).toBeLessThan(walked)
  const warned = plan.operations[place('place:tall-1')]?.cautions.map((c) => say(c.say)).join(' ')
  expect(warned).toContain('out from under the edge')
})

test('packing is told before the screws of a base unit', () => {
  const lines = said('fix:base-1')
  const packed = lines.findIndex((line) => line.startsWith('Pack behind it first'))
  const screwed = lines.findIndex((line) => /^Fix an L bracket|^Screw: /.test(line))
  expect(packed).toBeGreaterThanOrEqual(0)
  expect(screwed).toBeGreaterThan(packed)
})

test('a panel beside a space for an appliance is not screwed to a unit that is not there', () => {
  expect(said('panel:end-panel-1').join(' ')).toContain('No unit stands beside it')
  expect(said('panel:end-panel-1').join(' ')).not.toContain('from inside the unit')
})

test('what is still open stops the work it bears on most closely', () => {
  const stops = Object.fromEntries(
    plan.operations.filter((o) => o.stops.length > 0).map((o) => [o.id, o.stops]),
  )
  expect(stops['fit-nogging:a.nogging-1']).toEqual(['trace-first:a'])
  expect(stops['stand-up:tall-1']).toEqual(['hole-past-50:a'])
  expect(stops['fix:base-3']).toEqual(['stud-not-confirmed:a.a-s9'])
  expect(stops['connect:hood-1']).toEqual(['hood-height:hob-1+hood-1'])
})
