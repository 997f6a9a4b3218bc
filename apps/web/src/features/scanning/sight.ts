import { type ScanTarget, scanFor } from './scan-target.ts'

/** What the last picture showed that fits; a barcode counts once two pictures in a row agree on it. */
export type Sight = { readonly value: string | null; readonly says: string | null; readonly isSure: boolean }

export const nothingSeen: Sight = { value: null, says: null, isSure: false }

/**
 * What a picture adds: a label often carries several barcodes, and only one of them is wanted. What is not wanted is
 * told until something else comes into view.
 */
export const nextSight = (before: Sight, texts: readonly string[], target: ScanTarget): Sight => {
  const read = texts.map((text) => scanFor(target, text))
  const good = read.find((one) => one.ok)
  if (good) return { value: good.value, says: null, isSure: before.value === good.value }
  const bad = read.find((one) => !one.ok)
  return { value: null, says: bad?.says ?? before.says, isSure: false }
}
