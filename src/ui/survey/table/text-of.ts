/** Longer than any table that is read, in bytes. */
const LONGEST = 8_000_000

/** The text of a file a spreadsheet has saved: in UTF-8, in UTF-16 with its mark, or as older ones write it. */
export async function textOf(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.slice(0, LONGEST).arrayBuffer())
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
