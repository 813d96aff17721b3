/** Words of the trade: each is used, each that is used is explained, and none of the explanations promises anything. */
import { describe, expect, test } from 'vitest'
import galley from '../../scenes/galley.dryrun.json'
import northAmerican from '../../scenes/north-american.dryrun.json'
import { PAGES } from '../../src/core/form/pages'
import { workThrough } from '../../src/core/plan/entry'
import { RULES } from '../../src/core/rules'
import { english } from '../../src/core/words/en'
import { GLOSSARY } from '../../src/core/words/en/glossary'
import { say } from '../../src/core/words/say'
import { piecesInTurn, piecesOf, wordsIn } from '../../src/core/words/trade-words'
import { STAGE_NAMES } from '../../src/ui/words'
import { planOf } from '../support/kitchens'

const worked = (file: unknown) => {
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error(`no plan but ${outcome.kind}`)
  return outcome.plan
}

const PLANS = [planOf('one-wall'), planOf('l-shape'), worked(galley), worked(northAmerican)]
const spokenInPlans = PLANS.flatMap(({ operations, reasons }) => [
  ...operations.flatMap((o) => [
    o.title,
    ...o.does,
    ...o.cautions.map((c) => c.say),
    ...o.checks.map((c) => c.ask),
  ]),
  ...reasons.map((r) => r.because),
]).map((m) => ({ key: m.key, text: say(m) }))
const inPlans = spokenInPlans.map(({ text }) => text)

/** Every text of some data: labels of the questions of the survey, sentences of the rules. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(textsIn)
}
const onScreens = [...textsIn(PAGES), ...textsIn(RULES), ...Object.values(STAGE_NAMES)]
const allMessages = [...Object.values(english), ...inPlans, ...onScreens]

/**
 * What a first-time fitter cannot be taken to know, put down without looking at the list of explanations: from the words
 * that the tool fixes for itself, and from the names of parts, tools and states of the work.
 */
const TRADE_WORDS = [
  ...['the line', 'wall plate', 'hanger', 'bracket', 'height screw', 'draw-in screw', 'rail', 'hook-on edge'],
  ...['end panel', 'filler', 'plinth', 'cornice', 'pelmet', 'upstand', 'splashback', 'bridging unit'],
  ...['hold point', 'hooked', 'secured', 'restrained', 'stripped', 'plumb', 'flush', 'scribe', 'snag'],
  ...['stud', 'nogging', 'pattress', 'lintel', 'masonry', 'cleat', 'packing', 'shim', 'batten', 'prop'],
  ...['pilot', 'clear hole', 'depth stop', 'plug', 'finished face', 'jig', 'router', 'trestle', 'bearer'],
  ...['storey rod', 'string line', 'laser', 'detector', 'sack barrow', 'stop valve', 'RCD', 'proved dead'],
  ...['locked off', 'underside', 'overhang', 'mid travel', 'carcass', 'datum', 'diagonal', 'respirator'],
]
const stands = (word: string, text: string) =>
  new RegExp(`(?<![\\w-])${word}(e?s)?(?![\\w-])`, 'i').test(text)

describe('the list of words', () => {
  test('every word is used by a sentence of a demo plan or on the screens', () => {
    const used = new Set(wordsIn([...spokenInPlans, ...onScreens.map((text) => ({ text }))]))
    expect(GLOSSARY.map(({ word }) => word).filter((word) => !used.has(word))).toEqual([])
  })

  test('every word of the trade that a message uses is explained', () => {
    const met = TRADE_WORDS.filter((word) => allMessages.some((text) => stands(word, text)))
    expect(met.length).toBeGreaterThan(50)
    expect(met.filter((word) => wordsIn([{ text: word }]).length === 0)).toEqual([])
  })

  test('no explanation promises that anything will hold, shouts, or goes on', () => {
    const promises =
      /!|\bsafe|\bguarantee|\bfine\b(?! dust)|\b(is|are) clear\b|\bcannot fall\b|\bwill hold\b/i
    for (const { word, says } of GLOSSARY) {
      expect(says, word).not.toMatch(promises)
      expect(says, word).toMatch(/^\p{Lu}.*\.$/u)
      expect(says.split(/[.:] /).length, word).toBeLessThanOrEqual(4)
      expect(says.length, word).toBeLessThan(220)
    }
  })

  test('the list is in order, and no form stands under two words', () => {
    const names = GLOSSARY.map(({ word }) => word.toLowerCase())
    expect(names).toEqual([...names].sort())
    const forms = GLOSSARY.flatMap(({ word, forms = [word] }) => forms)
    expect(new Set(forms).size).toBe(forms.length)
  })
})

describe('a sentence in pieces', () => {
  const found = (sentence: string) =>
    piecesOf({ text: sentence }).flatMap(({ text, word }) => (word === null ? [] : [[text, word]]))

  test('whole words only, in any case, one or several of it', () => {
    expect(found('Studs carry; a studio does not. Half-plinths neither.')).toEqual([['Studs', 'stud']])
    expect(found('Pack it: the batten and the battens.')).toEqual([
      ['Pack', 'packing'],
      ['batten', 'batten'],
    ])
  })

  test('the longest form goes first', () => {
    expect(found('Turn the draw-in screws, and measure from the line to the string line.')).toEqual([
      ['draw-in screws', 'draw-in screw'],
      ['the line', 'the line'],
      ['string line', 'string line'],
    ])
    expect(found('Fix the L bracket to the wall plate.')).toEqual([
      ['L bracket', 'bracket'],
      ['wall plate', 'plate'],
    ])
  })

  test('each word once, and of sentences in turn only where it stands first', () => {
    expect(found('A stud beside a stud.')).toEqual([['stud', 'stud']])
    const words = piecesInTurn([{ text: 'A stud.' }, { text: 'A stud and a nogging.' }]).map((s) =>
      s.flatMap((p) => p.word ?? []),
    )
    expect(words).toEqual([['stud'], ['nogging']])
  })

  test('the pieces together are the sentence', () => {
    for (const spoken of spokenInPlans)
      expect(
        piecesOf(spoken)
          .map((p) => p.text)
          .join(''),
      ).toBe(spoken.text)
  })
})

describe('a word of two meanings', () => {
  const table = Object.entries(english).map(([key, text]) => ({ key, text }))
  const isTakenOut = (word: string, spoken: { readonly text: string; readonly key?: string }) =>
    wordsIn([spoken]).includes(word)

  test('a plug is the sleeve of a screw, and not that of a sink or of an appliance', () => {
    const inSteps = table.filter(({ key, text }) => /^(operation|check)\./.test(key) && stands('plug', text))
    expect(inSteps.length).toBeGreaterThan(8)
    for (const { key, text } of inSteps) {
      const isOfScrew = /\b(screws?|holes?|tap each|flush|frame plugs?|size of the plug|drill)\b/i.test(text)
      expect(isTakenOut('plug', { key, text }), `${key}: ${text}`).toBe(isOfScrew)
    }
    expect(isTakenOut('plug', { key: 'operation.connect.test-water', text: 'Pull the plug.' })).toBe(false)
  })

  test('the line is the level line, and not one that a board is cut to or that fronts make', () => {
    const OF_HEIGHTS =
      /(from|below|along|by|strike|already|does) the line|level line|^the line (\{|for|already|above)/i
    const said = table.filter(({ text }) => isTakenOut('the line', { text }))
    for (const { key, text } of said)
      expect(isTakenOut('the line', { key, text }), `${key}: ${text}`).toBe(OF_HEIGHTS.test(text))
    expect(said.filter((spoken) => !isTakenOut('the line', spoken))).not.toEqual([])
  })

  test('of several messages said as one, each has its say', () => {
    const text = 'Tap each plug in flush.'
    expect(isTakenOut('plug', { key: 'operation.x.y + operation.plug.flush', text })).toBe(true)
    expect(isTakenOut('plug', { key: 'operation.x.operation.plug.flush', text })).toBe(false)
  })

  test('each beginning of a key that is named is one of some message', () => {
    for (const { word, onlyIn = [], notIn = [] } of GLOSSARY)
      for (const begin of [...onlyIn, ...notIn])
        expect(
          table.some(({ key }) => key.startsWith(begin)),
          `${word}: ${begin}`,
        ).toBe(true)
  })
})
