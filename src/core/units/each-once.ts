/** The same names, each only once: of those alike, the second is called "… (2)". */
export function eachOnce(names: readonly string[]): readonly string[] {
  const taken = new Set<string>()
  return names.map((name) => {
    let own = name
    for (let i = 2; taken.has(own); i++) own = `${name} (${i})`
    taken.add(own)
    return own
  })
}
