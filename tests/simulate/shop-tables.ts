import { canonicalText } from '@bayledger/ledger/digests'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { KnownHere } from '../../apps/web/src/ledger/admit-here.ts'
import { idOf } from '../../packages/ledger/test-support/seeded-ids.ts'
import {
  advisor,
  colleague,
  gauge,
  lead,
  locationId,
  technician,
  wrench,
} from '../../packages/ledger/test-support/shop.ts'
import { tarn } from '../../packages/ledger/test-support/tarn.ts'

/** What the shop's registers hold, as the rows of the statements that read them. All of it is invented. */
export const people = { advisor, technician, colleague, lead } as const
export type PersonName = keyof typeof people

export const personNames = Object.keys(people) as PersonName[]

/** The row of the statement `shop-facts`. */
export const shopFactsRow = (version: number, cycles: number) => ({
  version,
  staff: Object.values(people).map(({ id, roles }) => ({ id, roles })),
  instruments: [
    { id: gauge.instrumentId, kind: 'gauge', due_on: null, cycles: 0, quarantined: false, body: {} },
    {
      id: wrench.instrumentId,
      kind: 'wrench',
      due_on: wrench.dueOn,
      cycles,
      quarantined: false,
      body: { rangeLow: wrench.rangeLow, rangeHigh: wrench.rangeHigh, rangeUnit: wrench.rangeUnit },
    },
  ],
  stock: null,
  places: [{ id: locationId, second_person: true }],
})

/** The vehicle's specification sheet, under an id as a database gives it. */
export const sheet: SpecificationSheet = { ...tarn, sheetId: idOf('sheet') }

/** The sheet as it is on file. */
export const sheetBody = JSON.parse(canonicalText(sheet)) as object

/** What a tablet has read of the same registers. */
export const knownAt = (now: number): KnownHere =>
  ({
    now: new Date(now).toISOString(),
    staff: personNames.map((name) => ({ staffId: people[name].id, name, roles: [...people[name].roles] })),
    instruments: shopFactsRow(1, wrench.cyclesBefore).instruments.map(
      ({ id, kind, due_on, cycles, quarantined, body }) => ({
        instrumentId: id,
        kind,
        dueOn: due_on,
        cycles,
        quarantined,
        ...body,
      }),
    ),
    stock: [],
    locations: [],
  }) as unknown as KnownHere
