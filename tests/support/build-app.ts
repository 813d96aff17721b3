import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { ROOT } from './root'

/**
 * Builds the app into dist as a user gets it, in a process of its own: inside a test run NODE_ENV says "test", and
 * React would come out as its development build.
 */
export function buildApp(): { readonly ok: boolean; readonly output: string } {
  const { NODE_ENV: _, VITEST: __, ...env } = process.env
  const vite = join(ROOT, 'node_modules/vite/bin/vite.js')
  const run = spawnSync(process.execPath, [vite, 'build'], { cwd: ROOT, env, encoding: 'utf8' })
  return { ok: run.status === 0, output: `${run.stdout}${run.stderr}${run.error ?? ''}`.trim() }
}
