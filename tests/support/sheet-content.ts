import type { SpecificationSheet } from '@bayledger/reckoning/sheet'

/** A sheet as it is sent to be saved: each figure with the source that it was read from, without any person. */
export const sheetContent = ({
  sheetId: _id,
  version: _version,
  sources,
  ...content
}: SpecificationSheet) => ({
  ...content,
  sources: {
    placard: readFrom(sources.placard),
    studTorque: readFrom(sources.studTorque),
    frequency: sources.frequency && readFrom(sources.frequency),
  },
  verified: {},
})

const readFrom = ({ kind, reference }: SpecificationSheet['sources']['placard']) => ({ kind, reference })
