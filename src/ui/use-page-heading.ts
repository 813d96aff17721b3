import { type RefObject, useEffect, useRef } from 'react'

/** For the heading of a page: who comes to it begins at its beginning, with the keyboard, the ear and the eye. */
export function usePageHeading(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    heading.current?.focus({ preventScroll: true })
    const scroller = heading.current?.closest('.place')
    if (scroller) scroller.scrollTop = 0
  }, [])
  return heading
}
