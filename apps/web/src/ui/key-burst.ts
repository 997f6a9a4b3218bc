/**
 * A scanner that is built like a keyboard types faster than a hand: no two of its keys are further apart, in
 * milliseconds. Hands reach it for two keys or three, never for five in a row (common practice, no source).
 */
export const burstGapMilliseconds = 50
/** So long after its last key a burst is over, in milliseconds. */
export const burstRestMilliseconds = 200
const shortestScan = 5
/** So many keys may reach the page before it is known that no hand types. */
const keysThatPass = 2

/** Keys that followed each other like a scanner's. */
export type Burst = {
  /** Everything since its first key; lines that ended in Enter or Tab are joined. */
  readonly text: string
  /** The end of it that the page has not got. */
  readonly held: string
  /** When its last key came, in milliseconds. */
  readonly at: number
  /** Enter or Tab came: this is a scan. More lines may follow. */
  readonly isScan: boolean
}

/**
 * Where a key goes: into a text; to a control that takes keys and is no text, as a date or a list; or to anything else,
 * where it might press a button.
 */
export type Focus = 'text' | 'control' | 'elsewhere'

export type BurstKey = {
  /** As `KeyboardEvent.key` names it: a sign, Enter or Tab. */
  readonly key: string
  readonly at: number
  readonly focus: Focus
}

/** Whether something on the screen takes a text. */
export type Fits = (text: string) => boolean

export type AfterKey = {
  readonly burst: Burst | null
  /** What the page gets of this key; `held-first`: what was held back, then the key. */
  readonly page: 'key' | 'nothing' | 'held-first'
}

/** What a key is after those before it. A burst that is over has to be settled by `afterRest` first. */
export const afterKey = (before: Burst | null, { key, at, focus }: BurstKey, fits: Fits): AfterKey => {
  const burst = isOver(before, at) ? null : before
  if (key !== 'Enter' && key !== 'Tab') return afterSign(burst, key, at, focus)
  if (burst === null || burst.text.length < shortestScan)
    return { burst: null, page: burst?.held ? 'held-first' : 'key' }
  // In a field that takes no scan, the text stays where it was typed.
  if (focus === 'text' && !burst.isScan && !fits(burst.text)) return { burst: null, page: 'held-first' }
  return { burst: { ...burst, text: `${burst.text}\n`, at, isScan: true }, page: 'nothing' }
}

const afterSign = (burst: Burst | null, key: string, at: number, focus: Focus): AfterKey => {
  if (burst === null) return { burst: { text: key, held: '', at, isScan: false }, page: 'key' }
  const holds =
    burst.isScan || focus === 'elsewhere' || (focus === 'text' && burst.text.length >= keysThatPass)
  const held = holds ? burst.held + key : ''
  return { burst: { ...burst, text: burst.text + key, held, at }, page: holds ? 'nothing' : 'key' }
}

/** Whether no key continues a burst any more. */
export const isOver = (burst: Burst | null, at: number): boolean =>
  burst === null || at - burst.at > burstGapMilliseconds

export type AfterRest =
  | { readonly what: 'scan'; readonly text: string }
  /** A scan that nothing on the screen takes. */
  | { readonly what: 'no-place'; readonly text: string }
  /** A quick hand: the page gets what was held back. */
  | { readonly what: 'typed'; readonly held: string }

/** What a burst was, once it is over. A scanner that sends no Enter is known by a text that fits. */
export const afterRest = ({ text, held, isScan }: Burst, fits: Fits): AfterRest => {
  const whole = text.trim()
  if ((isScan || whole.length >= shortestScan) && fits(whole)) return { what: 'scan', text: whole }
  return isScan ? { what: 'no-place', text: whole } : { what: 'typed', held }
}
