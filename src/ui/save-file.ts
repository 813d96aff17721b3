/** Hands a JSON value to the user as a file. */
export function saveFile(name: string, value: unknown): void {
  saveText(name, `${JSON.stringify(value, null, 2)}\n`, 'application/json')
}

/** Hands a text to the user as a file. */
export function saveText(name: string, text: string, type: string): void {
  const url = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}

/** "Mill Lane" → mill-lane, for the name of a file. */
export function fileStem(name: string): string {
  const stem = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  return stem === '' ? 'kitchen' : stem
}
