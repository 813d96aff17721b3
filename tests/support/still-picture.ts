import type { Page } from 'playwright-core'

/** Longer than software drawing ever takes from one frame of a movement to the next. */
const QUIET_MS = 800

/** Waits until the picture stands still: no frame drawn for a while. Gives the number of the last one. */
export async function stillPicture(page: Page): Promise<number> {
  return page.evaluate(async (quiet) => {
    const frame = () => document.querySelector('.scene')?.getAttribute('data-frame') ?? ''
    let last = frame()
    for (let since = performance.now(); last === '' || performance.now() - since < quiet; ) {
      await new Promise((resolve) => setTimeout(resolve, 50))
      if (frame() === last) continue
      last = frame()
      since = performance.now()
    }
    return Number(last)
  }, QUIET_MS)
}
