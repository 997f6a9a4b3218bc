/** Why a typed text was refused: what was typed, what is allowed, and what to do about it. */
export type Refusal<Fault extends string> = {
  readonly ok: false
  readonly fault: Fault
  readonly found: string
  readonly allowed: string
  readonly do: string
}

/** What became of a text that a person typed: its value, or a refusal in words. A reader never throws or guesses. */
export type Reading<Value, Fault extends string> =
  | { readonly ok: true; readonly value: Value }
  | Refusal<Fault>

export const taken = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
})

/** A refusal with the words that its room has for this fault. */
export const refused = <Fault extends string>(
  fault: Fault,
  found: string,
  words: { readonly allowed: string; readonly do: string },
): Refusal<Fault> => ({ ok: false, fault, found: shortened(found), allowed: words.allowed, do: words.do })

/** A typed text as it is named back to the person who typed it: never more of it than fits on a line. */
const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 59)}…` : text)
