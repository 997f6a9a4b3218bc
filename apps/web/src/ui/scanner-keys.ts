import { useEffect, useRef } from 'react'
import { afterKey, afterRest, type Burst, burstRestMilliseconds, type Focus, isOver } from './key-burst.ts'

/** A part of the screen that takes scans. */
export type ScanTaker = {
  readonly fits: (text: string) => boolean
  readonly take: (text: string) => void
  /** Nothing on the screen takes it. */
  readonly refuse: (text: string) => void
}

/** The newest stands before the others: a dialog before the form that opened it. */
let takers: readonly ScanTaker[] = []

const takerOf = (text: string): ScanTaker | undefined => takers.findLast(({ fits }) => fits(text))

/** Gives a scan, however it was made, to the newest part of the screen that takes it; else the newest one refuses it. */
const giveScan = (text: string): void => {
  const taker = takerOf(text)
  if (taker) taker.take(text)
  else takers.at(-1)?.refuse(text)
}

/** Lets a part of the screen take scans while it is shown; `behind-all`: only what nothing else takes. */
export const useScanTaker = (taker: ScanTaker, place: 'in-front' | 'behind-all' = 'in-front'): void => {
  const latest = useRef(taker)
  useEffect(() => {
    latest.current = taker
  })
  useEffect(() => {
    const own: ScanTaker = {
      fits: (text) => latest.current.fits(text),
      take: (text) => latest.current.take(text),
      refuse: (text) => latest.current.refuse(text),
    }
    takers = place === 'in-front' ? [...takers, own] : [own, ...takers]
    return () => {
      takers = takers.filter((one) => one !== own)
    }
  }, [place])
}

/** Hears every key of the page first and gathers those of a scanner. Gives back a function that ends it. */
export function listenForScanner(page: Window): () => void {
  let burst: Burst | null = null
  let timer: ReturnType<typeof setTimeout> | undefined
  let field: { readonly element: TextEntry; readonly value: string } | null = null

  const fits = (text: string) => takerOf(text) !== undefined
  const settle = () => {
    clearTimeout(timer)
    if (burst === null) return
    const end = afterRest(burst, fits)
    burst = null
    if (end.what === 'typed') return typeInto(end.held)
    if (field !== null) putBack(field.element, field.value)
    giveScan(end.text)
  }
  const onKey = (event: KeyboardEvent) => {
    const key = signOf(event)
    if (key === null || takers.length === 0) return
    if (isOver(burst, event.timeStamp)) settle()
    const element = textEntryWithFocus()
    // Nobody scans a secret, and it is not held back from where it is typed.
    if (element !== null && element.type === 'password') return settle()
    if (burst === null) field = element === null ? null : { element, value: element.value }
    const held = burst?.held ?? ''
    const { page: gets, burst: next } = afterKey(
      burst,
      { key, at: event.timeStamp, focus: focusOf(element) },
      fits,
    )
    burst = next
    clearTimeout(timer)
    if (next !== null) timer = setTimeout(settle, burstRestMilliseconds)
    if (gets === 'held-first') typeInto(held)
    if (gets !== 'nothing') return
    event.preventDefault()
    event.stopImmediatePropagation()
  }
  /** A scanner moves no focus: whoever leaves a field typed there, and what was held back stays in it. */
  const onLeave = () => {
    if (burst === null || burst.isScan || field === null) return
    clearTimeout(timer)
    addTo(field.element, burst.held)
    burst = null
  }
  page.addEventListener('keydown', onKey, true)
  page.addEventListener('focusout', onLeave, true)
  return () => {
    clearTimeout(timer)
    page.removeEventListener('keydown', onKey, true)
    page.removeEventListener('focusout', onLeave, true)
  }
}

/** A sign, Enter or Tab; null for keys that type nothing, shortcuts, and a key that is held down. */
const signOf = ({ key, ctrlKey, altKey, metaKey, repeat, isComposing }: KeyboardEvent): string | null => {
  // Scanners send the separator of a Data Matrix's fields so.
  if (ctrlKey && key === ']') return '\u001D'
  if (ctrlKey || altKey || metaKey || repeat || isComposing) return null
  return key.length === 1 || key === 'Enter' || key === 'Tab' ? key : null
}

type TextEntry = HTMLInputElement | HTMLTextAreaElement

const textEntryWithFocus = (): TextEntry | null => {
  const element = document.activeElement
  if (element instanceof HTMLTextAreaElement) return element
  const isText =
    element instanceof HTMLInputElement && /^(text|search|tel|url|email|password|number)$/.test(element.type)
  return isText ? element : null
}

const focusOf = (entry: TextEntry | null): Focus => {
  if (entry !== null) return 'text'
  const element = document.activeElement
  const takesKeys =
    element instanceof HTMLSelectElement ||
    (element instanceof HTMLInputElement && !/^(button|checkbox|radio|file|submit)$/.test(element.type))
  return takesKeys ? 'control' : 'elsewhere'
}

/** Types for the hand, so that the field, its undo and its listeners see what they would have seen. */
const typeInto = (text: string): void => {
  if (text !== '') document.execCommand('insertText', false, text)
}

/** Adds what was held back to a field that loses the focus; what listens to it hears of it. */
const addTo = (element: TextEntry, text: string): void => {
  if (text !== '') putBack(element, element.value + text)
}

/** Makes a field what it was before the scan, the way a hand would: what listens to it hears of it. */
const putBack = (element: TextEntry, value: string): void => {
  if (element.value === value || !element.isConnected) return
  const own = element instanceof HTMLTextAreaElement ? HTMLTextAreaElement : HTMLInputElement
  Object.getOwnPropertyDescriptor(own.prototype, 'value')?.set?.call(element, value)
  element.dispatchEvent(new Event('input', { bubbles: true }))
}
