const fieldOf = (kitchen: unknown, key: string): unknown =>
  typeof kitchen === 'object' && kitchen !== null && Object.hasOwn(kitchen, key)
    ? (kitchen as Readonly<Record<string, unknown>>)[key]
    : undefined

/** The name that stands in a kitchen file, however little else of it can be read. */
export function kitchenName(kitchen: unknown): string {
  const name = fieldOf(kitchen, 'name')
  return typeof name === 'string' && name.trim() !== '' ? name.trim() : 'A kitchen without a name'
}

/** Invented, for practice. */
export const isPractice = (kitchen: unknown): boolean => fieldOf(kitchen, 'demo') === true

/** The kitchen under another name; what is no kitchen file is left as it is. */
export const renamed = (kitchen: unknown, name: string): unknown =>
  typeof kitchen === 'object' && kitchen !== null ? { ...kitchen, name } : kitchen

/** The name, or the name with the first number that nothing else has. */
export function freeName(name: string, taken: readonly string[]): string {
  let free = name
  for (let number = 2; taken.includes(free); number++) free = `${name} ${number}`
  return free
}
