/**
 * A hand at the keyboard that types a kitchen into the survey from a sheet beside it: it knows only what has the focus,
 * goes on with Tab, and at each field types what the sheet says of it.
 */
import type { Page } from 'playwright-core'
import type { Field } from '../../src/core/form/field'
import { PAGES } from '../../src/core/form/pages'
import { thingsAt } from '../../src/core/form/rename'
import { listAt, thingAt } from '../../src/core/form/things'
import { shownTyped } from '../../src/core/form/typed'

/** What has the focus, as somebody sees it. */
interface Focused {
  readonly tag: string
  readonly type: string
  readonly fact: string | null
  readonly part: string | null
  readonly word: string | null
  readonly value: string
  readonly checked: boolean
  readonly options: readonly string[]
  readonly markOf: string | null
  readonly mark: string | null
  /** Of things shown one at a time, the one that is. */
  readonly shown: string | null
  readonly list: string | null
  readonly add: string | null
  readonly there: number
  readonly isOnward: boolean
  readonly seldomOf: string | null
  readonly isOpen: boolean
}

function focused(page: Page): Promise<Focused | null> {
  return page.evaluate(() => {
    const at = document.activeElement
    if (!(at instanceof HTMLElement) || at === document.body) return null
    const section = at.closest('[data-list]')
    const own = (what: string): string | null => at.getAttribute(`data-${what}`)
    const summary = at.tagName === 'SUMMARY' ? at.closest('fieldset')?.querySelector('[data-mark-of]') : null
    return {
      tag: at.tagName,
      type: at.getAttribute('type') ?? '',
      fact: own('fact'),
      part: own('part'),
      word: own('word'),
      value: (at as HTMLInputElement).value ?? '',
      checked: (at as HTMLInputElement).checked === true,
      options: at instanceof HTMLSelectElement ? [...at.options].map((o) => o.value) : [],
      markOf: own('mark-of'),
      mark: own('mark'),
      shown: section?.querySelector(':scope > .marks [aria-pressed=true]')?.getAttribute('data-mark') ?? null,
      list: section?.getAttribute('data-list') ?? null,
      add: own('add'),
      there:
        section?.querySelectorAll(':scope > .marks [data-mark]').length ||
        (section?.querySelectorAll(':scope > fieldset').length ?? 0),
      isOnward: at.closest('.onward') !== null,
      seldomOf: at.tagName === 'SUMMARY' ? (summary?.getAttribute('data-mark-of') ?? '') : null,
      isOpen: at.parentElement instanceof HTMLDetailsElement && at.parentElement.open,
    }
  })
}

export interface Typed {
  readonly fields: number
  readonly keys: number
}

/** Leaves of a kitchen file by their paths, listed things by their marks. */
export function leavesOf(value: unknown, under = ''): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  const walk = (here: unknown, path: string): void => {
    if (here === null || here === undefined) return
    if (Array.isArray(here) && here.every((one) => typeof one === 'object')) {
      for (const one of here) walk(one, `${path}.${String((one as { id?: unknown }).id)}`)
    } else if (typeof here === 'object' && !Array.isArray(here)) {
      for (const [key, inner] of Object.entries(here)) walk(inner, path === '' ? key : `${path}.${key}`)
    } else if (!path.endsWith('.id') && !isUsual(path, here)) found.set(path, JSON.stringify(here))
  }
  walk(value, under)
  return found
}

/** What holds where nothing else is said. */
const isUsual = (path: string, value: unknown): boolean =>
  (path.endsWith('.face') && value === 'room') || (path.endsWith('.from') && value === 'left')

/** What the sheet says and the file does not, or the other way about. */
export function differing(sheet: unknown, file: unknown): readonly string[] {
  const [wanted, there] = [leavesOf(sheet), leavesOf(file)]
  return [...new Set([...wanted.keys(), ...there.keys()])].filter(
    (path) => wanted.get(path) !== there.get(path),
  )
}

const MOST_STOPS = 6000

export class TypingHand {
  private fields = 0
  private keys = 0
  /** Things whose fields have been gone through. */
  private readonly seen = new Set<string>()

  private readonly page: Page
  private readonly sheet: unknown
  /** Paths still to be typed; undefined: all of them. */
  private readonly open: readonly string[] | undefined

  constructor(page: Page, sheet: unknown, open?: readonly string[]) {
    this.page = page
    this.sheet = sheet
    this.open = open
  }

  get typed(): Typed {
    return { fields: this.fields, keys: this.keys }
  }

  async press(key: string): Promise<void> {
    this.keys += 1
    await this.page.keyboard.press(key)
  }

  private async type(text: string): Promise<void> {
    this.fields += 1
    this.keys += text.length
    await this.page.keyboard.type(text)
  }

  /** From the heading of a page of the survey down to what leads on. */
  async wholePage(): Promise<void> {
    let isThere = false
    for (let stop = 0; stop < MOST_STOPS; stop++) {
      if (!isThere) await this.press('Tab')
      const at = await focused(this.page)
      isThere = false
      if (at === null) continue
      if (at.isOnward) return
      isThere = await this.at(at)
    }
    throw new Error('the page has no end')
  }

  /** Does what is to be done here; true where that has brought the focus to a further thing. */
  private async at(at: Focused): Promise<boolean> {
    if (at.add !== null) return this.further(at, at.add)
    if (at.markOf !== null) await this.mark(at, at.markOf)
    else if (at.mark !== null && at.list !== null) await this.choose(at, at.list, at.mark)
    else if (at.seldomOf !== null) await this.unfold(at, at.seldomOf)
    else if (at.fact !== null) await this.field(at, at.fact)
    return false
  }

  /** The mark of a thing, where the sheet has another for it. */
  private async mark(at: Focused, markOf: string): Promise<void> {
    this.seen.add(markOf)
    const keys = markOf.split('.')
    const mark = keys.pop() as string
    const list = listAt(this.sheet, keys.join('.'))
    if (list.some((thing) => thing['id'] === mark) && this.open !== undefined) return
    const wanted = list[at.there - 1]?.['id'] ?? mark
    if (this.open === undefined && wanted !== mark) await this.type(String(wanted))
  }

  /** Of things shown one at a time, the first that has something to be typed. */
  private async choose(at: Focused, list: string, mark: string): Promise<void> {
    const isWanted = (one: string): boolean =>
      this.isOpenUnder(`${list}.${one}.`) && !this.seen.has(`${list}.${one}`)
    if (at.shown !== mark && isWanted(mark) && !isWanted(at.shown ?? '')) await this.press('Enter')
  }

  private isOpenUnder(path: string): boolean {
    return this.open?.some((one) => one.startsWith(path)) ?? false
  }

  private async further(at: Focused, list: string): Promise<boolean> {
    if (at.there < listAt(this.sheet, list).length) {
      await this.press('Enter')
      return true
    }
    const left = listAt(this.sheet, list)
      .map((thing) => String(thing['id']))
      .find((mark) => this.isOpenUnder(`${list}.${mark}.`) && !this.seen.has(`${list}.${mark}`))
    if (left === undefined || at.shown === null) return false
    // Back to where the next of them is chosen.
    for (let stop = 0; stop < MOST_STOPS; stop++) {
      await this.press('Shift+Tab')
      const back = await focused(this.page)
      if (back?.list === list && back.mark === left) break
    }
    await this.press('Enter')
    return false
  }

  private async unfold(at: Focused, markOf: string): Promise<void> {
    const list = markOf.split('.').slice(0, -1).join('.')
    const fields: readonly Field[] =
      markOf === '' ? PAGES.flatMap((page) => page.fields) : (thingsAt(list)?.fields ?? [])
    const thing = thingAt(this.sheet, markOf)
    const isAsked = fields.some((f) => f.more === true && thingAt(thing, f.key) !== undefined)
    if (isAsked && !at.isOpen) await this.press('Enter')
  }

  private async field(at: Focused, fact: string): Promise<void> {
    if (at.type === 'checkbox') {
      const chosen = thingAt(this.sheet, fact)
      const isWanted = Array.isArray(chosen) && chosen.includes(at.word)
      if (isWanted !== at.checked) await this.tick()
    } else if (at.tag === 'SELECT') await this.select(at, wordOf(this.sheet, fact, at.part))
    else await this.write(at, shownTyped(valueOf(this.sheet, fact)))
  }

  private async tick(): Promise<void> {
    this.fields += 1
    await this.press('Space')
  }

  private async select(at: Focused, wanted: string): Promise<void> {
    const [from, to] = [at.options.indexOf(at.value), at.options.indexOf(wanted)]
    // What it would point at is not listed yet: it is left for the second time round.
    if (to < 0 || from === to) return
    this.fields += 1
    for (let i = from; i !== to; i += Math.sign(to - from)) {
      await this.press(to > from ? 'ArrowDown' : 'ArrowUp')
    }
  }

  private async write(at: Focused, wanted: string): Promise<void> {
    if (at.value === wanted) return
    // Coming to a field by Tab takes hold of all that stands in it.
    if (wanted === '') await this.press('Delete')
    else await this.type(wanted)
  }
}

/** A height or a place is typed into the field it has, whichever way it is measured. */
function valueOf(sheet: unknown, fact: string): unknown {
  const value = thingAt(sheet, fact)
  if (value !== undefined) return value
  const [, before, way] = /^(.*)\.(up|down|aboveFloor)$/.exec(fact) ?? []
  if (before === undefined || way === undefined) return undefined
  const height = thingAt(sheet, before)
  return ['up', 'down', 'aboveFloor'].map((key) => thingAt(height, key)).find((v) => v !== undefined)
}

/** The word a choice has on the sheet; of a position, the way it was measured. */
function wordOf(sheet: unknown, fact: string, part: string | null): string {
  const value = thingAt(sheet, fact)
  if (part === null) return value === true ? 'yes' : value === false ? 'no' : String(value ?? '')
  const position = (value ?? {}) as Readonly<Record<string, unknown>>
  if (part === 'way') {
    const ways = ['up', 'down', 'aboveFloor', 'rightOf', 'leftOf', 'left']
    return ways.find((way) => position[way] !== undefined) ?? 'up'
  }
  if (part === 'beside') return String(position['rightOf'] ?? position['leftOf'] ?? '')
  const usual: Readonly<Record<string, string>> = { from: 'left', face: 'room' }
  return String(position[part] ?? usual[part] ?? '')
}
