/**
 * What stands in the way of keeping: `none`, nothing can be kept in this browser; `newer`, it is kept by a newer version
 * of this tool; `full`, there is no room; `broken`, a write failed; `elsewhere`, another tab has changed the open
 * kitchen; `gone`, what was kept has been cleared while it was open.
 */
export type Trouble = 'none' | 'newer' | 'full' | 'broken' | 'elsewhere' | 'gone'

const BY_NAME: Readonly<Record<string, Trouble>> = {
  NoStoreError: 'none',
  VersionError: 'newer',
  QuotaExceededError: 'full',
}

export function troubleOf(error: unknown): Trouble {
  return BY_NAME[(error as { readonly name?: string } | null)?.name ?? ''] ?? 'broken'
}
