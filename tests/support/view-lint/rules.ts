import type { Asked } from './asked'
import type { Extent, Measured, MeasuredMoment, MeasuredView } from './measured'

/** The eight rules every picture of a step is held to, and how one operation did by each. */
export const RULES = ['B1', 'B2', 'B3', 'B4', 'B5', 'B6', 'B7', 'B8'] as const
export type Rule = (typeof RULES)[number]

export type Verdict =
  | { readonly kind: 'passes' }
  | { readonly kind: 'fails'; readonly figure: string }
  /** The rule has nothing to be asked of: nothing is placed, or nothing is fixed. */
  | { readonly kind: 'not-asked' }

export interface Checked {
  readonly asked: Asked
  readonly measured: Measured
  readonly verdicts: Readonly<Record<Rule, Verdict>>
}

const PART = 0.6
const PART_CUT_AWAY = 0.35
const DISC_SEEN = 0.9
const CONTACT = 0.25
const COVERS = { least: 0.04, most: 0.45 }
/** A small or thin part is framed by its way: a square of the least area is as wide as this. */
const REACHES = Math.sqrt(COVERS.least)
/** A part that comes a long way is as large as it can be where its way fills so much of the picture's width or height. */
const FILLS = 0.8
const TURN = 45
/** Of so many successive steps one may turn further than that. */
const SPAN = 6
const NEW_MARKS = 7
const CLEAR = 3
/** In greys it is told by its line: this many times as wide as that of others. */
const HEAVIER = 1.25
/** A level drawn smaller than this, px, tells nothing. */
const LEVEL = 120

const passes: Verdict = { kind: 'passes' }
const notAsked: Verdict = { kind: 'not-asked' }
const fails = (figure: string): Verdict => ({ kind: 'fails', figure })
const when = (isSo: boolean, figure: string): Verdict => (isSo ? passes : fails(figure))
const share = (value: number) => value.toFixed(2)

/** Judges all operations of one plan in one shape of picture. */
export function check(asked: readonly Asked[], measured: readonly Measured[]): readonly Checked[] {
  return measured.map((m, place) => {
    const a = asked[m.index]
    if (a === undefined) throw new Error(`no operation ${m.index}`)
    return {
      asked: a,
      measured: m,
      verdicts: {
        B1: partSeen(a, m),
        B2: fixingsSeen(a, m),
        B3: contactSeen(m),
        B4: framed(a, m),
        B5: turns(asked, measured, place),
        B6: oneThing(a, m),
        B7: labelsApart(m),
        B8: standsOut(a, m),
      },
    }
  })
}

const seenOf = (m: MeasuredMoment) => (m.alone === 0 ? 0 : m.seen / m.alone)
const all = (views: readonly MeasuredView[], of: (v: MeasuredView) => readonly string[]) => [
  ...new Set(views.flatMap((v) => of(v))),
]

/** Of the part in hand enough is seen at every moment, in one of the views of the step. */
function partSeen(a: Asked, { views }: Measured): Verdict {
  if (a.active.length === 0) return notAsked
  const lacking = a.moments.flatMap((t, i) => {
    const best = views.map((v) => ({
      seen: seenOf(v.moments[i] ?? { t, alone: 0, seen: 0, pixels: 1, labels: 0, touching: [] }),
      needs: v.cutAway.length > 0 ? PART_CUT_AWAY : PART,
    }))
    return best.some((b) => b.seen >= b.needs)
      ? []
      : [`${share(Math.max(...best.map((b) => b.seen)))} at ${t}`]
  })
  return when(lacking.length === 0, lacking.join(', '))
}

function fixingsSeen({ fixings }: Asked, { views }: Measured): Verdict {
  if (fixings.length === 0) return notAsked
  const best = fixings.map((f) => ({ id: f.id, seen: Math.max(...views.map((v) => v.fixings[f.id] ?? 0)) }))
  const lacking = best.filter((b) => b.seen < DISC_SEEN)
  return when(lacking.length === 0, lacking.map((b) => `${b.id} ${share(b.seen)}`).join(', '))
}

function contactSeen({ views }: Measured): Verdict {
  const shares = views.flatMap((v) => Object.values(v.contacts))
  if (shares.length === 0) return notAsked
  const best = Math.max(...shares)
  return when(best >= CONTACT, `at most ${share(best)}`)
}

function framed(a: Asked, { views }: Measured): Verdict {
  if (a.active.length === 0) return notAsked
  const wrong = views.map((v) => frameFault(a, v))
  return when(
    wrong.some((w) => w === null),
    wrong.join(' / '),
  )
}

const EDGE = 0.002

function frameFault({ isSmall }: Asked, { moments, way }: MeasuredView): string | null {
  const covers = Math.max(...moments.map((m) => m.alone / m.pixels))
  if (covers > COVERS.most) return `covers ${share(covers)}`
  if (way === null) return 'no way'
  const isInside = way.x0 >= -EDGE && way.y0 >= -EDGE && way.x1 <= 1 + EDGE && way.y1 <= 1 + EDGE
  if (!isInside) return `leaves the picture: ${extentText(way)}`
  const reach = Math.max(way.x1 - way.x0, way.y1 - way.y0)
  if (covers < COVERS.least && reach < (isSmall ? REACHES : FILLS))
    return `covers ${covers.toFixed(3)}, reaches ${share(reach)}`
  return null
}

const extentText = (e: Extent) => `${share(e.x0)}–${share(e.x1)} × ${share(e.y0)}–${share(e.y1)}`

/** Degrees between the ways two views look. */
function turn(a: MeasuredView, b: MeasuredView): number {
  const dot = a.looks.x * b.looks.x + a.looks.y * b.looks.y + a.looks.z * b.looks.z
  return (Math.acos(Math.max(-1, Math.min(1, dot))) * 180) / Math.PI
}

/** The turn into each step and within it, from the view before. */
function turnsInto(measured: readonly Measured[], place: number): readonly number[] {
  const own = measured[place]?.views ?? []
  const before = measured[place - 1]?.views.at(-1)
  return own.flatMap((v, i) => {
    const last = i === 0 ? before : own[i - 1]
    return last === undefined ? [] : [turn(last, v)]
  })
}

function turns(asked: readonly Asked[], measured: readonly Measured[], place: number): Verdict {
  const at = (k: number) => asked[measured[k]?.index ?? -1]
  // Only steps that follow one another in the plan can turn.
  if (place > 0 && measured[place]?.index !== (measured[place - 1]?.index ?? 0) + 1) return notAsked
  if (place === 0) return notAsked
  const own = turnsInto(measured, place)
  const isSameRun = at(place)?.wall !== null && at(place)?.wall === at(place - 1)?.wall
  const far = Math.max(0, ...own)
  if (isSameRun && far > TURN + 0.5) return fails(`${far.toFixed(0)}° in one run`)
  if (far <= TURN + 0.5) return passes
  const earlier = Array.from({ length: SPAN - 1 }, (_, i) => place - 1 - i).filter(
    (k) => k > 0 && Math.max(0, ...turnsInto(measured, k)) > TURN + 0.5,
  )
  return when(earlier.length === 0, `${far.toFixed(0)}°, the second in ${SPAN} steps`)
}

function oneThing(a: Asked, { views }: Measured): Verdict {
  const marks = all(views, (v) => v.newMarks)
  const isMany = views.some((v) => v.newMarks.length > NEW_MARKS)
  if (isMany && a.sort !== 'other') return fails(`${marks.length} new marks`)
  if (a.sort !== 'placing') return when(a.newParts.length <= 1 && !isMany, `${marks.length} new marks`)
  const things = new Set(
    a.newParts.length > 0 ? a.newParts : a.active.filter((n) => !n.startsWith('hole:')).map(unitOf),
  )
  return when(things.size === 1, `${things.size} new parts: ${[...things].join(', ')}`)
}

/** The plates of one unit are small parts of one step, as its screws are. */
const unitOf = (name: string) => name.replace(/^plate:plate\.([^.]+).*/, 'plates of $1')

function labelsApart({ views }: Measured): Verdict {
  const moments = views.flatMap((v) => v.moments)
  if (moments.every((m) => m.labels === 0)) return notAsked
  const touching = [...new Set(moments.flatMap((m) => m.touching))]
  return when(touching.length === 0, touching.join('; '))
}

function standsOut(a: Asked, { views }: Measured): Verdict {
  if (a.active.length === 0) return notAsked
  const [first] = views
  const found = first?.standsOut ?? null
  if (found === null) return fails('no outline')
  if (found.median < CLEAR) return fails(`${found.median.toFixed(1)} : 1`)
  // Ringed fixing points, or the level that lies on it, tell it as well as a heavier line.
  const isMarked = a.fixings.length > 0 && fixingsSeen(a, { index: 0, views }).kind === 'passes'
  const isToldOtherwise = isMarked || views.some((v) => v.level >= LEVEL)
  return when(
    isToldOtherwise || found.others === null || found.line >= HEAVIER * found.others,
    `line of ${share(found.line)} px of ink, others ${share(found.others ?? 0)}, in greys`,
  )
}
