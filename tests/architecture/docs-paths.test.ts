/** The documents name real files, folders and commands. */
import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import packageJson from '../../package.json'
import { ROOT } from '../support/root'
import { readSource, sourceFiles } from '../support/source-imports'

const DOCUMENTS = ['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(join(ROOT, name)))
const TOP = new Set([
  ...['src', 'tests', 'assets', 'scenes', 'public', '.ci'],
  ...readdirSync(ROOT).filter((name) => name !== 'node_modules' && name !== 'dist'),
])
const FILE_NAMES = new Set(
  [...sourceFiles('src'), ...sourceFiles('tests'), ...TOP].map((path) =>
    path.slice(path.lastIndexOf('/') + 1),
  ),
)

/** What in backticks names nothing: paths from the root, lone source file names, npm scripts. */
function deadNames(text: string): readonly string[] {
  const ticked = [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? '')
  return ticked.filter((words) => !lives(words))
}

function lives(words: string): boolean {
  const script = /^npm run ([\w:-]+)/.exec(words)
  if (script !== null) return Object.hasOwn(packageJson.scripts, script[1] ?? '')
  if (/\s|:\/\//.test(words)) return true
  if (words.includes('/')) {
    // "src/core/rules/<id>.ts" and "tests/*": the part before the placeholder must exist.
    const fixed = /[<*{[]/.test(words) ? words.replace(/[^/]*[<*{[].*$/, '') : words
    const [first = ''] = words.replace(/^\.\//, '').split('/')
    return !TOP.has(first) || existsSync(join(ROOT, fixed))
  }
  return /^[\w.-]+\.(tsx?|md|html)$/.test(words) ? FILE_NAMES.has(words) : true
}

test('there is a README', () => {
  expect(DOCUMENTS).toContain('README.md')
})

test.each(DOCUMENTS)('%s names only what exists', (name) => {
  expect(deadNames(readSource(name))).toEqual([])
})

test('a dead name is seen', () => {
  const text = [
    'Dead: `src/nowhere.ts`, `tests/nowhere/<id>.test.ts`, `npm run nothing`, `no-such-file.ts`.',
    'Alive: `src/main.tsx`, `src/app/`, `tests/<suite>/x`, `npm run check`, `main.tsx`, `and/or`, `a b/c`.',
  ].join('\n')
  expect(deadNames(text)).toEqual([
    'src/nowhere.ts',
    'tests/nowhere/<id>.test.ts',
    'npm run nothing',
    'no-such-file.ts',
  ])
})
