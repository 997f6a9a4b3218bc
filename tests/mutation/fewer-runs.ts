import * as fastCheck from 'fast-check'

/**
 * fast-check as the diagnosis's property tests see it in the mutation run: fewer examples each, since they run again
 * for every mutant that they reach. `npm test` takes all of them.
 */
const most = 60

/** @public Takes the place of fast-check's own. */
export const assert = ((
  property: fastCheck.IRawProperty<unknown>,
  settings?: fastCheck.Parameters<unknown>,
) =>
  fastCheck.assert(property, {
    ...settings,
    numRuns: Math.min(settings?.numRuns ?? most, most),
  })) as typeof fastCheck.assert

export * from 'fast-check'
/** @public */
export default { ...fastCheck, assert }
