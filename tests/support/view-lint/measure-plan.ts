import { rmSync } from 'node:fs'
import type { Browser } from 'playwright-core'
import type { Plan } from '../../../src/core/plan/types'
import { buildGallery } from '../scene-gallery/build-gallery'
import { serveFolder } from '../serve-dist'
import { watchedPage } from '../watched-page'
import { askedOf } from './asked'
import type { Measured } from './measured'
import type { MeasureOptions } from './page/main'
import { type Checked, check } from './rules'

export interface Size {
  readonly width: number
  readonly height: number
}

export interface Measurer {
  /** Judges the operations of a plan at these places, or all, in pictures of one size. */
  readonly judge: (
    plan: Plan,
    size: Size,
    places?: readonly number[],
    options?: MeasureOptions,
  ) => Promise<readonly Checked[]>
  readonly close: () => Promise<void>
}

/** Builds the page of pictures and makes ready to measure them. */
export async function measurer(browser: Browser): Promise<Measurer> {
  const folder = buildGallery('view-lint/page')
  const served = await serveFolder(folder)
  return {
    judge: async (plan, viewport, places, options = {}) => {
      const { page, complaints, close } = await watchedPage(browser, served.origin, { viewport })
      await page.goto(`${served.origin}/`, { waitUntil: 'networkidle' })
      await page.evaluate((p) => {
        window.lintPlan = p
      }, plan)
      const measured: Measured[] = []
      for (const index of places ?? plan.operations.keys()) {
        const one = await page.evaluate(([i, o]) => window.measureView?.(i, o), [index, options] as const)
        if (one === undefined) throw new Error('the page does not measure')
        measured.push(one)
      }
      if (complaints.length > 0) throw new Error(complaints.join('\n'))
      await close()
      return check(
        plan.operations.map((_, i) => askedOf(plan, i)),
        measured,
      )
    },
    close: async () => {
      await served.close()
      rmSync(folder, { recursive: true })
    },
  }
}
