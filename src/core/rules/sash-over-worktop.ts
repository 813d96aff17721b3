import { type Basis, hasValue, known } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Opening } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { passes, type WorktopRun, worktopRuns } from '../placing/worktop-runs'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a sash drops a little with age, and 5 mm are kept under it',
}
const PLAY = known(5, 0, 'mm', [], practice)
/** A sill this little over the worktop leaves open whether a sash over it clears. Common practice. */
const ABOUT = 60

/** Sashes whose bottom rail swings in over the worktop: not one that tilts in at the top, nor one that slides. */
const SWINGS: readonly Opening['hinge'][] = ['left', 'right', 'top', null]

function judged(site: Site, run: WorktopRun, window: Opening): Found | null {
  const [along, top] = [site.survey.along(run.wall, window.left), heightNamed(site.heights, 'worktop-top')]
  const sash = site.onFace(run.wall, along, window.sashBottom)
  const gap = sum('mm', rule.basis, [sash], [top])
  const short = sum('mm', practice, [top, PLAY], [sash])
  const stands = overLimit(short)
  const fact = (name: string) => factId('walls', run.wall, 'openings', window.id, name)
  const common = {
    subjects: [`${run.wall}.${window.id}`],
    about: [run.wall, run.worktop.id],
    where: { wall: run.wall, along, height: sash },
    from: [fact('opens'), fact('hinge')],
  }
  const values = { wall: site.name(run.wall), gap, short, sash, top, play: PLAY }
  if (stands === 'not-known') {
    const sill = sum('mm', practice, [site.onFace(run.wall, along, window.bottom)], [top])
    if (!hasValue(sill) || sill.value >= ABOUT) return null
    const said = window.opens === null ? 'nothing-read' : 'not-read'
    const ask = ['ask.read'] as const
    return { ...common, weight: 'ask', said: [said, values], from: [fact('sashBottom')], ask }
  }
  if (stands === 'within') return null
  if (window.opens === null) return { ...common, weight: 'ask', said: ['way', values], ask: ['ask.way'] }
  const lowest = hasValue(sash) ? Math.floor(sash.value - sash.pm - PLAY.value) : 0
  const wish = { id: 'under-sash', of: 'worktop-top', max: { up: { value: lowest, pm: 0 } } }
  return {
    ...common,
    weight: stands === 'over' ? 'stop' : 'ask',
    said: [stands === 'over' ? 'short' : 'near', values],
    ask: ['ask'],
    waysOut: [{ said: ['lower'], cost: 'minutes', edits: [{ add: 'wishes.heights', item: wish }] }],
  }
}

/** F97: a window that opens in over the worktop, with too little room under its sash. */
export const rule: Rule = {
  id: 'sash-over-worktop',
  heading: 'A window that meets the worktop',
  catches: ['F97'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'from the top of the worktop to the underside of the sash that opens' },
  why: 'A worktop 2 mm over the bottom rail, and the window never opens again.',
  words: {
    short:
      'The window on {wall} cannot open over the worktop: its sash ends {sash:signed} from the line, the top of the worktop is {top:signed}, and {play} are wanted between. That is {short} too little.',
    near: 'The window on {wall} may not open over the worktop: its sash ends {sash:signed} from the line, the top of the worktop is {top:signed}. Readings this near cannot tell: read the sash again.',
    way: 'It is not known which way the window on {wall} opens. Inwards it would meet the worktop: its sash ends {sash:signed} from the line, the top of the worktop is {top:signed}.',
    'not-read':
      'The window on {wall} opens in over the worktop, and the underside of its sash has not been read.',
    'nothing-read':
      'The window on {wall} comes down near the worktop. Whether it opens in, and where its sash ends, is not known.',
    ask: 'Keep the worktop lower, end it at the wall below the window, or ask a window fitter for a sash that opens out.',
    'ask.way': 'Open the window and see.',
    'ask.read': 'Open the window and see. Read the underside of the sash that opens, from the line.',
    lower: 'Set the worktop low enough for the sash.',
  },
  check: (site) =>
    worktopRuns(site.kitchen, site.units).flatMap((run) =>
      (site.wall(run.wall)?.openings ?? [])
        .filter(
          ({ kind, hinge, opens }) =>
            kind === 'window' && SWINGS.includes(hinge) && (opens === 'in' || opens === null),
        )
        .filter(({ left, right }) =>
          passes(run, site.survey.along(run.wall, left), site.survey.along(run.wall, right)),
        )
        .flatMap((window) => judged(site, run, window) ?? []),
    ),
}
