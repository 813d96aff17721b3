import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Appliance, Opening } from '../kitchen/schema'
import { bayOf } from '../placing/appliance-doors'
import { middleOf } from '../placing/hood-places'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a tap is taken to be 50 thick and to stand in the middle of its sink; a sash passes over it by 5',
}
const HALF_TAP = known(25, 0, 'mm', [], practice)
const CLEAR = known(5, 0, 'mm', [], practice)

interface Tap {
  readonly sink: Appliance
  readonly unit: string
  readonly wall: string
  readonly along: Figure
  readonly out: Figure
  readonly top: Figure
}

/** Taps by their sinks: in the middle of the hole cut for it, else of its unit. */
function tapsOf(site: Site): readonly Tap[] {
  return site.kitchen.appliances.flatMap((sink): readonly Tap[] => {
    const bay = sink.kind === 'sink' ? bayOf(site.kitchen, sink) : null
    const plan = bay === null ? undefined : site.unit(bay)
    if (plan === undefined) return []
    const at = middleOf(site.kitchen, site.survey, site.units, { id: sink.id, over: plan.unit })
    if (at === null) return []
    const top = sum('mm', rule.basis, [heightNamed(site.heights, 'worktop-top'), sink.tapHeight])
    return [{ sink, unit: plan.unit, wall: at.wall, along: at.middle, out: sink.tapFromWall, top }]
  })
}

/** By how much a sash hung at one side reaches the tap on the plan: its width less the way from hinge to tap. */
function sideways(site: Site, tap: Tap, window: Opening, hinge: 'left' | 'right'): Figure | null {
  const at = site.survey.along(tap.wall, window[hinge])
  const away =
    hinge === 'left' ? sum('mm', rule.basis, [tap.along], [at]) : sum('mm', rule.basis, [at], [tap.along])
  if (hasValue(away) && away.value < -HALF_TAP.value) return null
  const wide = sum(
    'mm',
    rule.basis,
    [site.survey.along(tap.wall, window.right)],
    [site.survey.along(tap.wall, window.left)],
  )
  const leaf = hasValue(window.leaf) ? window.leaf : wide
  return derive('mm', rule.basis, [leaf, away, tap.out, HALF_TAP], (w, x, y, r) => {
    return (w as number) + (r as number) - Math.hypot(Math.max(0, x as number), y as number)
  })
}

/** The same for a sash hung at its top, which swings its lower edge in over the tap. */
function hungAtTop(site: Site, tap: Tap, window: Opening, sash: Figure): Figure | null {
  const [left, right] = [window.left, window.right].map((end) => site.survey.along(tap.wall, end)) as [
    Figure,
    Figure,
  ]
  if (hasValue(tap.along) && hasValue(left) && hasValue(right)) {
    if (tap.along.value < left.value || tap.along.value > right.value) return null
  }
  const head = site.onFace(tap.wall, tap.along, window.top)
  return derive('mm', rule.basis, [head, sash, tap.out, tap.top, HALF_TAP], (h, s, y, t, r) => {
    return (
      (h as number) -
      (s as number) -
      Math.hypot(Math.max(0, (y as number) - (r as number)), (h as number) - (t as number))
    )
  })
}

function reaches(site: Site, tap: Tap, window: Opening, sash: Figure): readonly Figure[] {
  const hung = window.hinge === null ? (['left', 'right', 'top'] as const) : [window.hinge]
  return hung.flatMap((hinge) => {
    if (hinge === 'left' || hinge === 'right') return sideways(site, tap, window, hinge) ?? []
    return hinge === 'top' ? (hungAtTop(site, tap, window, sash) ?? []) : []
  })
}

const value = (figure: Figure) => (hasValue(figure) ? figure.value : Number.POSITIVE_INFINITY)

function judged(site: Site, tap: Tap, window: Opening): readonly Found[] {
  const along = site.survey.along(tap.wall, window.left)
  const sash = site.onFace(tap.wall, along, window.sashBottom)
  const upright = sum('mm', practice, [tap.top, CLEAR], [sash])
  const across = [...reaches(site, tap, window, sash)].sort((a, b) => value(b) - value(a))[0]
  if (across === undefined || (hasValue(across) && across.value <= -across.pm)) return []
  if (hasValue(upright) && upright.value <= -upright.pm) return []
  const fact = (name: string) => factId('walls', tap.wall, 'openings', window.id, name)
  const common = {
    subjects: [`${tap.wall}.${window.id}`, tap.sink.id],
    about: [tap.unit, tap.wall],
    where: { wall: tap.wall, along: tap.along, height: tap.top },
  }
  const values = {
    wall: site.name(tap.wall),
    top: tap.top,
    sash,
    out: tap.out,
    reach: across,
    over: upright,
    leaf: window.leaf,
  }
  const open = [
    ...(window.opens === null ? [fact('opens')] : []),
    ...(window.hinge === null ? [fact('hinge')] : []),
    ...(hasValue(sash) ? [] : [fact('sashBottom')]),
    ...(hasValue(tap.sink.tapHeight) ? [] : [factId('appliances', tap.sink.id, 'tapHeight')]),
    ...(hasValue(tap.out) ? [] : [factId('appliances', tap.sink.id, 'tapFromWall')]),
  ]
  if (open.length > 0 || !hasValue(across) || !hasValue(upright)) {
    return [{ ...common, weight: 'ask', said: ['not-read', values], from: open, ask: ['ask.read'] }]
  }
  const isSure = across.value > across.pm && upright.value > upright.pm
  const lower = Math.floor(value(tap.sink.tapHeight) - upright.value - upright.pm)
  return [
    {
      ...common,
      weight: isSure ? 'stop' : 'ask',
      said: [isSure ? 'meets' : 'near', values],
      from: [fact('hinge'), fact('opens')],
      ask: ['ask'],
      waysOut: [
        ...(lower > 0
          ? [
              {
                said: ['low', { lower }],
                cost: 'a part to buy',
                edits: [{ set: factId('appliances', tap.sink.id, 'tapHeight'), to: lower }],
              } as const,
            ]
          : []),
      ],
    },
  ]
}

/** F96: a window that opens in, and the tap under it. */
export const rule: Rule = {
  id: 'sash-meets-tap',
  heading: 'A window that meets the tap',
  catches: ['F96'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the sash turning about its hinges, against the tap, on the plan and in height',
  },
  why: 'The tap is chosen last, for its looks, and then the window never opens again.',
  words: {
    meets:
      'The window on {wall} opens in onto the tap. The tap ends {top:signed} from the line, the sash {sash:signed}; the tap stands {out} out from the wall, {reach} inside the swing of the sash.',
    near: 'The window on {wall} may meet the tap as it opens in. The tap ends {top:signed} from the line, the sash {sash:signed}. Readings this near cannot tell: measure the sash and where the tap is to stand.',
    'not-read':
      'The window on {wall} may meet the tap as it opens. It is not all known which way it opens, how low its sash ends, how high the tap is and how far out it stands.',
    ask: 'Take a tap that folds down or is lower, set it to one side of the swing, or ask a window fitter for a sash that opens out.',
    'ask.read':
      'Open the window and measure its sash; the sheet of the tap gives its height, and the cut-out where it stands.',
    low: 'Take a tap no higher than {lower} mm, or one that folds down to that.',
  },
  check: (site) =>
    tapsOf(site).flatMap((tap) =>
      (site.wall(tap.wall)?.openings ?? [])
        .filter(
          ({ kind, opens, hinge }) =>
            kind === 'window' &&
            (opens === 'in' || opens === null) &&
            hinge !== 'slides' &&
            hinge !== 'bottom',
        )
        .flatMap((window) => judged(site, tap, window)),
    ),
}
