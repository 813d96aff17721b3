/** What a figure comes from, said in a line: a few facts by name, and no tally of hundreds. */
import { describe, expect, test } from 'vitest'
import type { NamedFigure } from '../../src/core/plan/types'
import { factsSaid } from '../../src/core/words/facts-said'
import { planOf } from '../support/kitchens'

const plan = planOf('l-shape')

const factsOf = ({ figure }: NamedFigure) => (figure.state === 'unknown' ? figure.missing : figure.from)
const figureAt = (operation: string, key: string): NamedFigure => {
  const found = plan.operations.find((o) => o.id === operation)?.figures.find((f) => f.label.key === key)
  if (found === undefined) throw new Error(`${operation} has no ${key}`)
  return found
}
const said = (operation: string, key: string) => factsSaid(factsOf(figureAt(operation, key)), plan)

describe('facts said in a line', () => {
  test('up to six by name, each once', () => {
    expect(factsSaid(['units.base-2.width', 'units.base-2.width', 'units.wall-1.height'], plan)).toBe(
      'width of base unit 2; height of wall unit 1',
    )
  })

  test('what came by way of the heights is said as that, and the few facts besides are named first', () => {
    const turns = plan.operations
      .flatMap((o) => o.figures)
      .find((f) => f.label.key.startsWith('label.leg-turns'))
    if (turns === undefined) throw new Error('no leg is turned')
    expect(factsOf(turns).length).toBeGreaterThan(100)
    expect(factsSaid(factsOf(turns), plan)).toMatch(
      /^length of the legs as they came of .+; millimetres the legs move in one turn of .+; and the chosen heights, with what they rest on$/,
    )
  })

  test('of a height itself the parts of the survey are said, those of most facts first', () => {
    const line = said('hang:wall-3', 'label.underside')
    expect(line).toMatch(/^what the chosen heights rest on: many facts, above all of (.+), (.+) and (.+)$/)
    const counts = (part: string) =>
      factsOf(figureAt('hang:wall-3', 'label.underside')).filter((id) => id.startsWith(`${part}.`)).length
    expect(counts('units')).toBeGreaterThan(counts('floor'))
    expect(line).toContain('of the units, the floor and the ceiling')
  })

  test('where few parts are many facts, the parts are all that is said', () => {
    const ids = [1, 2, 3, 4, 5, 6, 7].map((n) => `walls.a.studs.s${n}.centre.at`)
    expect(factsSaid(ids, plan)).toBe('facts of the walls')
    expect(factsSaid([...ids, 'units.base-2.width'], plan)).toBe('facts of the walls and the units')
  })

  test('no figure of any step gives a tally', () => {
    let many = 0
    for (const figure of plan.operations.flatMap((o) => o.figures)) {
      const ids = factsOf(figure)
      const line = factsSaid(ids, plan)
      expect(line, figure.name).not.toMatch(/\d+ facts|\d+ of the /)
      expect(line.split('; ').length, figure.name).toBeLessThanOrEqual(7)
      if (ids.length > 6) many += 1
    }
    expect(many).toBeGreaterThan(50)
  })
})
