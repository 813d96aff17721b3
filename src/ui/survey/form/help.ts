import type { FocusEvent } from 'react'

const HELPED = 'data-helped'

/**
 * Opens how the field that is come to is found out, below it, and closes the help of the one before: what was tapped
 * stays under the finger. Where the page cannot be scrolled to keep it there, what stands above it stays open.
 */
export function openHelp({ target, currentTarget: form }: FocusEvent<HTMLElement>): void {
  const field = target.closest('.field')
  if (field === null || field.hasAttribute(HELPED)) return
  const others = [...form.querySelectorAll(`[${HELPED}]`)]
  const top = topOf(target)
  field.setAttribute(HELPED, '')
  const scroller = scrollerOf(form)
  const scrolled = scroller.scrollTop
  for (const other of others) other.removeAttribute(HELPED)
  scroller.scrollTop += topOf(target) - top
  if (Math.abs(topOf(target) - top) < 1) return
  scroller.scrollTop = scrolled
  for (const other of others) {
    const isBelow = (field.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0
    if (!isBelow) other.setAttribute(HELPED, '')
  }
}

const topOf = (element: Element): number => element.getBoundingClientRect().top

/** What scrolls when the form is scrolled. */
function scrollerOf(form: Element): Element {
  for (let at = form.parentElement; at !== null; at = at.parentElement) {
    const { overflowY } = getComputedStyle(at)
    if ((overflowY === 'auto' || overflowY === 'scroll') && at.scrollHeight > at.clientHeight) return at
  }
  return document.scrollingElement ?? document.documentElement
}
