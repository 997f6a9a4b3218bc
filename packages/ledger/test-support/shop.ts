import type { AdmitFacts, WrenchFacts } from '../src/admit/facts.ts'
import type { Author } from '../src/entry.ts'
import type { Role } from '../src/role.ts'
import type { SecondPerson } from '../src/second-person.ts'
import type { GaugeUsed } from '../src/subjects/arrival/kinds.ts'
import type { WrenchUsed } from '../src/subjects/torque/kinds.ts'
import { keptMoney } from './money.ts'
import { idOf } from './seeded-ids.ts'

/** The people, instruments and registers of a small shop, all invented. */
export const shopId = idOf('shop')
export const locationId = idOf('location')

export type Person = { readonly id: string; readonly roles: readonly Role[] }

const person = (name: string, role: Role): Person => ({ id: idOf(`staff/${name}`), roles: [role] })

export const advisor = person('advisor', 'advisor')
export const technician = person('technician', 'technician')
export const colleague = person('colleague', 'technician')
export const lead = person('lead', 'lead')
export const manager = person('manager', 'manager')

/** A second person who has typed their PIN, as a payload names them. */
export const agreedBy = ({ id }: Person): SecondPerson => ({
  staffId: id,
  proof: { how: 'pin', token: 'A'.repeat(43) },
})

export const tablet = idOf('device/tablet')
export const otherTablet = idOf('device/other-tablet')
export const linkId = idOf('link')

export const gauge: GaugeUsed = { instrumentId: idOf('gauge'), code: 'GA-1', correctionPsi: 0.2 }

export const wrench: WrenchUsed = {
  instrumentId: idOf('wrench'),
  code: 'W-07',
  dueOn: '2026-06-15',
  cyclesBefore: 1_220,
  rangeLow: 30,
  rangeHigh: 250,
  rangeUnit: 'lbf·ft',
}

/** A wrench as the register has it, in the facts for `admit`. */
export const wrenchFacts = (change: Partial<WrenchFacts> = {}): WrenchFacts => ({
  dueOn: wrench.dueOn,
  cycles: wrench.cyclesBefore,
  quarantined: false,
  rangeLow: wrench.rangeLow,
  rangeHigh: wrench.rangeHigh,
  rangeUnit: wrench.rangeUnit,
  ...change,
})

const everyone = [advisor, technician, colleague, lead, manager]

/** What the shop's registers say at an instant about whoever writes. */
export const factsAt = (now: string, author: Author, change: Partial<AdmitFacts> = {}): AdmitFacts => ({
  now,
  author,
  staff: new Map(everyone.map(({ id, roles }) => [id, roles])),
  secondPersons: new Map(),
  refusedIds: new Set(),
  wrenches: new Map([[wrench.instrumentId, wrenchFacts()]]),
  gauges: new Set([gauge.instrumentId]),
  gaugesInQuarantine: new Set(),
  history: null,
  earlierOdometer: null,
  comebackIsOfVehicle: null,
  covers: null,
  vehicleIsOfCustomer: null,
  secondPersonRequired: true,
  discountLimits: { advisor: 5_000, lead: 5_000, manager: 20_000, owner: 100_000 },
  idsOnOtherVehicles: new Set(),
  stock: new Map(),
  sheetsOnFile: new Set(),
  money: keptMoney,
  ...change,
})
