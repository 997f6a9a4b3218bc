import type { RefusedEntry, SentEntry } from '@bayledger/contract/entries'

/** What an entry says, by path into it: `payload.gauge.pressure.value`. */
export type Says = Readonly<Record<string, string | number | null>>

/** One thing that a person tapped to its end. */
export type Tap = {
  readonly staffId: string
  readonly orderId: string
  readonly kind: string
  readonly says: Says
  /** What it withdraws: the entry of the same person that says this. */
  readonly withdraws?: Says
  /** Whether the screen said that it is done; if not, it may have been taken all the same. */
  readonly isDone: boolean
}

export type Verdict = {
  readonly entries: number
  readonly lost: number
  readonly twice: number
  readonly faults: readonly string[]
}

/** An entry in the ledger, in the desk's tray or on a tablet that was told why it is not taken. */
export type Found = Pick<SentEntry, 'id' | 'orderId' | 'kind' | 'writtenBy' | 'payload'>

/**
 * Holds what was tapped against what became of it: whatever a screen called done is in the ledger or in a tray, once;
 * whatever it did not, at most once. `told`: what a tablet itself shows as refused.
 */
export const judgeTaps = (
  taps: readonly Tap[],
  ledger: readonly SentEntry[],
  tray: readonly RefusedEntry[],
  told: readonly Found[],
): Verdict => {
  const all = [...ledger, ...tray.map((row) => ({ ...row, payload: at(row.body, 'payload') })), ...told]
  const groups = Map.groupBy(taps, ({ isDone: _, ...what }) => JSON.stringify(what))
  let lost = 0
  let twice = 0
  const faults: string[] = []
  for (const [what, same] of groups) {
    const [tap] = same
    if (tap === undefined) continue
    const ids = new Set(idsOf(all, tap))
    const done = same.filter(({ isDone }) => isDone).length
    const missing = Math.max(0, done - ids.size)
    const over = Math.max(0, ids.size - same.length)
    lost += missing
    twice += over
    if (missing > 0) faults.push(`lost ${missing}: ${what}`)
    if (over > 0) faults.push(`twice ${over}: ${what}`)
  }
  return { entries: taps.filter(({ isDone }) => isDone).length, lost, twice, faults }
}

const idsOf = (all: readonly Found[], { staffId, orderId, kind, says, withdraws }: Tap): string[] => {
  const targets =
    withdraws === undefined
      ? null
      : new Set(all.filter((one) => one.orderId === orderId && saysAll(one, withdraws)).map(({ id }) => id))
  return all
    .filter(
      (one) =>
        one.orderId === orderId &&
        one.kind === kind &&
        one.writtenBy.kind === 'staff' &&
        one.writtenBy.staffId === staffId &&
        saysAll(one, says) &&
        (targets === null || targets.has(String(at(one, 'payload.entryId')))),
    )
    .map(({ id }) => id)
}

const saysAll = (entry: Found, says: Says): boolean =>
  Object.entries(says).every(([path, value]) => at(entry, path) === value)

const at = (value: unknown, path: string): unknown =>
  path
    .split('.')
    .reduce<unknown>(
      (inner, key) =>
        typeof inner === 'object' && inner !== null ? (inner as Record<string, unknown>)[key] : undefined,
      value,
    )
