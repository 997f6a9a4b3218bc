/** What a number pad's keys do to the text typed so far. A text, not a number: "34." is on its way to 34.5. */
export type PadKey =
  | '0'
  | '1'
  | '2'
  | '3'
  | '4'
  | '5'
  | '6'
  | '7'
  | '8'
  | '9'
  | '.'
  | 'sign'
  | 'back'
  | 'clear'

export type PadLimits = {
  /** Digits allowed before and after the point. */
  whole: number
  decimals: number
  /** A code rather than a figure: leading zeros are kept. */
  leadingZeros?: true
}

/** The text after a key. A key that would make no number, or too long a one, changes nothing. */
export function press(text: string, key: PadKey, { whole, decimals, leadingZeros }: PadLimits): string {
  if (key === 'clear') return ''
  if (key === 'back') return text.slice(0, -1)
  if (key === 'sign') return text.startsWith('-') ? text.slice(1) : `-${text}`
  if (key === '.') {
    if (decimals === 0 || text.includes('.')) return text
    return /\d$/.test(text) ? `${text}.` : `${text}0.`
  }
  const typed = !leadingZeros && /^(-?)0$/.test(text) ? text.replace('0', key) : text + key
  const [before = '', after = ''] = typed.replace('-', '').split('.')
  return before.length > whole || after.length > decimals ? text : typed
}

/** Whether no further digit fits: every decimal that the pad allows was typed. A whole figure may always go on. */
export const isFull = (text: string, { decimals }: PadLimits): boolean =>
  decimals > 0 && (text.split('.')[1] ?? '').length === decimals

/** The text moved by a step, such as +0.5 or -0.5; from an empty text a step starts at 0. */
export function nudge(text: string, step: number, limits: PadLimits): string {
  const moved = (numberFrom(text) ?? 0) + step
  const next = moved.toFixed(limits.decimals)
  const [before = ''] = next.replace('-', '').split('.')
  return before.length > limits.whole ? text : next
}

/**
 * The number that a typed text means, or null if it is not a number. A point, never a comma, parts decimals; no
 * figure has more than nine digits before it and six after.
 */
export function numberFrom(text: string): number | null {
  const tidy = text.trim().replace('−', '-')
  return /^-?(\d{1,9}(\.\d{0,6})?|\.\d{1,6})$/.test(tidy) ? Number(tidy) : null
}

/** What a typed text means: a figure, nothing, or text that is not a figure and must not count as nothing. */
export type TypedFigure = number | 'unreadable' | null

export const typedFigure = (text: string): TypedFigure =>
  text.trim() === '' ? null : (numberFrom(text) ?? 'unreadable')
