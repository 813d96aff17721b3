import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { DIST, ROOT } from './root'

/**
 * Gzipped script sizes a phone on a poor line can bear, in kB of 1000 bytes. The planner is not among them: it runs in a
 * worker of its own while the page already stands, and sends the sentences of a plan with the plan.
 */
const LIMITS = { firstLoadKb: 110, sceneKb: 290 } as const

/** Where the 3D view is begun: anything under src/scene, and the place in the app that holds it. */
const SCENE = /^src\/(scene\/|app\/Picture\.tsx$)/

type Chunk = {
  readonly file: string
  readonly isEntry?: boolean
  readonly isDynamicEntry?: boolean
  readonly imports?: readonly string[]
  readonly dynamicImports?: readonly string[]
}
export type Manifest = Readonly<Record<string, Chunk>>

export type Sizes = {
  /** All script the page needs before it shows its text. */
  readonly firstLoadKb: number
  /** Script fetched on top of that for the 3D view; undefined: nothing under src/scene is loaded on its own. */
  readonly sceneKb: number | undefined
}

/** Sizes read off a Vite manifest; `gzippedBytes` gives the size of one built file. */
export function sizesOf(manifest: Manifest, gzippedBytes: (file: string) => number): Sizes {
  const keys = Object.keys(manifest)
  const first = closure(
    manifest,
    keys.filter((key) => manifest[key]?.isEntry),
  )
  const sceneEntries = keys.filter((key) => SCENE.test(key) && manifest[key]?.isDynamicEntry)
  const scene = [...closure(manifest, sceneEntries)].filter((key) => !first.has(key))
  const kb = (chunks: Iterable<string>) => {
    const files = new Set(
      [...chunks].map((key) => manifest[key]?.file ?? '').filter((f) => f.endsWith('.js')),
    )
    return [...files].reduce((sum, file) => sum + gzippedBytes(file), 0) / 1000
  }
  return { firstLoadKb: kb(first), sceneKb: sceneEntries.length === 0 ? undefined : kb(scene) }
}

/** Everything that is fetched together with these chunks: their static imports, and theirs. */
function closure(manifest: Manifest, from: readonly string[]): ReadonlySet<string> {
  const seen = new Set<string>()
  const queue = [...from]
  for (let key = queue.pop(); key !== undefined; key = queue.pop()) {
    if (seen.has(key)) continue
    seen.add(key)
    queue.push(...(manifest[key]?.imports ?? []))
  }
  return seen
}

/** What is too big, in words; `hasScene` says whether there is a 3D view that must be loaded on its own. */
export function sizeProblems(sizes: Sizes, hasScene: boolean): readonly string[] {
  const problems: string[] = []
  if (sizes.firstLoadKb === 0) problems.push('The manifest names no script for the first load.')
  if (sizes.firstLoadKb > LIMITS.firstLoadKb) {
    problems.push(`First load is ${sizes.firstLoadKb.toFixed(1)} kB gzipped, limit ${LIMITS.firstLoadKb} kB.`)
  }
  if (sizes.sceneKb === undefined && hasScene) {
    problems.push(
      'src/scene exists but no file of it is loaded by a dynamic import: 3D delays the first text.',
    )
  }
  if (sizes.sceneKb !== undefined && sizes.sceneKb > LIMITS.sceneKb) {
    problems.push(`The 3D view is ${sizes.sceneKb.toFixed(1)} kB gzipped, limit ${LIMITS.sceneKb} kB.`)
  }
  return problems
}

/** Sizes of the app as built in dist. */
export function builtSizes(): Sizes {
  const manifest = JSON.parse(readFileSync(join(DIST, '.vite/manifest.json'), 'utf8')) as Manifest
  return sizesOf(manifest, (file) => gzipSync(readFileSync(join(DIST, file)), { level: 9 }).length)
}

/** Whether the source holds a 3D view. */
export function sceneExists(): boolean {
  return existsSync(join(ROOT, 'src/scene'))
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const sizes = builtSizes()
  const scene =
    sizes.sceneKb === undefined ? 'none yet' : `${sizes.sceneKb.toFixed(1)} of ${LIMITS.sceneKb} kB`
  console.log(
    `First load ${sizes.firstLoadKb.toFixed(1)} of ${LIMITS.firstLoadKb} kB; 3D view ${scene} (gzipped).`,
  )
  const problems = sizeProblems(sizes, sceneExists())
  for (const problem of problems) console.error(problem)
  if (problems.length > 0) process.exitCode = 1
}
