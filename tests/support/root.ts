import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the repository, with a slash at its end. */
export const ROOT = fileURLToPath(new URL('../../', import.meta.url))

/** The built app. */
export const DIST = join(ROOT, 'dist')
