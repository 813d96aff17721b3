import type { CDPSession, Page } from 'playwright-core'

/** What one frame cost the page's own thread, ms. */
export interface ScriptFrame {
  /** Computing in scripts: ours, the libraries', and what a call to WebGL does on this thread. */
  readonly scriptMs: number
  /** Begun in a script and not computing: waiting in a call for the renderer, or for a core of the machine. */
  readonly heldUpMs: number
}

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  readonly tdur?: number
  readonly args?: { readonly name?: string }
}

/** Everything by which the browser begins a script on a page's thread, and what it does within or after it for scripts. */
const SCRIPT =
  /^(FunctionCall|FireAnimationFrame|EvaluateScript|v8\.run|TimerFire|EventDispatch|RunMicrotasks|MinorGC|MajorGC|FireIdleCallback)$/

/**
 * What every frame that is drawn during `during` costs in scripts, by the browser's own trace: the outermost scripts from
 * the beginning of one frame to the next. The thread's own clock tells computing from being held up.
 */
export async function scriptFrames(page: Page, during: () => Promise<void>): Promise<readonly ScriptFrame[]> {
  const session = await page.context().newCDPSession(page)
  const events: TraceEvent[] = []
  session.on('Tracing.dataCollected', ({ value }) => {
    events.push(...(value as unknown as TraceEvent[]))
  })
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['devtools.timeline', 'v8', 'disabled-by-default-v8.gc'] },
  })
  await during()
  await ended(session)
  await session.detach()
  return framesOf(events)
}

async function ended(session: CDPSession): Promise<void> {
  const complete = new Promise<void>((resolve) => session.once('Tracing.tracingComplete', () => resolve()))
  await session.send('Tracing.end')
  await complete
}

function framesOf(events: readonly TraceEvent[]): readonly ScriptFrame[] {
  const drawing = events.find((e) => e.name === 'FireAnimationFrame')
  const scripts = events
    .filter((e) => e.pid === drawing?.pid && e.tid === drawing.tid && e.ph === 'X' && SCRIPT.test(e.name))
    .sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0))
  const frames: { scriptMs: number; heldUpMs: number; at: number }[] = []
  let until = Number.NEGATIVE_INFINITY
  let begun = Number.NEGATIVE_INFINITY
  for (const { name, ts, dur = 0, tdur } of scripts) {
    if (tdur === undefined) throw new Error('this browser does not trace the time of a thread')
    // Callbacks of one frame come one after the other, within less than a turn of the screen.
    if (name === 'FireAnimationFrame' && ts - begun > TURN) {
      frames.push({ scriptMs: 0, heldUpMs: 0, at: ts })
      begun = ts
    }
    const frame = frames.at(-1)
    if (ts < until || frame === undefined) continue
    until = ts + dur
    frame.scriptMs += tdur / 1000
    frame.heldUpMs += Math.max(0, dur - tdur) / 1000
  }
  // The last may not have been traced to its end.
  return frames.slice(0, -1)
}
/** Half a turn of the screen, µs. */
const TURN = 8000
