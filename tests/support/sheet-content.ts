import type { FigureSource, SpecificationSheet } from '@bayledger/reckoning/sheet'

/** A sheet as it is sent to be saved: each figure with the source that it was read from, without any person. */
export const sheetContent = <Sheet extends SpecificationSheet>({
  sheetId: _id,
  version: _version,
  sources,
  ...content
}: Sheet) => ({
  ...content,
  sources: {
    placard: sources.placard && readFrom(sources.placard),
    studTorque: sources.studTorque && readFrom(sources.studTorque),
    frequency: sources.frequency && readFrom(sources.frequency),
  },
  verified: {},
})

const readFrom = ({ kind, reference }: FigureSource) => ({ kind, reference })
