import { spawnSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ROOT } from '../root'

/** Builds the gallery, or another page of pictures, as a user's browser would get the 3D view, into a folder of its own. */
export function buildGallery(of = 'scene-gallery'): string {
  const { NODE_ENV: _, VITEST: __, ...env } = process.env
  const out = mkdtempSync(join(tmpdir(), 'dry-run-gallery-'))
  const vite = join(ROOT, 'node_modules/vite/bin/vite.js')
  const page = join(ROOT, 'tests/support', of)
  const args = [
    'build',
    page,
    '--config',
    join(ROOT, 'vite.config.ts'),
    '--mode',
    'gallery',
    '--outDir',
    out,
    '--emptyOutDir',
  ]
  const run = spawnSync(process.execPath, [vite, ...args], { cwd: ROOT, env, encoding: 'utf8' })
  if (run.status !== 0) throw new Error(`${run.stdout}${run.stderr}`)
  return out
}
