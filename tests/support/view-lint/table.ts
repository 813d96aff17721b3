import { type Checked, RULES, type Rule } from './rules'

/** One plan in one shape of picture, as it was found. */
export interface Sheet {
  readonly scene: string
  readonly size: string
  readonly checked: readonly Checked[]
}

const isPlacingOrFixing = ({ asked }: Checked) => asked.sort !== 'other'

interface Tally {
  readonly passes: number
  readonly asked: number
  readonly notAsked: number
}

function tally(all: readonly Checked[], rule: Rule): Tally {
  const kinds = all.map((c) => c.verdicts[rule].kind)
  const notAsked = kinds.filter((k) => k === 'not-asked').length
  return { passes: kinds.filter((k) => k === 'passes').length, asked: kinds.length - notAsked, notAsked }
}

/** Share of placing and fixing operations for which something that stands was left out of the picture. */
export function cutAwayShare(sheets: readonly Sheet[]): { readonly count: number; readonly of: number } {
  const all = sheets.flatMap((s) => s.checked.filter(isPlacingOrFixing))
  return {
    count: all.filter((c) => c.measured.views.some((v) => v.cutAway.length > 0)).length,
    of: all.length,
  }
}

const MOST_CUT_AWAY = 0.2
const LABELS_APART = 0.98

/** Whether every rule holds as far as it must: all placing and fixing operations, and 98 of 100 by B7. */
export function holds(sheets: readonly Sheet[]): boolean {
  const all = sheets.flatMap((s) => s.checked.filter(isPlacingOrFixing))
  const cut = cutAwayShare(sheets)
  return (
    RULES.every((rule) => {
      const { passes, asked } = tally(all, rule)
      return asked === 0 || passes / asked >= (rule === 'B7' ? LABELS_APART : 1)
    }) && cut.count <= MOST_CUT_AWAY * Math.max(1, cut.of)
  )
}

/** The whole finding in words: by rule, what fails and by how much, and how often something is cut away. */
export function tableOf(sheets: readonly Sheet[]): string {
  const lines: string[] = ['rule  scene          size      placing, fixing    not asked   all operations']
  for (const rule of RULES) {
    for (const { scene, size, checked } of sheets) {
      const own = tally(checked.filter(isPlacingOrFixing), rule)
      const every = tally(checked, rule)
      lines.push(
        `${rule}    ${scene.padEnd(15)}${size.padEnd(10)}${`${own.passes}/${own.asked}`.padEnd(19)}${String(own.notAsked).padEnd(12)}${every.passes}/${every.asked}`,
      )
    }
    const own = tally(
      sheets.flatMap((s) => s.checked.filter(isPlacingOrFixing)),
      rule,
    )
    const every = tally(
      sheets.flatMap((s) => s.checked),
      rule,
    )
    lines.push(
      `${rule}    all                      ${`${own.passes}/${own.asked}`.padEnd(19)}${String(own.notAsked).padEnd(12)}${every.passes}/${every.asked}`,
    )
  }
  for (const { scene, size, checked } of sheets) {
    for (const c of checked) {
      for (const rule of RULES) {
        const v = c.verdicts[rule]
        if (v.kind === 'fails')
          lines.push(
            `${rule} ${c.asked.sort === 'other' ? '(other) ' : ''}${scene} ${size} ${c.asked.id}: ${v.figure}`,
          )
      }
    }
  }
  const cut = cutAwayShare(sheets)
  const views = sheets
    .flatMap((s) => s.checked.filter(isPlacingOrFixing))
    .filter((c) => c.measured.views.length > 1).length
  lines.push(`cut away: ${cut.count} of ${cut.of} placing and fixing; with a second view: ${views}`)
  return lines.join('\n')
}
