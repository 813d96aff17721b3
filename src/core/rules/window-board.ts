import { type Basis, type Figure, hasValue } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Opening } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { passes, type WorktopRun, worktopRuns } from '../placing/worktop-runs'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

/** How near a sill of unknown board comes to the worktop before somebody must measure it. Common practice. */
const ABOUT = 80
const practice: Basis = {
  kind: 'common-practice',
  why: 'window boards are 20 to 50 mm thick, and are seldom level to the worktop by themselves',
}

/** One end of the window board: where it is, its underside, and how much the worktop stands over that. */
interface End {
  readonly side: 'left' | 'right'
  readonly along: Figure
  readonly underside: Figure
  readonly over: Figure
}

function endsOf(site: Site, wall: string, window: Opening): readonly End[] {
  const top = heightNamed(site.heights, 'worktop-top')
  return (['left', 'right'] as const).map((side) => {
    const board = side === 'left' ? window.boardLeft : window.boardRight
    const along = site.survey.along(wall, window[side])
    const underside = site.onFace(wall, along, board)
    return { side, along, underside, over: sum('mm', rule.basis, [top], [underside]) }
  })
}

function judged(site: Site, run: WorktopRun, window: Opening): Found | null {
  const ends = endsOf(site, run.wall, window)
  const along = site.survey.along(run.wall, window.left)
  const sill = site.onFace(run.wall, along, window.bottom)
  const baseTop = heightNamed(site.heights, 'base-top')
  // Over the board: the worktop is laid on the sill and runs on into the reveal.
  const liesOver = overLimit(sum('mm', rule.basis, [sill], [baseTop])) === 'within'
  if (liesOver || (hasValue(window.boardProjection) && window.boardProjection.value === 0)) return null
  // Where the heights leave no room under it, the clash of heights says by how much.
  const own = `window-board:${run.wall}.${window.id}`
  if (site.heights.conflicts.some(({ demands }) => demands.includes(own))) return null
  const name = site.name(run.wall)
  const common = { subjects: [`${run.wall}.${window.id}`], about: [run.wall, run.worktop.id] }
  const unread = ends.filter(({ underside }) => !hasValue(underside))
  const worst = [...ends].sort((a, b) => valueOr(b.over) - valueOr(a.over))[0] as End
  const stands = overLimit(worst.over)
  if (stands === 'over' || stands === 'near') {
    const level = heightNamed(site.heights, 'worktop-top')
    const values = { wall: name, side: worst.side, underside: worst.underside, top: level, over: worst.over }
    const lowest = hasValue(worst.underside) ? Math.floor(worst.underside.value - worst.underside.pm) : 0
    const wish = { id: 'under-window-board', of: 'worktop-top', max: { up: { value: lowest, pm: 0 } } }
    return {
      ...common,
      weight: stands === 'over' ? 'stop' : 'ask',
      said: [stands === 'over' ? 'meets' : 'may-meet', values],
      where: { wall: run.wall, along: worst.along, height: worst.underside },
      figures: ends.map(({ underside }) => underside),
      ask: ['ask'],
      waysOut: [{ said: ['lower'], cost: 'minutes', edits: [{ add: 'wishes.heights', item: wish }] }],
    }
  }
  const gap = sum('mm', practice, [sill], [heightNamed(site.heights, 'worktop-top')])
  const isAbout = !hasValue(gap) || gap.value < ABOUT
  if (unread.length === 0 || !isAbout) return null
  const sides = unread.map(({ side }) => side).join(' and ')
  const from = unread.map(({ side }) =>
    factId('walls', run.wall, 'openings', window.id, side === 'left' ? 'boardLeft' : 'boardRight'),
  )
  return { ...common, weight: 'ask', said: ['not-read', { wall: name, sides }], from, ask: ['ask.read'] }
}

const valueOr = (figure: Figure): number => (hasValue(figure) ? figure.value : Number.NEGATIVE_INFINITY)

/** F95: a worktop that runs neither under the window board nor over it, but into it, at one end or both. */
export const rule: Rule = {
  id: 'window-board',
  heading: 'The window board and the worktop',
  catches: ['F95'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the underside of the window board at both its ends against the top of the worktop',
  },
  why: 'A window board is seldom level: the worktop that goes under it at one end runs into it at the other.',
  words: {
    meets:
      'The worktop on {wall} runs into the window board at its {side} end: the underside of the board is {underside:signed} from the line there, the top of the worktop {top:signed}. It is {over} too high to go under.',
    'may-meet':
      'The worktop on {wall} may run into the window board at its {side} end: the underside of the board is {underside:signed} from the line there, the top of the worktop {top:signed}. Readings this near cannot tell: read it again.',
    'not-read':
      'The worktop on {wall} comes near the window board, and the underside of the board has not been read at its {sides} end.',
    ask: 'Decide whether the worktop goes under the board or over it. Over it, the board comes off first.',
    'ask.read': 'Read the underside of the board at both ends, from the line.',
    lower: 'Set the worktop low enough to go under the board at both ends.',
  },
  check: (site) =>
    worktopRuns(site.kitchen, site.units).flatMap((run) =>
      (site.wall(run.wall)?.openings ?? [])
        .filter(({ kind, left, right }) => {
          const [from, to] = [site.survey.along(run.wall, left), site.survey.along(run.wall, right)]
          return kind === 'window' && passes(run, from, to)
        })
        .flatMap((window) => judged(site, run, window) ?? []),
    ),
}
