import type { Role } from '@bayledger/ledger/role'

/** What each role is for, beside its name. */
export const roleWords: Readonly<Record<Role, string>> = {
  advisor: 'meets customers, at the desk',
  technician: 'works on vehicles, on a tablet',
  lead: 'both, and judges the bay’s work',
  manager: 'the desk, refunds, prices',
  owner: 'people, places, prices; no work on vehicles by itself',
}

/** What is wrong with what was typed of a person. */
export const personFaults = {
  signInName: 'Type 2 to 31 small letters, digits, dots and hyphens, a letter first.',
  untyped: 'Type the new one in both fields.',
  noProof: 'Prove first that it is you.',
} as const

/** How often something was set since the shop keeps a history. */
export const timesWords = (times: number): string =>
  times === 0 ? 'never' : times === 1 ? 'once' : `${times} times`
