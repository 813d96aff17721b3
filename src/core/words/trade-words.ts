import { GLOSSARY, type TradeWord } from './en/glossary'

/** A piece of a sentence: plain, or a word of the trade as it stands there. */
export interface Piece {
  readonly text: string
  /** The word it is listed under; null: plain text. */
  readonly word: string | null
}

/** What is known of a word, by the name it is listed under. */
const BY_WORD: ReadonlyMap<string, TradeWord> = new Map(GLOSSARY.map((entry) => [entry.word, entry]))
const LISTED_UNDER: ReadonlyMap<string, string> = new Map(
  GLOSSARY.flatMap(({ word, forms = [word] }) => forms.map((form) => [form, word] as const)),
)

/** A sentence, and the key of the message it comes from, which tells what is meant by a word of two meanings. */
export interface Spoken {
  readonly text: string
  /** Left out: of no message. A word is then taken to mean what the list says. */
  readonly key?: string | undefined
}

/** Whether a word means in this message what the list says; a message may be several said as one, their keys in turn. */
function isMeant(word: string, key: string | undefined): boolean {
  if (key === undefined) return true
  const { onlyIn, notIn = [] } = BY_WORD.get(word) ?? {}
  const beginsWith = (begin: string) => ` ${key}`.includes(` ${begin}`)
  return (onlyIn === undefined || onlyIn.some(beginsWith)) && !notIn.some(beginsWith)
}

export const meaningOf = (word: string): string => BY_WORD.get(word)?.says ?? ''

/** Every form, one or several of it, whole words only; the longest goes first, so that a short one never cuts it up. */
const FORMS = [...LISTED_UNDER.keys()].sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
const ANY_FORM = new RegExp(String.raw`(?<![\p{L}\p{N}-])(${FORMS.join('|')})(e?s)?(?![\p{L}\p{N}-])`, 'giu')

/** A sentence in pieces: each word of the trade once, where it stands first; those in `passed` are left plain. */
export function piecesOf(
  { text: sentence, key }: Spoken,
  passed: ReadonlySet<string> = new Set(),
): readonly Piece[] {
  const pieces: Piece[] = []
  const seen = new Set(passed)
  let from = 0
  for (const match of sentence.matchAll(ANY_FORM)) {
    const word = LISTED_UNDER.get((match[1] ?? '').toLowerCase())
    if (word === undefined || seen.has(word) || !isMeant(word, key)) continue
    seen.add(word)
    if (match.index > from) pieces.push({ text: sentence.slice(from, match.index), word: null })
    pieces.push({ text: match[0], word })
    from = match.index + match[0].length
  }
  if (from < sentence.length) pieces.push({ text: sentence.slice(from), word: null })
  return pieces
}

/** Sentences that are read one after the other: of each word only the first use in any of them is taken out. */
export function piecesInTurn(sentences: readonly Spoken[]): readonly (readonly Piece[])[] {
  const passed = new Set<string>()
  return sentences.map((sentence) => {
    const pieces = piecesOf(sentence, passed)
    for (const { word } of pieces) if (word !== null) passed.add(word)
    return pieces
  })
}

/** The words of the trade in some sentences, in the order of the list. */
export function wordsIn(sentences: readonly Spoken[]): readonly string[] {
  const used = new Set(piecesInTurn(sentences).flatMap((pieces) => pieces.flatMap(({ word }) => word ?? [])))
  return GLOSSARY.map(({ word }) => word).filter((word) => used.has(word))
}
