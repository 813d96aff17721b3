import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'

/** Software WebGL on machines without a GPU, and no talk with the network beyond what the page asks for. */
export const FLAGS: readonly string[] = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  // Only the picture needs WebGL: the page round it is put together faster without.
  '--disable-gpu-compositing',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
]

const USUAL_PLACES: readonly string[] = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
]

/** The first Chromium of this machine that starts; CHROMIUM_PATH goes before the usual places. */
export function findChromium(): string | undefined {
  return [process.env['CHROMIUM_PATH'], ...USUAL_PLACES, chromium.executablePath()].find(
    (path) => path !== undefined && path !== '' && existsSync(path) && starts(path),
  )
}

/** Debian-like systems may hold a stub that only prints how to install the real thing, so ask for the version. */
function starts(path: string): boolean {
  const run = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 30_000 })
  return run.status === 0 && /\d+\.\d+\.\d+/.test(run.stdout)
}

/** Starts headless Chromium; further flags are for single tests that need them. */
export async function launchChromium(moreFlags: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium()
  if (executablePath === undefined) {
    throw new Error('No Chromium found: install it (Debian: apt-get install chromium) or set CHROMIUM_PATH.')
  }
  return chromium.launch({ executablePath, headless: true, args: [...FLAGS, ...moreFlags] })
}
