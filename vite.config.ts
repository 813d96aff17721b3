import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'
import { offline } from './src/build/offline.ts'

const DOM_TESTS = ['app', 'ui', 'scene', 'state'].map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`)
const BROWSER_TESTS = ['tests/browser/**/*.test.ts']
/** Tests that put something in place of a module, or of a part of the browser, for good: each in a process of its own. */
const ALONE_TESTS = ['tests/properties/feasibility.test.ts', 'tests/scene/SceneContent.test.tsx']

/** A plan is many small values that are soon done with: with room for them they are cleared away less often. */
const ROOM_FOR_VALUES = ['--max-semi-space-size=128']

export default defineConfig({
  plugins: [react(), offline()],
  // Relative addresses: the built folder works from any path of any static host.
  base: './',
  build: {
    target: 'es2023',
    // Read by tests/support/size-check.ts to tell the first load from what is loaded later.
    manifest: true,
    chunkSizeWarningLimit: 1200,
  },
  worker: { format: 'es' },
  server: { host: 'localhost' },
  preview: { host: 'localhost', strictPort: false },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          // Pure core: files may share a warm process, which runs them in half the time; one for each core of a small machine.
          isolate: false,
          maxWorkers: 2,
          execArgv: ROOM_FOR_VALUES,
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...DOM_TESTS, ...BROWSER_TESTS, ...ALONE_TESTS],
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'alone',
          environment: 'node',
          execArgv: ROOM_FOR_VALUES,
          include: ALONE_TESTS,
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          environment: 'happy-dom',
          // As above: what a test puts in place of something, it takes back.
          isolate: false,
          maxWorkers: 2,
          execArgv: ROOM_FOR_VALUES,
          include: DOM_TESTS,
          exclude: ALONE_TESTS,
          setupFiles: ['tests/support/dom-setup.ts'],
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          isolate: false,
          include: BROWSER_TESTS,
          globalSetup: ['tests/support/browser-setup.ts'],
          // Software rendering is slow and heavy: a browser for each of the two cores of a small machine, and patience.
          maxWorkers: 2,
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
})
