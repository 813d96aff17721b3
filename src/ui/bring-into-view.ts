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

/** The first of these that is in the same place as the control somebody pressed. */
export function besides(control: HTMLElement, selector: string): HTMLElement | null {
  return control.closest(PLACES)?.querySelector<HTMLElement>(selector) ?? null
}
