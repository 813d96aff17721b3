/** The places on the page that hold a step; one of them may be kept out of sight while another is shown. */
const PLACES = '.rehearse, .day'

/**
 * Moves what is asked for before the eye and gives it the focus: to the middle of what is seen, clear of what is stuck over
 * the page; what may be taller than that, to its top.
 */
export function bringIntoView(
  element: HTMLElement | null | undefined,
  to: 'middle' | 'top' = 'middle',
): void {
  if (element == null) return
  element.scrollIntoView?.({ block: to === 'top' ? 'start' : 'center' })
  element.focus({ preventScroll: true })
}

/** Of a longer answer so much is brought into sight, as a part of what is seen: what was pressed stays above it. */
const BEGINNING = 0.6

/**
 * Scrolls by as little as it takes until what somebody has opened is in sight, or its beginning where it is long. The focus
 * stays on what was pressed. As the `ref` of what is opened it acts when that is there.
 */
export function openInSight(element: HTMLElement | null): void {
  const scroller = scrollerOf(element)
  if (element === null || scroller === null) return
  const { top, height } = element.getBoundingClientRect()
  const covered = Number.parseFloat(getComputedStyle(scroller).scrollPaddingBottom) || 0
  const end = scroller.getBoundingClientRect().bottom - covered
  const by = top + Math.min(height, BEGINNING * scroller.clientHeight) - end
  const isStill = window.matchMedia('(prefers-reduced-motion: reduce)').matches
  if (by > 0) scroller.scrollBy({ top: by, behavior: isStill ? 'instant' : 'smooth' })
}

/** What scrolls round an element: the slip, or the place where there is too little room for a slip of its own. */
function scrollerOf(element: HTMLElement | null): Element | null {
  const slip = element?.closest('.slip') ?? null
  return slip !== null && slip.scrollHeight > slip.clientHeight ? slip : (element?.closest('.place') ?? null)
}

/** The first of these that is in the same place as the control somebody pressed. */
export function besides(control: HTMLElement, selector: string): HTMLElement | null {
  return control.closest(PLACES)?.querySelector<HTMLElement>(selector) ?? null
}
