import { type SpecificationSheet, sourcesRead } from '@bayledger/reckoning/sheet'

/** A stored sheet as it is sent to be saved: where each figure was read, and nobody who entered or verified it. */
export const sheetContent = <Sheet extends SpecificationSheet>({
  sheetId: _id,
  version: _version,
  sources,
  ...content
}: Sheet) => ({
  ...content,
  sources: sourcesRead(sources),
  verified: {},
})
