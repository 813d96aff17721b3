import type { TestProject } from 'vitest/node'
import { buildApp } from './build-app'
import { serveFolder } from './serve-dist'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, without a slash at its end: `inject('origin')`. */
    readonly origin: string
  }
}

/** Before the browser tests: build the app, unless the caller says dist is fresh, and serve it. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (process.env['DRY_RUN_DIST_IS_FRESH'] !== 'yes') {
    const { ok, output } = buildApp()
    if (!ok) throw new Error(`The app doesn't build:\n${output}`)
  }
  const served = await serveFolder()
  project.provide('origin', served.origin)
  return served.close
}
