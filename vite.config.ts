import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

const DOM_TESTS = ['app', 'ui', 'scene', 'state'].map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`)
const BROWSER_TESTS = ['tests/browser/**/*.test.ts']
/** Tests that put something of their own in place of a module: they want a process that has not loaded it yet. */
const ALONE_TESTS = ['tests/properties/feasibility.test.ts']

export default defineConfig({
  plugins: [react()],
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
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...DOM_TESTS, ...BROWSER_TESTS, ...ALONE_TESTS],
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: { name: 'alone', environment: 'node', include: ALONE_TESTS, testTimeout: 20_000 },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          environment: 'happy-dom',
          maxWorkers: 2,
          include: DOM_TESTS,
          setupFiles: ['tests/support/dom-setup.ts'],
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
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
