/**
 * Who may import whom: one table, and the reason for each row.
 *
 * A row names the layers it may link to, the layers it may know the types of, and its packages ("three" allows
 * "three/x" too). The planner's own narrower doors come after the table.
 */
import { expect, test } from 'vitest'
import { type Import, importsIn, readSource, resolveImport, sourceFiles } from '../support/source-imports'

type Row = {
  readonly links: readonly string[]
  readonly types?: readonly string[]
  readonly packages: readonly string[] | 'any'
  readonly why: string
}

const LAYERS: Readonly<Record<string, Row>> = {
  core: {
    links: ['core'],
    packages: [],
    why: 'the planner is pure: same kitchen, same bytes, in a worker, on the command line and in tests',
  },
  checker: {
    links: ['checker'],
    packages: [],
    why: 'the checker judges plans on its own; sharing code with the planner would share its mistakes, so it knows only the shape of the data',
  },
  cli: {
    links: ['cli', 'core', 'checker'],
    packages: ['node:'],
    why: 'the command line must run without a browser, and without anything the planner could not do alone',
  },
  worker: {
    links: ['worker', 'core'],
    packages: [],
    why: 'the worker only carries messages to the planner and back; it has no screen and no state of the app',
  },
  state: {
    links: ['state', 'core'],
    types: ['worker'],
    packages: ['zustand'],
    why: 'state knows what the worker says but never runs the planner on the thread that draws; it must work without React',
  },
  keep: {
    links: ['keep', 'state', 'core'],
    packages: ['idb', 'zustand'],
    why: 'keeping knows the two documents and where they are put; it works without a screen, so that two tabs can be tried without a browser',
  },
  scene: {
    links: ['scene', 'state', 'core'],
    packages: ['react', 'three', '@react-three/fiber', '@react-three/drei'],
    why: 'the 3D view draws what state gives it; the text must work without it, so ui and scene never meet except in app',
  },
  ui: {
    links: ['ui', 'state', 'core'],
    types: ['keep'],
    packages: ['react', 'papaparse', 'uqr'],
    why: 'the screens must work with 3D switched off, so nothing of the 3D view may be pulled into the first load; tables and matrix codes are read and made only where a screen asks for them',
  },
  app: {
    links: ['app', 'main', 'ui', 'scene', 'keep', 'state', 'worker', 'checker', 'core'],
    packages: 'any',
    why: 'app is the one place that knows everybody in the browser',
  },
  build: {
    links: ['build'],
    packages: ['node:', 'vite'],
    why: 'it runs while the app is built and is no part of it; it reads what was built and knows no code of it',
  },
  main: {
    links: ['app', 'main', 'ui', 'scene', 'keep', 'state', 'worker', 'checker', 'core'],
    packages: 'any',
    why: 'main mounts the app',
  },
}

/** All the checker may know of the planner, as types. */
const CHECKER_TYPES = /^src\/core\/(plan\/types|kitchen\/[a-z-]+|figure|message)\.ts$/

/** Layers that may import style sheets, fonts, pictures and data beside code. */
const WITH_ASSETS: readonly string[] = ['app', 'main', 'ui', 'scene']

/** Each broken arrow of one file, in words; empty when all is well. */
function complaints(file: string, source: string): readonly string[] {
  return importsIn(source, file).flatMap((found) => {
    const complaint = found.specifier.startsWith('.') ? ownFile(file, found) : aPackage(file, found)
    return complaint === undefined ? [] : [`${file} imports ${found.specifier}: ${complaint}`]
  })
}

function ownFile(file: string, found: Import): string | undefined {
  const layer = layerOf(file)
  const row = LAYERS[layer]
  if (row === undefined) return `"${layer}" is no layer of the table`
  const target = resolveImport(file, found.specifier)
  if (target === undefined) return 'there is no such file'
  if (!/\.tsx?$/.test(target)) return WITH_ASSETS.includes(layer) ? undefined : `only code here; ${row.why}`
  if (layer === 'app' && target.startsWith('scenes/')) return undefined
  if (!target.startsWith('src/'))
    return 'nothing under src may lean on files outside it, but the app on its demo kitchens'
  const narrower = ruleOnRule(file, target)
  if (narrower !== undefined) return narrower
  const to = layerOf(target)
  if (row.links.includes(to)) return undefined
  if (to === 'worker' && found.kind === 'address' && row.types?.includes('worker')) return undefined
  if (found.kind === 'type' && row.types?.includes(to)) return undefined
  if (layer === 'checker' && found.kind === 'type' && CHECKER_TYPES.test(target)) return undefined
  return `${layer} may not lean on ${to}${found.kind === 'type' ? '' : ' (by value)'}; ${row.why}`
}

/** Rules stand alone: only the registry knows them all, and what they share is in rule.ts. */
function ruleOnRule(file: string, target: string): string | undefined {
  const isRule = file.startsWith('src/core/rules/') && !/\/(index|rule)\.ts$/.test(file)
  const allowed = !target.startsWith('src/core/rules/') || target === 'src/core/rules/rule.ts'
  if (!isRule || allowed) return undefined
  return 'a rule never imports another rule, so that each can be read, tested and dropped alone'
}

function aPackage(file: string, { specifier }: Import): string | undefined {
  const layer = layerOf(file)
  const row = LAYERS[layer]
  if (row === undefined) return `"${layer}" is no layer of the table`
  if (named('zod', specifier) && layer === 'core') {
    return /^src\/core\/(kitchen|daylog)\//.test(file)
      ? undefined
      : 'zod is only the door for kitchen files and day logs, in src/core/kitchen and src/core/daylog'
  }
  if (named('@noble/hashes', specifier) && layer === 'core') {
    return file === 'src/core/hash.ts' ? undefined : 'there is one canonical hash, in src/core/hash.ts'
  }
  if (row.packages === 'any')
    return specifier.startsWith('node:') ? `no Node in the browser; ${row.why}` : undefined
  return row.packages.some((name) => named(name, specifier))
    ? undefined
    : `${layer} may not use it; ${row.why}`
}

function named(name: string, specifier: string): boolean {
  return name.endsWith(':')
    ? specifier.startsWith(name)
    : specifier === name || specifier.startsWith(`${name}/`)
}

/** First folder under src; for src/main.tsx its own name. */
function layerOf(file: string): string {
  const [, first = ''] = file.split('/')
  return first.replace(/\.tsx?$/, '')
}

test('every import under src goes along an arrow of the table', () => {
  const files = sourceFiles('src').filter((file) => !file.endsWith('.d.ts'))
  const edges = files.flatMap((file) => importsIn(readSource(file), file))
  expect(files.length).toBeGreaterThan(0)
  expect(edges.length).toBeGreaterThan(0)
  expect(files.flatMap((file) => complaints(file, readSource(file)))).toEqual([])
})

test('no test imports another test', () => {
  const files = sourceFiles('tests')
  expect(files.length).toBeGreaterThan(0)
  const bad = files.flatMap((file) =>
    importsIn(readSource(file), file)
      .filter(({ specifier }) => /\.test$|\.test\.tsx?$/.test(specifier))
      .map(({ specifier }) => `${file} imports ${specifier}: shared things live in tests/support`),
  )
  expect(bad).toEqual([])
})

test('the parser sees every way to import', () => {
  const source = `
    import { a } from 'one'
    import type { B } from 'two'
    import { type C } from 'three'
    import 'four'
    export * from 'five'
    export type { D } from 'six'
    const e: import('seven').E = await import('eight')
    new Worker(new URL('./nine.ts', import.meta.url))
    const f = <div title="ten" />
  `
  expect(importsIn(source, 'planted.tsx').map(({ specifier, kind }) => `${specifier} ${kind}`)).toEqual([
    'one link',
    'two type',
    'three link',
    'four link',
    'five link',
    'six type',
    'seven type',
    'eight link',
    './nine.ts address',
  ])
})

test.each([
  ['core on React', 'src/core/planted.ts', "import { useState } from 'react'"],
  ['core on Node', 'src/core/planted.ts', "import { readFileSync } from 'node:fs'"],
  ['core on the app, by a dynamic import', 'src/core/planted.ts', "void import('../app/App')"],
  ['core on the app, by a type', 'src/core/planted.ts', "type A = import('../app/App').App"],
  ['zod outside its folder', 'src/core/plan/planted.ts', "import { z } from 'zod'"],
  ['a hash outside hash.ts', 'src/core/plan/planted.ts', "import { sha256 } from '@noble/hashes/sha2.js'"],
  ['the worker on the app', 'src/worker/planted.ts', "export * from '../app/App'"],
  ['the 3D view on the app', 'src/scene/planted.tsx', "import { App } from '../app/App'"],
  ['a screen on three', 'src/ui/planted.tsx', "import { Mesh } from 'three'"],
  [
    'a screen on the store of the browser',
    'src/ui/planted.ts',
    "import { idbKeeper } from '../keep/idb-keeper'",
  ],
  ['the keeping on a screen', 'src/keep/planted.ts', "import { saveFile } from '../ui/save-file'"],
  ['state on React', 'src/state/planted.ts', "import { useMemo } from 'react'"],
  ['the command line on a package', 'src/cli/planted.ts', "import { z } from 'zod'"],
  ['the app on Node', 'src/app/planted.ts', "import 'node:fs'"],
  ['an unknown layer', 'src/utils/planted.ts', "import 'react'"],
  ['a file that is not there', 'src/app/planted.ts', "import './nowhere'"],
])('a planted wrong arrow is caught: %s', (_, file, source) => {
  expect(complaints(file, source)).toHaveLength(1)
})

test.each([
  [
    'three in the 3D view',
    'src/scene/planted.tsx',
    "import { Mesh } from 'three'; import 'three/addons/x.js'",
  ],
  ['Node on the command line', 'src/cli/planted.ts', "import { readFileSync } from 'node:fs'"],
  ['zod at its door', 'src/core/kitchen/planted.ts', "import { z } from 'zod'"],
  ['the hash', 'src/core/hash.ts', "import { sha256 } from '@noble/hashes/sha2.js'"],
  ['the app on its own', 'src/app/planted.ts', "import { App } from './App'"],
])('a right arrow passes: %s', (_, file, source) => {
  expect(complaints(file, source)).toEqual([])
})

test('rules stand alone, and the checker shares no code with the planner', () => {
  expect(ruleOnRule('src/core/rules/a.ts', 'src/core/rules/b.ts')).toBeDefined()
  expect(ruleOnRule('src/core/rules/checks/a.ts', 'src/core/rules/checks/b.ts')).toBeDefined()
  expect(ruleOnRule('src/core/rules/a.ts', 'src/core/rules/rule.ts')).toBeUndefined()
  expect(ruleOnRule('src/core/rules/index.ts', 'src/core/rules/b.ts')).toBeUndefined()

  const figure = (kind: string) =>
    complaints('src/checker/planted.ts', `import ${kind} { Figure } from '../core/figure'`)
  expect(figure('')).toHaveLength(1)
  expect(figure('type')).toEqual([])
  expect(complaints('src/checker/planted.ts', "import type { Result } from '../core/result'")).toHaveLength(1)
})
