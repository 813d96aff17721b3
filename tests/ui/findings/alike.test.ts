import { describe, expect, test } from 'vitest'
import { workThrough } from '../../../src/core/plan/entry'
import { WEIGHTS } from '../../../src/core/plan/gravest-first'
import type { Finding } from '../../../src/core/plan/types'
import { RULES } from '../../../src/core/rules'
import { findingsWords } from '../../../src/core/words/en/findings'
import { withWords } from '../../../src/core/words/with-words'
import { alikeOf } from '../../../src/ui/findings/alike'
import { sentences } from '../../../src/ui/sentences'
import { words } from '../../../src/ui/words'

const kitchens = import.meta.glob<unknown>(
  ['../../../scenes/*.dryrun.json', '../../adversarial/kitchens/*.dryrun.json'],
  { eager: true, import: 'default' },
)
const found: readonly (readonly Finding[])[] = Object.values(kitchens).flatMap((kitchen) => {
  const outcome = withWords(workThrough(kitchen))
  return outcome.kind === 'plan' ? [outcome.plan.findings] : []
})

describe('findings put together', () => {
  test('lose none and none of their words', () => {
    expect(found.length).toBeGreaterThan(20)
    for (const findings of found) {
      const groups = WEIGHTS.flatMap((weight) => alikeOf(findings, weight))
      const each = groups.flatMap((g) => g.each.map((one) => ({ g, one })))
      expect(each.map(({ one }) => one.finding.id).sort()).toEqual(findings.map((f) => f.id).sort())
      for (const { g, one } of each) {
        const said = [...sentences(one.own), ...sentences(g.common)].filter((s) => s !== '')
        expect(said.sort()).toEqual([...sentences(words(one.finding.say))].sort())
        const ask = one.finding.ask === null ? null : words(one.finding.ask)
        expect(one.ask ?? g.commonAsk).toBe(ask)
      }
    }
  })

  test('alike ones are really met, and say what is the same only once', () => {
    const groups = found.flatMap((findings) => WEIGHTS.flatMap((weight) => alikeOf(findings, weight)))
    const several = groups.filter((g) => g.each.length > 1)
    expect(several.length).toBeGreaterThan(3)
    for (const g of several)
      for (const s of sentences(g.common)) expect(g.each[0]?.own).not.toContain(s || '\n')
    expect(
      groups.some((g) => g.rule === 'screw-length-marginal' && g.common.startsWith('Measure the layers')),
    ).toBe(true)
  })

  test('what can hurt someone comes first', () => {
    for (const findings of found)
      for (const weight of WEIGHTS) {
        const hurts = alikeOf(findings, weight).map((g) => Number(g.dangerous))
        expect(hurts).toEqual([...hurts].sort((a, b) => b - a))
      }
  })
})

test('a point within a figure ends no sentence', () => {
  expect(sentences('It is 11.3 kg. Weigh it before you lift it.')).toEqual([
    'It is 11.3 kg.',
    'Weigh it before you lift it.',
  ])
})

test('every rule has a heading that no other has, short and without a promise', () => {
  const called = new Map<string, string>()
  for (const rule of RULES) called.set(rule.id, rule.heading)
  for (const finding of found.flat()) called.set(finding.rule, words(finding.called))
  for (const [key, said] of Object.entries(findingsWords)) called.set(key.replace('called.', ''), said)
  expect(called.size).toBeGreaterThan(110)
  expect(new Set(called.values()).size).toBe(called.size)
  for (const [rule, heading] of called) {
    expect(heading.length, rule).toBeLessThan(52)
    expect(heading, rule).not.toMatch(/!|\bsafe\b|\bfine\b|\bclear\b/)
    expect(heading, rule).toMatch(/^\p{Lu}[^-]*$/u)
  }
})
