/** Where the core makes messages: keys and values as they stand in its source, read with the parser that builds the app. */
import { parseAst } from 'vite'
import { readSource, sourceFiles } from './source-imports'

export interface MessageCall {
  readonly file: string
  /** The key as a pattern; `isLiteral`: it is the key itself. */
  readonly key: string
  readonly isLiteral: boolean
  /** Names of its values; null: they cannot be read off the source. */
  readonly values: readonly string[] | null
}

type Node = { readonly type: string; readonly [key: string]: unknown }

/** Makers of messages: what their key begins with, which arguments go on with it, and which one holds the values. */
const MAKERS: Readonly<Record<string, { prefix: string; key: readonly number[]; values: number }>> = {
  message: { prefix: '', key: [0], values: 1 },
  told: { prefix: 'operation.', key: [0, 1], values: 2 },
  toldFigure: { prefix: 'operation.', key: [0, 1], values: 2 },
  caution: { prefix: 'caution.', key: [1], values: 2 },
  check: { prefix: 'check.', key: [1], values: 2 },
  shown: { prefix: 'label.', key: [2], values: 3 },
  because: { prefix: 'because.', key: [0], values: 1 },
}
/** The makers themselves pass on what they are given. */
const NOT_CALLERS = ['src/core/message.ts', 'src/core/operations/make.ts', 'src/core/order/reason.ts']

export function messageCalls(): readonly MessageCall[] {
  const files = sourceFiles('src/core').filter((file) => !NOT_CALLERS.includes(file))
  return files.flatMap((file) => {
    const found: MessageCall[] = []
    visit(parseAst(readSource(file), { lang: 'ts' }) as unknown as Node, (node) => {
      found.push(...callsOf(node, file))
    })
    return found
  })
}

function callsOf(node: Node, file: string): readonly MessageCall[] {
  if (node.type !== 'CallExpression') return []
  const callee = node['callee']
  const maker = isNode(callee) && typeof callee['name'] === 'string' ? MAKERS[callee['name']] : undefined
  const args = Array.isArray(node['arguments']) ? (node['arguments'] as readonly Node[]) : []
  if (maker === undefined || !Object.hasOwn(MAKERS, (callee as Node)['name'] as string)) return []
  if (args.length <= Math.max(...maker.key)) return []
  const parts = maker.key.map((i) => textsOf(args[i]))
  const keys = parts
    .slice(1)
    .reduce<readonly Text[]>((all, part) => all.flatMap((a) => part.map((b) => joined(a, b))), parts[0] ?? [])
  const values = valuesOf(args[maker.values])
  return keys.map(({ text, isLiteral }) => ({
    file,
    key: isLiteral ? maker.prefix + text : escaped(maker.prefix) + text,
    isLiteral,
    values,
  }))
}

interface Text {
  readonly text: string
  readonly isLiteral: boolean
}
const ANY: Text = { text: '.+', isLiteral: false }

function joined(a: Text, b: Text): Text {
  const isLiteral = a.isLiteral && b.isLiteral
  return isLiteral
    ? { text: `${a.text}.${b.text}`, isLiteral }
    : { text: `${pattern(a)}\\.${pattern(b)}`, isLiteral }
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
const pattern = ({ text, isLiteral }: Text): string => (isLiteral ? escaped(text) : text)

/** Every text an expression may come to, as far as the source says. */
function textsOf(node: Node | undefined): readonly Text[] {
  if (node === undefined) return [ANY]
  if (node.type === 'Literal' && typeof node['value'] === 'string')
    return [{ text: node['value'], isLiteral: true }]
  if (node.type === 'ConditionalExpression') {
    return [...textsOf(node['consequent'] as Node), ...textsOf(node['alternate'] as Node)]
  }
  if (node.type !== 'TemplateLiteral') return [ANY]
  const quasis = node['quasis'] as readonly { readonly value: { readonly cooked: string } }[]
  return [{ text: quasis.map((q) => escaped(q.value.cooked)).join('.+'), isLiteral: false }]
}

function valuesOf(node: Node | undefined): readonly string[] | null {
  if (node === undefined) return []
  if (node.type !== 'ObjectExpression') return null
  const properties = node['properties'] as readonly Node[]
  if (properties.some((p) => p.type !== 'Property')) return null
  return properties.map((p) => String((p['key'] as Node)['name'] ?? (p['key'] as Node)['value']))
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
