/** The part of the browser's speech that is used; a test gives its own. */
export interface Speech {
  speak(utterance: Utterance): void
  cancel(): void
  getVoices(): readonly Voice[]
  addEventListener?(name: 'voiceschanged', listener: () => void): void
  removeEventListener?(name: 'voiceschanged', listener: () => void): void
}
export interface Voice {
  readonly name: string
  readonly lang: string
  /** Only a voice on the device itself is ever used: another sends the words away to be spoken. */
  readonly localService: boolean
  readonly default: boolean
}
export interface Utterance {
  voice: Voice | null
  lang: string
  onend: (() => void) | null
  onerror: (() => void) | null
}
export interface SpeechParts {
  readonly speech: Speech
  readonly utter: (text: string) => Utterance
}

/** The speech of this browser; null: it has none. */
export function speechHere(): SpeechParts | null {
  if (!('speechSynthesis' in window) || !('SpeechSynthesisUtterance' in window)) return null
  return {
    speech: window.speechSynthesis as unknown as Speech,
    utter: (text) => new SpeechSynthesisUtterance(text) as unknown as Utterance,
  }
}

/** Browsers list their voices late: longer than this, ms, and there are none. */
const LISTED_WITHIN = 2000

/** An English voice on this device; null: it has none. No other kind is ever given back. */
export async function voiceHere(speech: Speech): Promise<Voice | null> {
  if (speech.getVoices().length === 0) await listed(speech)
  const local = speech.getVoices().filter((v) => v.localService === true && /^en\b/i.test(v.lang))
  return local.find((v) => v.default) ?? local.find((v) => /^en[-_]GB/i.test(v.lang)) ?? local[0] ?? null
}

function listed(speech: Speech): Promise<void> {
  return new Promise((resolve) => {
    const done = () => {
      clearTimeout(late)
      speech.removeEventListener?.('voiceschanged', done)
      resolve()
    }
    const late = setTimeout(done, LISTED_WITHIN)
    speech.addEventListener?.('voiceschanged', done)
  })
}

/** Reads one sentence after another until it is stopped or they are at their end. */
export interface Reader {
  read(sentences: readonly string[], voice: Voice): void
  stop(): void
}

/**
 * @param onAt which sentence is being read; null: none any more
 */
export function makeReader({ speech, utter }: SpeechParts, onAt: (at: number | null) => void): Reader {
  // What is being spoken is held here: browsers have been known to drop an utterance that nobody holds, and its end with it.
  let now: Utterance | null = null
  const silence = () => {
    if (now === null) return
    now.onend = null
    now.onerror = null
    now = null
    speech.cancel()
  }
  const from = (sentences: readonly string[], at: number, voice: Voice): void => {
    const text = sentences[at]
    now = null
    if (text === undefined) {
      onAt(null)
      return
    }
    now = utter(text)
    now.voice = voice
    now.lang = voice.lang
    now.onend = () => from(sentences, at + 1, voice)
    now.onerror = () => {
      now = null
      onAt(null)
    }
    onAt(at)
    speech.speak(now)
  }
  return {
    read(sentences, voice) {
      silence()
      from(sentences, 0, voice)
    },
    stop() {
      silence()
      onAt(null)
    },
  }
}
