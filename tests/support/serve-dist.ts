import { readFile, stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, normalize } from 'node:path'
import { DIST } from './root'

const MIME: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.glb': 'model/gltf-binary',
  '.txt': 'text/plain; charset=utf-8',
}

export type Served = {
  /** Address without a slash at its end. */
  readonly origin: string
  readonly close: () => Promise<void>
}

/** Serves a folder on a free port of this machine, as a plain static host would. */
export async function serveFolder(folder: string = DIST): Promise<Served> {
  const server = createServer(async (request, response) => {
    const file = await fileFor(folder, request.url ?? '/')
    if (file === undefined) {
      response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found')
      return
    }
    const type = MIME[extname(file)] ?? 'application/octet-stream'
    response.writeHead(200, { 'content-type': type, 'cache-control': 'no-cache' }).end(await readFile(file))
  })
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(0, '127.0.0.1', resolve)
  })
  const { port } = server.address() as AddressInfo
  return {
    // A browser treats "localhost" as a secure context, so service workers and the clipboard work.
    origin: `http://localhost:${port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

async function fileFor(folder: string, url: string): Promise<string | undefined> {
  let path: string
  try {
    path = decodeURIComponent(new URL(url, 'http://localhost').pathname)
  } catch {
    return undefined
  }
  // normalize() on an absolute path can't climb above its root, so nothing outside the folder is served.
  const asked = join(folder, normalize(path))
  const file = asked.endsWith('/') ? join(asked, 'index.html') : asked
  const found = await stat(file).catch(() => undefined)
  return found?.isFile() ? file : undefined
}
