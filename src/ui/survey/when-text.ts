/** A moment as it is read: day, month and clock. */
export function whenText(at: string | null): string {
  const time = at === null ? Number.NaN : Date.parse(at)
  if (Number.isNaN(time)) return ''
  const how = { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' } as const
  return new Intl.DateTimeFormat('en-GB', how).format(new Date(time))
}
