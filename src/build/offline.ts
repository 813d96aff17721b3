import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'
import { build, type Plugin } from 'vite'
import { MANIFEST, webManifest } from './web-manifest.ts'

const WORKER = 'service-worker.js'

/**
 * What the page may ask for and run: what came with it, and nothing else. No script and no style in the page's own text:
 * React and the 3D view set styles through the style object, which a policy leaves alone. Pictures drawn in a style sheet are
 * addresses of the kind `data:`, pictures opened from this device of the kind `blob:`.
 */
export const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "frame-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/**
 * Makes the built app one that can be installed and opens without a line: its policy, its web manifest with icons, and a
 * service worker that keeps every built file. Not when served for work on it, where scripts stand in the page and change.
 */
export function offline(): Plugin {
  let root = ''
  let folder = ''
  return {
    name: 'offline',
    // Pages built for a test of their own are in another mode.
    apply: (_, { command, mode }) => command === 'build' && mode === 'production',
    configResolved(config) {
      root = config.root
      folder = resolve(root, config.build.outDir)
    },
    transformIndexHtml: {
      order: 'post',
      handler: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
          injectTo: 'head-prepend',
        },
        { tag: 'link', attrs: { rel: 'manifest', href: `./${MANIFEST}` }, injectTo: 'head' },
      ],
    },
    generateBundle() {
      const icon = (name: string): string => {
        const source = readFileSync(join(root, 'assets', name))
        return this.getFileName(this.emitFile({ type: 'asset', name, source }))
      }
      const source = JSON.stringify(webManifest(icon), null, 2)
      this.emitFile({ type: 'asset', fileName: MANIFEST, source })
    },
    writeBundle: { order: 'post', sequential: true, handler: () => writeServiceWorker(root, folder) },
  }
}

/** A built file: its address from the folder of the app, and the hash the browser holds what it fetched against. */
type KeptFile = readonly [address: string, integrity: string]

/** Writes the worker that keeps what is in the folder now. Its cache is named by what is in it. */
export async function writeServiceWorker(root: string, folder: string): Promise<void> {
  const files = filesToKeep(folder)
  const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16)
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    define: { KEPT_FILES: JSON.stringify(files), KEPT_VERSION: JSON.stringify(version) },
    build: {
      target: 'es2023',
      outDir: folder,
      emptyOutDir: false,
      copyPublicDir: false,
      rollupOptions: {
        input: join(root, 'src/app/offline/service-worker.ts'),
        output: { entryFileNames: WORKER, format: 'iife' },
      },
    },
  })
}

/**
 * Everything that was built, but for the worker itself and what only the build reads (names with a dot before them). The page is
 * kept under the address of its folder: a host may send the address with `index.html` on to that one.
 */
function filesToKeep(folder: string): readonly KeptFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .filter((path) => path !== WORKER && !path.split('/').some((part) => part.startsWith('.')))
    .sort()
    .map((path) => {
      const hash = createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('base64')
      return [path === 'index.html' ? './' : path, `sha256-${hash}`]
    })
}
