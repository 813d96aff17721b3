import { demandsWords } from './demands'
import { findingsWords } from './findings'
import { firstWords } from './first'
import { fixingsWords } from './fixings'
import { heightsWords } from './heights'
import { holesWords } from './holes'
import { liftingWords } from './lifting'
import { operationsWords } from './operations'
import { orderWords } from './order'
import { placingWords } from './placing'
import { planWords } from './plan'
import { sceneWords } from './scene'
import { surveyWords } from './survey'

/** Every sentence the tool can say, in English: one table, made of one file for each part of the core. */
export const english: Readonly<Record<string, string>> = {
  ...demandsWords,
  ...findingsWords,
  ...firstWords,
  ...fixingsWords,
  ...heightsWords,
  ...holesWords,
  ...liftingWords,
  ...operationsWords,
  ...orderWords,
  ...placingWords,
  ...planWords,
  ...sceneWords,
  ...surveyWords,
}
