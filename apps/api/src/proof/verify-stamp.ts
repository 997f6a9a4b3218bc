import type { Pool } from 'pg'
import { stampOf } from '../stamping/stamp-of.ts'
import type { judgeBy } from '../stamping/stamping.ts'

/** A time-stamp that holds; `isKnown`: its certificate leads to a root that this machine trusts. */
export type StampSeen = { readonly authority: string; readonly at: string; readonly isKnown: boolean }

export type StampJudge = ReturnType<typeof judgeBy>

/** The time-stamp of a report, in its file or beside it; `null` where there is none, `bad` where it does not hold. */
export const verifyStamp = async (
  pool: Pool,
  judge: StampJudge,
  report: { readonly shopId: string; readonly number: string },
  bytes: Uint8Array,
): Promise<StampSeen | 'bad' | null> => {
  const stamp = await stampOf({ pool, stamping: { judge } }, report, bytes)
  if (stamp === null) return null
  return stamp.authority === null || stamp.at === null
    ? 'bad'
    : { authority: stamp.authority, at: stamp.at, isKnown: stamp.verdict === 'good' }
}

/** One line for each authority: how many of its time-stamps hold, and the newest. */
export const stampLines = (stamps: readonly StampSeen[]): string[] =>
  [...Map.groupBy(stamps, ({ authority, isKnown }) => JSON.stringify([authority, isKnown])).values()].map(
    (ofOne) => {
      const newest = ofOne
        .map(({ at }) => at)
        .toSorted()
        .at(-1)
      const [first] = ofOne
      return `time-stamps ${ofOne.length} by ${first?.authority}${first?.isKnown ? '' : ', whose root this machine does not know (STAMP_CA)'}, newest ${newest}`
    },
  )
