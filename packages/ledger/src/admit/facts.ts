import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { Agreement } from '../agreement.ts'
import type { Author } from '../entry.ts'
import type { MoneySides } from '../questions/money.ts'
import type { Role } from '../role.ts'

/** A wrench as the shop's register knows it now; figures in `rangeUnit`. */
export type WrenchFacts = {
  readonly dueOn: string
  readonly cycles: number
  readonly quarantined: boolean
  readonly rangeLow: number
  readonly rangeHigh: number
  readonly rangeUnit: 'lbf·ft' | 'lbf·in' | 'N·m'
}

/** A second person's agreement, good until `until` (UTC text). */
export type ProvenSecondPerson = Agreement & { readonly staffId: string; readonly until: string }

/** Everything outside the order that `admit` needs. The caller loads it, so that `admit` stays pure. */
export type AdmitFacts = {
  /** The server's time, UTC text. */
  readonly now: string
  readonly author: Author
  /** The roles of the shop's active people, by id. */
  readonly staff: ReadonlyMap<string, readonly Role[]>
  /** Second persons who typed their PIN for an entry, by the entry's id. */
  readonly secondPersons: ReadonlyMap<string, ProvenSecondPerson>
  readonly refusedIds: ReadonlySet<string>
  readonly wrenches: ReadonlyMap<string, WrenchFacts>
  readonly gauges: ReadonlySet<string>
  readonly history: HistoryEvidence | null
  /** Whether the shop demands a second person for torque; on by default. */
  readonly secondPersonRequired: boolean
  /** Sensor IDs, upper-case hexadecimal, that are on record for other vehicles of this shop. */
  readonly idsOnOtherVehicles: ReadonlySet<string>
  /** Parts that the shop's own register holds back from fitting, by part number, with the reason in words. */
  readonly heldBackParts: ReadonlyMap<string, string>
  /** The money sides that the entry names, whether they came with it or are kept already. */
  readonly money: MoneySides
}
