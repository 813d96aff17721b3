import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { RULES } from '../../../src/core/rules'
import { FAILURE_MODES } from '../../../src/core/trade/failure-modes'
import { DOCUMENT, withTable } from '../../support/modes-table'
import { ROOT } from '../../support/root'
import { sourceFiles } from '../../support/source-imports'

const files = sourceFiles('src/core/rules')
  .map((path) => path.replace(/^.*\/|\.ts$/g, ''))
  .filter((name) => name !== 'index' && name !== 'rule')

test('every file of a rule is registered under its own name, once, in order', () => {
  expect(files.length).toBeGreaterThan(0)
  expect(RULES.map((rule) => rule.id)).toEqual([...files].sort())
})

test.each(RULES.map((rule) => [rule.id, rule] as const))('%s is whole and is tried', (id, rule) => {
  expect(existsSync(join(ROOT, `tests/core/rules/${id}.test.ts`)), 'has trials').toBe(true)
  expect(rule.catches.length, 'catches something').toBeGreaterThan(0)
  const modes = new Set(FAILURE_MODES.map((mode) => mode.id))
  expect(rule.catches.filter((mode) => !modes.has(mode))).toEqual([])
  expect(rule.why).toMatch(/\.$/)
  for (const words of Object.values(rule.words)) {
    expect(words).toMatch(/[.?!]$/)
    expect(words, 'promises nothing').not.toMatch(/\b(safe|safely|fine|guarantee|no danger|harmless)\b/i)
  }
})

test('the table of failure modes is as the rules are', () => {
  const document = readFileSync(DOCUMENT, 'utf8')
  expect(withTable(document)).toBe(document)
})
