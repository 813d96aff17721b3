import { expect, test } from 'vitest'
import { isFigure } from '../../../src/core/operations/make'
import { english } from '../../../src/core/words/en'
import { operationsWords } from '../../../src/core/words/en/operations'
import { orderWords } from '../../../src/core/words/en/order'
import { planOf, workKitchen } from '../../support/work-kitchen'

test('every reason has words for when its figures are not known yet', () => {
  const lacking = planOf(workKitchen())
    .reasons.map((reason) => reason.because)
    .filter((because) => !because.key.endsWith('.unknown') && Object.values(because.values).some(isFigure))
    // A wish has figures only where they are typed.
    .filter(({ key }) => !key.startsWith('because.wish'))
    .filter(({ key }) => english[`${key}.unknown`] === undefined)
  expect([...new Set(lacking.map(({ key }) => key))]).toEqual([])
})

test('every sentence is plain: no exclamation marks, no promises, a full stop or a question mark', () => {
  const odd = Object.entries({ ...operationsWords, ...orderWords }).filter(([key, words]) => {
    const isSentence = /^(because|check|caution|finding|operation)\./.test(key) && !key.includes('.title')
    return /!|\bcabinet|\bsafe to\b| {2}/.test(words) || (isSentence && !/[.?]$/.test(words))
  })
  expect(odd).toEqual([])
})

test('words for what is not known ask for no figure that is not there', () => {
  const words: Readonly<Record<string, string>> = { ...operationsWords, ...orderWords }
  for (const [key, text] of Object.entries(words)) {
    if (!key.endsWith('.unknown')) continue
    const whole = words[key.slice(0, -'.unknown'.length)] ?? ''
    for (const [, name] of text.matchAll(/\{(\w+)/g))
      expect([key, whole]).toEqual([key, expect.stringContaining(`{${name}`)])
  }
})
