import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { LineCover } from '@bayledger/reckoning/money/line-cover'
import type { DiscountLimits } from '@bayledger/reckoning/money/price-book'
import type { Agreement } from '../agreement.ts'
import type { Author } from '../entry.ts'
import type { MoneySides } from '../questions/money.ts'
import type { EarlierOdometer } from '../questions/odometer.ts'
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

/**
 * A second person's agreement. A token is good until `until` (UTC text); what a tablet signed has no end (`null`), because it
 * may have to wait for the network.
 */
export type ProvenSecondPerson = Agreement & { readonly staffId: string; readonly until: string | null }

/** What the shop's stock list knows of a part; null where it does not say. */
export type PartOnStock = {
  readonly frequenciesMHz: readonly number[] | null
  readonly protocols: readonly string[] | null
  readonly stem: 'snap-in' | 'clamp-in' | null
  readonly holeMillimeters: number | null
  readonly ratedPsi: number | null
  readonly madeMonth: string | null
  /** A shelf limit shorter than the trade's, in calendar months. */
  readonly shelfMonths: number | null
  /** Why it is held back from fitting, in words. */
  readonly heldBack: string | null
}

/** Everything outside the order that `admit` needs. The caller loads it, so that `admit` stays pure. */
export type AdmitFacts = {
  /** The server's time, UTC text. */
  readonly now: string
  readonly author: Author
  /** The roles of the shop's active people, by id. */
  readonly staff: ReadonlyMap<string, readonly Role[]>
  /** Second persons whose token or whose tablet's signature holds, by the id of the entry that they agreed to. */
  readonly secondPersons: ReadonlyMap<string, ProvenSecondPerson>
  readonly refusedIds: ReadonlySet<string>
  readonly wrenches: ReadonlyMap<string, WrenchFacts>
  readonly gauges: ReadonlySet<string>
  /** Gauges that are registered and may not be used now: who was out of reach may not have heard of it. */
  readonly gaugesInQuarantine: ReadonlySet<string>
  readonly history: HistoryEvidence | null
  /** What the vehicle's odometer read last at an earlier visit; loaded for entries that hold a reading. */
  readonly earlierOdometer: EarlierOdometer | null
  /** Whether the order after which the vehicle came back is one of its own; `null`: the entry names none. */
  readonly comebackIsOfVehicle: boolean | null
  /** What the warranty terms say of the lines of an estimate on a comeback, by bundle; `null`: it is none. */
  readonly covers: ReadonlyMap<string, readonly LineCover[]> | null
  /** Whether the vehicle of an order that is opened is its customer's; `null`: not asked, or one of the two is not on file. */
  readonly vehicleIsOfCustomer: boolean | null
  /** Whether the shop demands a second person for torque; on by default. */
  readonly secondPersonRequired: boolean
  /** The most that each role may take off a price, as the newest version of the shop's prices has it. */
  readonly discountLimits: DiscountLimits
  /** Sensor IDs, upper-case hexadecimal, that are on record for other vehicles of this shop. */
  readonly idsOnOtherVehicles: ReadonlySet<string>
  /** Parts on the shop's own stock list, by part number. */
  readonly stock: ReadonlyMap<string, PartOnStock>
  /** Digests of the specification sheets that the entry names, as the shop has them on file. */
  readonly sheetsOnFile: ReadonlySet<string>
  /** The money sides that the entry names, whether they came with it or are kept already. */
  readonly money: MoneySides
}
