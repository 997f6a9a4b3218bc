import type { Deps } from '../../../deps.ts'
import type { Tries } from '../policy.ts'

type Counted = Pick<Deps, 'pool' | 'clock' | 'shopId'>

/** `taken`, with the wait that follows unless the try is right; or `refused`, because a wait is under way. */
export type Try =
  | { readonly is: 'taken'; readonly waitUntil: Date | null }
  | { readonly is: 'refused'; readonly until: Date }

/** The wrong tries that time has not taken away yet. */
const remaining = `greatest(f.failures
  - floor(greatest(extract(epoch from ($4::timestamptz - f.last_failed_at)), 0) * 1000 / $6)::int, 0)`

/**
 * Takes one try, counted as wrong until `clearTries` or `giveBackTry`. In the database and in one statement, so that neither a
 * restart, a second process nor tries at once give more of them.
 */
export const takeTry = async (
  { pool, clock, shopId }: Counted,
  { who, place, free, forgetMs }: Tries,
  longestWaitMs: number,
): Promise<Try> => {
  const now = clock.now()
  const { rows } = await pool.query<{ blocked_until: Date | null }>({
    name: 'take-try',
    text: `insert into sign_in_failures as f (shop_id, who, place, failures, last_failed_at)
      values ($1, $2, $3, 1, $4)
      on conflict (shop_id, who, place) do update set last_failed_at = $4,
        failures = ${remaining} + 1,
        blocked_until = case when ${remaining} + 1 < $5 then null
          else $4::timestamptz + least(60000 * (2 ^ least(${remaining} + 1 - $5, 20)), $7) * interval '1 millisecond' end
      where f.blocked_until is null or f.blocked_until <= $4
      returning blocked_until`,
    values: [shopId, who, place, now, free, forgetMs, longestWaitMs],
  })
  const [taken] = rows
  if (taken) return { is: 'taken', waitUntil: taken.blocked_until }
  const { rows: found } = await pool.query<{ blocked_until: Date | null }>({
    name: 'find-wait',
    text: 'select blocked_until from sign_in_failures where shop_id = $1 and who = $2 and place = $3',
    values: [shopId, who, place],
  })
  // Cleared between the two statements: the caller tries once more.
  return { is: 'refused', until: found[0]?.blocked_until ?? now }
}

/** The person is in: their wrong tries in this place are forgotten. */
export const clearTries = async ({ pool, shopId }: Counted, { who, place }: Tries): Promise<void> => {
  await pool.query({
    name: 'clear-tries',
    text: 'delete from sign_in_failures where shop_id = $1 and who = $2 and place = $3',
    values: [shopId, who, place],
  })
}

/** One try was right, where others who share the place may have been wrong: only this one is forgotten. */
export const giveBackTry = async ({ pool, shopId }: Counted, { who, place }: Tries): Promise<void> => {
  await pool.query({
    name: 'give-back-try',
    text: `update sign_in_failures set failures = greatest(failures - 1, 0), blocked_until = null
      where shop_id = $1 and who = $2 and place = $3`,
    values: [shopId, who, place],
  })
}
