/** The fields of a JSON Schema that hold something themselves, and who is said to read each. */
export interface Leaf {
  readonly path: string
  readonly readBy: readonly string[]
}

interface Node {
  readonly $ref?: string
  readonly description?: string
  readonly properties?: Readonly<Record<string, Node>>
  readonly items?: Node
  readonly anyOf?: readonly Node[]
}

interface Root extends Node {
  readonly $defs?: Readonly<Record<string, Node>>
}

/** Readers named after "Read by:", remarks in brackets left out: "a, b (why); later: c" names a, b and "later: c". */
export function readersIn(description = ''): readonly string[] {
  const [, list] = description.split('Read by: ')
  if (list === undefined) return []
  return list
    .replace(/\.$/, '')
    .split(';')
    .flatMap((part) => (part.trim().startsWith('later:') ? [part] : part.split(/,(?![^(]*\))/)))
    .map((name) => name.replace(/\([^)]*\)/g, '').trim())
}

function resolved(root: Root, node: Node): Node {
  const target = node.$ref === undefined ? undefined : root.$defs?.[node.$ref.replace('#/$defs/', '')]
  return target === undefined ? node : { ...resolved(root, target), ...node }
}

function isTypedFigure(node: Node): boolean {
  return node.properties?.['assumed'] !== undefined
}

/** A whole's readers hold for its parts; a list's readers hold for its words, not for the fields of its things. */
function walk(root: Root, node: Node, path: string, readBy: readonly string[]): readonly Leaf[] {
  const here = resolved(root, node)
  const options = [here, ...(here.anyOf ?? []).map((option) => resolved(root, option))]
  const whole = options.find((option) => option.properties !== undefined && !isTypedFigure(option))
  if (whole?.properties) {
    return Object.entries(whole.properties).flatMap(([key, inner]) => {
      const own = readersIn(resolved(root, inner).description)
      return walk(root, inner, path === '' ? key : `${path}.${key}`, own.length > 0 ? own : readBy)
    })
  }
  const items = options.find((option) => option.items !== undefined)?.items
  const isListOfThings =
    items !== undefined &&
    [resolved(root, items), ...(resolved(root, items).anyOf ?? [])].some((item) => item.properties)
  return isListOfThings && items ? walk(root, items, `${path}[]`, []) : [{ path, readBy }]
}

export function leavesOf(schema: object): readonly Leaf[] {
  return walk(schema as Root, schema as Root, '', [])
}
