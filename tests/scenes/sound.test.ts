/**
 * No false alarms: the two demo kitchens, made sound, are told nothing that stops the work and asked nothing; and each
 * warning that is left is defended here in a line. A warning without its line fails, and so does a line without its warning.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { workThrough } from '../../src/core/plan/entry'
import type { Finding } from '../../src/core/plan/types'
import { ROOT } from '../support/root'
import { soundKitchen } from '../support/sound-kitchen'

const KITCHENS: Readonly<
  Record<string, { file: () => unknown; defended: Readonly<Record<string, string>> }>
> = {
  'one-wall': {
    // Sound as it stands: a solid wall, traced whole to 80 mm, which is past every hole.
    file: () => JSON.parse(readFileSync(join(ROOT, 'scenes', 'one-wall.dryrun.json'), 'utf8')) as unknown,
    defended: {
      'door-strikes-wall:base-1':
        'A door that opens to 110° beside a wall 50 mm away does meet it: hinge stops are a cheap answer, best ordered now.',
      'lift-over-filter:worktop-1':
        '31 kg for a man and a woman is over the published 27.3 kg; the way to lift it by its ends is told with it.',
    },
  },
  'l-shape': {
    file: soundKitchen,
    defended: {
      'door-strikes-wall:tall-1':
        'The housing stands 40 mm from the side wall, and its door would be 186 mm in it at 110°.',
      'heavy-lift-late:worktop-b':
        '29 kg late on a day is a matter of rest, and nothing stops: it is told so that the day can be cut before it.',
      'hole-refused:rail.rail-1.a-s4':
        'The rail passes over a socket’s band at that stud: one fixing fewer, and the fitter must know which one to leave.',
      'lift-over-filter:hood-1':
        '14 kg overhead is over the published figure for two men at that height; a prop is enough.',
      'lift-over-filter:tall-1':
        '18.1 kg at the floor, at one end, is over the published figure; blocks under its head raise the hands.',
      'lift-over-filter:worktop-a':
        '50 kg for two men is over the published 33.3 kg; the way to lift it by its ends is told with it.',
    },
  },
}

function findings(name: string): readonly Finding[] {
  const outcome = workThrough(KITCHENS[name]?.file())
  if (outcome.kind !== 'plan') throw new Error(`${name} gives no plan`)
  return outcome.plan.findings
}

const idsOf = (list: readonly Finding[], weight: Finding['weight']): readonly string[] =>
  list
    .filter((f) => f.weight === weight)
    .map((f) => f.id)
    .sort()

describe.each(Object.keys(KITCHENS))('%s, made sound', (name) => {
  test('nothing stops the work, and nothing is left to ask', () => {
    const told = findings(name)
    expect(idsOf(told, 'stop')).toEqual([])
    expect(idsOf(told, 'ask')).toEqual([])
    expect(told.filter((f) => f.dangerous && f.weight !== 'note')).toEqual([])
  })

  test('every warning is defended, and nothing else is', () => {
    expect(idsOf(findings(name), 'warn')).toEqual(Object.keys(KITCHENS[name]?.defended ?? {}).sort())
  })
})
