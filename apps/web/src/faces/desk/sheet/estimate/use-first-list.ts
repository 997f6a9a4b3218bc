import { type RefObject, useRef } from 'react'

/** A form whose button goes with what it did: `toFirst` takes the keyboard to its first list, where the next one is chosen. */
export const useFirstList = (): {
  readonly form: RefObject<HTMLDivElement | null>
  readonly toFirst: () => void
} => {
  const form = useRef<HTMLDivElement>(null)
  return { form, toFirst: () => form.current?.querySelector('select')?.focus() }
}
