import { type RefObject, useLayoutEffect, useRef } from 'react'

/** The heading of a page that was opened from elsewhere: the next Tab is on this page, and a screen reader begins with it. */
export const useFocusedTitle = (): RefObject<HTMLHeadingElement | null> => {
  const title = useRef<HTMLHeadingElement>(null)
  useLayoutEffect(() => title.current?.focus({ preventScroll: true }), [])
  return title
}
