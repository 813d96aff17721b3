import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { RULES } from '../../src/core/rules'
import { LATER, OUT_OF_SCOPE, STEPS, WOVEN } from '../../src/core/trade/answers'
import { FAILURE_MODES, type Mode } from '../../src/core/trade/failure-modes'
import { ROOT } from './root'

/** The table of failure modes in DEVELOPERS.md, made from the rules themselves (`npm run schema` writes it). */

const BEGIN = '<!-- failure modes: written by `npm run schema` -->'
const END = '<!-- end of failure modes -->'
export const DOCUMENT = join(ROOT, 'DEVELOPERS.md')

/** Rules that catch a mode, those in files of their own first. */
export function rulesFor({ id }: Mode): readonly string[] {
  const own = RULES.filter((rule) => rule.catches.includes(id)).map((rule) => rule.id)
  const woven = Object.entries(WOVEN).flatMap(([rule, modes]) => (modes.includes(id) ? [rule] : []))
  return [...own, ...woven]
}

/** How a mode is met, in words; empty when nobody has said. */
export function answerTo(mode: Mode): string {
  const rules = rulesFor(mode)
  if (rules.length > 0) return rules.map((rule) => `\`${rule}\``).join(', ')
  const step = STEPS[mode.id]
  if (step !== undefined) return `asks: ${step}`
  const later = LATER[mode.id]
  if (later !== undefined) return `later: ${later}`
  const out = OUT_OF_SCOPE[mode.id]
  return out === undefined ? '' : `out of scope: ${out}`
}

/** The document with its table made anew. */
export function withTable(document: string): string {
  const rows = FAILURE_MODES.map(
    (mode) => `| ${mode.id} | ${mode.class} | ${mode.what} | ${answerTo(mode)} |`,
  )
  const table = ['| mode | class | what goes wrong | met by |', '|---|---|---|---|', ...rows].join('\n')
  const [head = '', rest = ''] = document.split(BEGIN)
  const [, tail = ''] = rest.split(END)
  return `${head}${BEGIN}\n\n${table}\n\n${END}${tail}`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(DOCUMENT, withTable(readFileSync(DOCUMENT, 'utf8')))
  console.log('Wrote the table of failure modes.')
}
