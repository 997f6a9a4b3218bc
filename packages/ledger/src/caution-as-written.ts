import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'

/**
 * A caution as first versions named it, in one text such as `CT-01`, `CT-01 v1` or `CT-01.1`. A text
 * without a version means version 1. A text of another form is kept whole as the number.
 */
export const cautionAsWritten = (text: string): CautionReference => {
  const read = /^(C[TW]-\d\d)(?: v|\.)?([1-9]\d{0,3})?$/.exec(text)
  return read?.[1] ? { number: read[1], version: Number(read[2] ?? 1) } : { number: text, version: 1 }
}
