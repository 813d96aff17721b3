/**
 * What a survey and a delivery list ask, in the words and the order they are asked: plain data. The screen, the sheet to
 * print and the reading of pasted tables are all made from it; a test holds it against the schema of the kitchen file,
 * so that nothing the file can hold goes unasked.
 */

export type Option = readonly [value: string, words: string]

interface Asked {
  /** Field of the thing it belongs to, with dots for what is inside it: `legs.min`. */
  readonly key: string
  readonly label: string
  /** What it goes by on the screen and on the sheet to print: `2.4`, the fourth of the second page. See numbers.ts. */
  readonly number?: string
  /**
   * Its number on its page, for one that came in between after sheets had been printed: the next that is free, and the
   * others keep theirs.
   */
  readonly late?: number
  /** How it is found out, in a sentence. */
  readonly how?: string
  /** Asked only when somebody looks for it. */
  readonly more?: true
  /** Asked only while another field of the thing holds one of these words; '' is while it holds none. */
  readonly only?: { readonly when: string; readonly is: readonly string[] }
  /** This edge has another across from it, and people measure how far it is from the one to the other. */
  readonly span?: Span
}

/** How far it is from one edge of a thing to the other: typed beside them, and kept nowhere. See span.ts. */
export interface Span {
  /** The other edge, by its key. */
  readonly to: string
  readonly label: string
  readonly how?: string
  /** Things of these kinds are measured at their middle. */
  readonly middle?: {
    readonly of: readonly string[]
    readonly label: string
    readonly how: string
    /** What the width is called beside it. */
    readonly across: string
  }
}

export type Field = Asked &
  (
    | {
        /** `length`: mm, or with its unit as typed. `along`, `height`, `place`: a position as it was measured. */
        readonly kind: 'length' | 'text' | 'yes-no' | 'along' | 'height' | 'place' | 'order'
      }
    | { readonly kind: 'number'; readonly unit: string }
    /** `always`: one of them holds, whether or not anybody says so; the first until another is chosen. */
    | {
        readonly kind: 'choice'
        readonly options: readonly Option[]
        readonly always?: true
      }
    | { readonly kind: 'choices'; readonly options: readonly Option[] }
    /** Points at one thing, or at several, of these lists. */
    | { readonly kind: 'ref' | 'refs'; readonly to: readonly string[] }
    | { readonly kind: 'list'; readonly things: Things }
  )

/** What of a list has room of its own on the sheet to print. */
export interface OnSheet {
  /** Blank ones to fill in. */
  readonly rows: number
  /** The fields that have a column, by their keys. */
  readonly columns: readonly string[]
  /** `across`: a column for each thing, a line for each field. `grid`: readings along a wall. `half`: beside another. */
  readonly as?: 'across' | 'grid' | 'half'
  /** The others stand on a sheet that came with it, and are typed from there: they need not be written twice. */
  readonly hasOwnSheet?: true
}

/** A list of things of one sort: how one is called, and what is asked of each. */
export interface Things {
  readonly one: string
  readonly many: string
  /** What its marks begin with: `stud` makes `stud-1`, `stud-2`. */
  readonly mark: string
  readonly fields: readonly Field[]
  /** Fields that a further one takes over from the one before it; more often right than not. */
  readonly copied?: readonly string[]
  /** What the file cannot do without in one, still empty. */
  readonly starts?: Readonly<Record<string, unknown>>
  readonly how?: string
  /** Without it, only its name stands on the sheet to print, among what there may be. */
  readonly sheet?: OnSheet
}

/** One page of the survey. */
export interface Page {
  readonly id: string
  /** What the numbers of its fields begin with. */
  readonly number?: string
  readonly title: string
  readonly how: string
  readonly fields: readonly Field[]
  /** Fields, by their keys, that have a line of their own on the sheet to print. */
  readonly lines?: readonly string[]
  /** Fields that stand at the head of every page of that sheet. */
  readonly head?: readonly string[]
}

type Extra = Partial<Pick<Asked, 'how' | 'more'>>

const simple =
  <K extends 'length' | 'text' | 'yes-no' | 'along' | 'height' | 'place' | 'order'>(kind: K) =>
  (key: string, label: string, how?: string, extra: Extra = {}): Field => ({
    key,
    label,
    kind,
    ...(how === undefined ? {} : { how }),
    ...extra,
  })

export const length = simple('length')
export const text = simple('text')
export const yesNo = simple('yes-no')
export const along = simple('along')
export const height = simple('height')
export const place = simple('place')
export const order = simple('order')

export const number = (key: string, label: string, unit: string, how?: string): Field => ({
  key,
  label,
  kind: 'number',
  unit,
  ...(how === undefined ? {} : { how }),
})

export const choice = (key: string, label: string, options: readonly Option[], how?: string): Field => ({
  key,
  label,
  kind: 'choice',
  options,
  ...(how === undefined ? {} : { how }),
})

/** A choice that is never left open: the first option until another is chosen. */
export const always = (key: string, label: string, options: readonly Option[], how?: string): Field => ({
  key,
  label,
  kind: 'choice',
  options,
  always: true,
  ...(how === undefined ? {} : { how }),
})

export const choices = (key: string, label: string, options: readonly Option[]): Field => ({
  key,
  label,
  kind: 'choices',
  options,
})

export const ref = (key: string, label: string, to: readonly string[], how?: string): Field => ({
  key,
  label,
  kind: 'ref',
  to,
  ...(how === undefined ? {} : { how }),
})

export const refs = (key: string, label: string, to: readonly string[]): Field => ({
  key,
  label,
  kind: 'refs',
  to,
})

export const list = (key: string, things: Things): Field => ({
  key,
  label: things.many,
  kind: 'list',
  things,
  ...(things.how === undefined ? {} : { how: things.how }),
})

/** An edge, and how far it is from it to the other. */
export const spanning = (field: Field, span: Span): Field => ({ ...field, span })

/** The same fields, asked only while another one of the thing holds one of these words. */
export const only = (when: string, is: readonly string[], ...fields: readonly Field[]): readonly Field[] =>
  fields.map((field) => ({ ...field, only: { when, is } }))

/** The same fields, asked only when somebody looks for them. */
export const more = (...fields: readonly Field[]): readonly Field[] =>
  fields.map((field) => ({ ...field, more: true as const }))
