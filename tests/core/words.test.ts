/** Every sentence the core can ask for has its words, and none of them promises what nobody can know. */
import { describe, expect, test } from 'vitest'
import type { Message } from '../../src/core/message'
import { english } from '../../src/core/words/en'
import { say } from '../../src/core/words/say'
import { outcomeOf, SCENES } from '../support/kitchens'
import { messageCalls } from '../support/message-calls'

const calls = messageCalls()
const keys = Object.keys(english)

describe('the words of the core', () => {
  test('the source is really read', () => {
    expect(calls.filter((c) => c.isLiteral).length).toBeGreaterThan(150)
    expect(calls.some((c) => c.key === 'operation.hang.title' && c.values?.includes('unit'))).toBe(true)
  })

  test('every key in the source has a template', () => {
    const missing = calls.filter(({ key, isLiteral }) =>
      isLiteral ? english[key] === undefined : !keys.some((k) => new RegExp(`^${key}$`).test(k)),
    )
    expect(missing.map(({ file, key }) => `${file}: ${key}`)).toEqual([])
  })

  test('every placeholder of a template is filled by somebody', () => {
    const unfilled = keys.flatMap((key) => {
      const callers = calls.filter((c) => c.isLiteral && c.key === key)
      if (callers.length === 0 || callers.some((c) => c.values === null)) return []
      const given = new Set(callers.flatMap((c) => c.values ?? []))
      return placeholders(english[key] as string)
        .filter((name) => !given.has(name))
        .map((name) => `${key}: {${name}}`)
    })
    expect(unfilled).toEqual([])
  })

  test('a sentence that begins with a name begins with a capital; a piece of one does not', () => {
    const values = { unit: 'wall unit 3' }
    expect(say({ key: 'none', values, template: '{unit} is too high.' })).toBe('Wall unit 3 is too high.')
    expect(say({ key: 'none', values, template: '{unit}, left side' })).toBe('wall unit 3, left side')
    expect(say({ key: 'none', values, template: 'Hang {unit}.' })).toBe('Hang wall unit 3.')
  })

  test('no template shouts or promises', () => {
    const promises = /!|\bguarantee|\b(is|are|be|it's) safe\b|\bsafe to\b|\b(is|are) clear\b(?! (over|of))/i
    const wrong = keys.filter(
      (key) => promises.test(english[key] as string) && !isQuestion(english[key] as string),
    )
    expect(wrong.map((key) => `${key}: ${english[key]}`)).toEqual([])
  })

  test('templates are whole: braces close, and a sentence that begins ends', () => {
    const broken = keys.filter((key) => {
      const text = english[key] as string
      const opened = text.split('{').length - 1
      return text.trim() === '' || opened !== (text.match(/\{\w+(:(signed|bare|pm))?\}/g) ?? []).length
    })
    expect(broken).toEqual([])
  })
})

test.each(SCENES)('everything said of %s has its words', (name) => {
  const said = [...messagesIn(outcomeOf(name))].map((m) => ({ key: m.key, text: say(m) }))
  expect(said.length).toBeGreaterThan(20)
  const wrong = said.filter(({ text }) => /\[no |undefined|NaN|\[object/.test(text))
  expect(wrong).toEqual([])
})

/** A question may ask what a statement may not claim. */
const isQuestion = (text: string): boolean => text.endsWith('?')

function placeholders(template: string): readonly string[] {
  return [...template.matchAll(/\{(\w+)(?::\w+)?\}/g)].map((m) => m[1] as string)
}

/** Every message anywhere in a value. */
function* messagesIn(value: unknown): Generator<Message> {
  if (value === null || typeof value !== 'object') return
  const { key, values } = value as Partial<Message>
  if (typeof key === 'string' && typeof values === 'object') yield value as Message
  for (const inner of Object.values(value)) yield* messagesIn(inner)
}
