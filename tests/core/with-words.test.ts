import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { workThrough } from '../../src/core/plan/entry'
import { say } from '../../src/core/words/say'
import { sayWritten } from '../../src/core/words/say-written'
import { withWords } from '../../src/core/words/with-words'
import { messagesIn } from '../support/plan-properties'
import { ROOT } from '../support/root'

const outcomeOf = (name: string) =>
  workThrough(JSON.parse(readFileSync(join(ROOT, 'scenes', `${name}.dryrun.json`), 'utf8')) as unknown)

test.each(['l-shape', 'no-order', 'north-american'])(
  'all that comes of %s says the same with its own words',
  (name) => {
    const outcome = outcomeOf(name)
    const written = withWords(outcome)
    const [before, after] = [messagesIn(outcome), messagesIn(written)]
    expect(before.length).toBeGreaterThan(20)
    expect(after.map((m) => sayWritten(m))).toEqual(before.map((m) => say(m)))
    // Nothing else is touched: without the words it is what it was.
    const bare = JSON.stringify(written, (key, value: unknown) => (key === 'template' ? undefined : value))
    const was = JSON.stringify(outcome, (key, value: unknown) => (key === 'template' ? undefined : value))
    expect(bare).toBe(was)
  },
)

test('a message without words is told loudly', () => {
  expect(sayWritten({ key: 'no.such', values: {} })).toBe('[no words for no.such]')
})

test('what holds no message is given back as it is', () => {
  const plain = { a: [1, { b: 'c' }], d: null }
  expect(withWords(plain)).toBe(plain)
})
