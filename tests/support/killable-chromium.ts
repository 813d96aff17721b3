import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { type BrowserContext, chromium } from 'playwright-core'
import { FLAGS, findChromium } from './chromium'

export interface KillableChromium {
  readonly context: BrowserContext
  /** Ends the browser and all its parts in an instant, as a dead battery does; says when, by this machine's clock. */
  readonly kill: () => Promise<number>
}

const PATIENCE = 60_000
const MORE_FLAGS: readonly string[] = [
  '--headless=new',
  '--remote-debugging-port=0',
  '--disable-3d-apis',
  '--disable-breakpad',
  '--no-default-browser-check',
]

/** Starts Chromium on a folder of its own, which outlives it. */
export async function killableChromium(folder: string): Promise<KillableChromium> {
  const path = findChromium()
  if (path === undefined) throw new Error('No Chromium found: install it or set CHROMIUM_PATH.')
  for (const left of ['DevToolsActivePort', 'SingletonLock', 'SingletonCookie', 'SingletonSocket']) {
    rmSync(join(folder, left), { force: true })
  }
  const args = [...FLAGS, ...MORE_FLAGS, `--user-data-dir=${folder}`, 'about:blank']
  // A group of its own: what it starts ends with it.
  const child = spawn(path, args, { detached: true, stdio: 'ignore' })
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()))
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portOf(folder, child)}`)
  const [context] = browser.contexts()
  if (context === undefined) throw new Error('Chromium started without a window.')
  return {
    context,
    kill: async () => {
      const at = Date.now()
      process.kill(-(child.pid as number), 'SIGKILL')
      await ended
      return at
    },
  }
}

/** It writes down where it listens as soon as it does. */
async function portOf(folder: string, child: ChildProcess): Promise<string> {
  for (const until = Date.now() + PATIENCE; Date.now() < until; ) {
    if (child.exitCode !== null) break
    try {
      const [port = ''] = readFileSync(join(folder, 'DevToolsActivePort'), 'utf8').split('\n')
      if (port !== '') return port
    } catch {
      // Not there yet.
    }
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
  throw new Error('Chromium did not start.')
}
