import type { Page } from 'playwright-core'

/** Longer than software drawing ever takes from one frame of a movement to the next. */
const QUIET_MS = 800

/** Waits until the picture stands still: no frame drawn for a while. Gives the number of the last one. */
export async function stillPicture(page: Page): Promise<number> {
  // No function in here has a name: what runs this file may mark names in a way the page does not know.
  return page.evaluate(async (quiet) => {
    let last = ''
    for (let since = performance.now(); last === '' || performance.now() - since < quiet; ) {
      const frame = document.querySelector('.scene')?.getAttribute('data-frame') ?? ''
      if (frame !== last) since = performance.now()
      last = frame
      await new Promise((resolve) => setTimeout(resolve, 50))
    }
    return Number(last)
  }, QUIET_MS)
}
