/** What every source file imports, read with the parser that builds the app. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { parseAst } from 'vite'
import { ROOT } from './root'

/** A `link` runs the other file's code, a `type` leaves nothing in the build, an `address` only names it (workers, assets). */
export type ImportKind = 'link' | 'type' | 'address'

export type Import = { readonly specifier: string; readonly kind: ImportKind }

type Node = { readonly type: string; readonly [key: string]: unknown }

/** All imports of one file: statements, re-exports, `import('x')` as call or type, `new URL('x', import.meta.url)`. */
export function importsIn(source: string, file: string): readonly Import[] {
  const lang = file.endsWith('.tsx') ? 'tsx' : 'ts'
  const found: Import[] = []
  visit(parseAst(source, { lang }) as unknown as Node, (node) => {
    const from = importOf(node)
    if (from !== undefined) found.push(from)
  })
  return found
}

function importOf(node: Node): Import | undefined {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'ExportNamedDeclaration':
      return importTo(node['source'], isTypeOnly(node) ? 'type' : 'link')
    case 'TSImportType':
      return importTo(node['source'], 'type')
    case 'ImportExpression':
      return importTo(node['source'], 'link')
    case 'NewExpression':
      return addressOf(node)
    default:
      return undefined
  }
}

function importTo(source: unknown, kind: ImportKind): Import | undefined {
  const specifier = isNode(source) ? source['value'] : undefined
  return typeof specifier === 'string' ? { specifier, kind } : undefined
}

/** `import { type A }` is not type-only: with verbatimModuleSyntax an empty import of the file stays in the build. */
function isTypeOnly(node: Node): boolean {
  return node['importKind'] === 'type' || node['exportKind'] === 'type'
}

function addressOf(node: Node): Import | undefined {
  const callee = node['callee']
  const args = Array.isArray(node['arguments']) ? node['arguments'] : []
  const isUrl = isNode(callee) && callee['name'] === 'URL' && args.length === 2
  return isUrl ? importTo(args[0], 'address') : undefined
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string'
}

function visit(node: Node, see: (node: Node) => void): void {
  see(node)
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) visit(child, see)
  }
}

/** TypeScript files under a folder of the repository, as paths from its root with forward slashes; none: empty. */
export function sourceFiles(folder: string): readonly string[] {
  if (!existsSync(join(ROOT, folder))) return []
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((path) => /\.tsx?$/.test(path))
    .sort()
}

export function readSource(file: string): string {
  return readFileSync(join(ROOT, file), 'utf8')
}

/** File a relative specifier means, from the root of the repository; undefined: there is no such file. */
export function resolveImport(file: string, specifier: string): string | undefined {
  const bare = specifier.replace(/\?.*$/, '')
  const path = join(ROOT, dirname(file), bare)
  const tries = ['', '.ts', '.tsx', '/index.ts', '/index.tsx'].map((end) => path + end)
  const hit = tries.find((candidate) => /\.[a-z0-9]+$/i.test(candidate) && existsSync(candidate))
  return hit === undefined ? undefined : relative(ROOT, hit).replaceAll('\\', '/')
}
