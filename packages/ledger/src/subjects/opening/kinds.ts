import { EventEvidence, LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import { Distance, Temperature } from '@bayledger/reckoning/quantity'
import { SpecificationSheet, Surroundings } from '@bayledger/reckoning/sheet'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { odometerReadOnce } from '../../odometer-read-once.ts'
import { bayRoles, deskRoles, roles } from '../../role.ts'
import { MoneyDigest, PersonalDigest } from '../../side-kinds.ts'
import { Id, Instant } from '../../text.ts'
import { AuthorityVersion1, authorityToVersion2 } from './authority-version-1.ts'
import { AuthorityVersion2, authorityToVersion3 } from './authority-version-2.ts'
import { SheetVersion2, SheetVersion3, SheetVersion4 } from './sheet-version-2.ts'

/** Who decides for the vehicle, and with what authority. The name is personal text. */
export const DecidedBy = z.strictObject({
  relation: z.enum(['owner', 'named-person', 'fleet-contact', 'driver']),
  name: PersonalDigest,
})
export type DecidedBy = z.infer<typeof DecidedBy>

/**
 * When the look is charged: always, only where no work is authorized, or never. The customer is told before anybody
 * looks.
 */
export const LookFeeTerms = z.enum(['charged', 'waived-with-work', 'waived'])
export type LookFeeTerms = z.infer<typeof LookFeeTerms>

const opening = {
  locationId: Id,
  customerId: Id,
  vehicleId: Id,
  waitsHere: z.boolean(),
  promisedAt: z.nullable(Instant),
  odometer: z.nullable(Distance),
  comebackOf: z.nullable(Id),
}

export const openingKinds = {
  /** `odometerConfirmed`: it was unlikely, and somebody read it a second time. */
  'order.opened': kind(z.strictObject({ ...opening, odometerConfirmed: z.boolean() }), {
    roles: deskRoles,
    writtenWhere: 'server',
    strikable: 'no',
    earlier: [earlierVersion(z.strictObject(opening), odometerReadOnce)],
  }),
  'complaint.recorded': kind(
    z.strictObject({
      words: PersonalDigest,
      /** As the customer describes it; `null`: not asked or not known. */
      reportedLight: z.nullable(LightBehavior),
      events: z.array(EventEvidence).check(z.maxLength(200)),
    }),
    { roles, sides: ['personal'] },
  ),
  'authority.given': kind(
    z.strictObject({
      to: z.array(z.enum(['look', 'drive'])).check(z.minLength(1)),
      by: DecidedBy,
      channel: z.enum(['in-person', 'telephone', 'link']),
      /** What the look costs, in a side: `LookFee`. */
      money: MoneyDigest,
      lookFee: LookFeeTerms,
    }),
    {
      roles: deskRoles,
      writtenWhere: 'server',
      strikable: 'no',
      sides: ['personal', 'money'],
      earlier: [
        earlierVersion(AuthorityVersion1, authorityToVersion2, ({ lookFeeCents }) => [{ lookFeeCents }]),
        earlierVersion(AuthorityVersion2, authorityToVersion3),
      ],
    },
  ),
  /**
   * The sheet by value, as it is on file. In the first version a figure's `verifiedBy` was only named, not proven; the
   * second knew fewer load classes; up to the third no figure could be missing; up to the
   * fourth only the safety figures had a source, and a label was typed in psi.
   */
  'sheet.chosen': kind(z.strictObject({ sheet: SpecificationSheet }), {
    roles,
    earlier: [
      earlierVersion(SheetVersion2, (payload) => payload),
      earlierVersion(SheetVersion2, (payload) => payload),
      earlierVersion(SheetVersion3, (payload) => payload),
      earlierVersion(SheetVersion4, (payload) => payload),
    ],
  }),
  'surroundings.recorded': kind(
    z.strictObject({
      surroundings: Surroundings,
      minutesDriven: z.nullable(z.number().check(z.gte(0), z.lte(100_000))),
      lastSet: z.nullable(z.strictObject({ temperature: Temperature, altitudeFeet: z.nullable(z.number()) })),
    }),
    { roles: bayRoles },
  ),
  'order.assigned': kind(z.strictObject({ staffId: z.nullable(Id), bay: z.nullable(z.int()) }), { roles }),
  'wait.set': kind(
    z.strictObject({
      reason: z.enum(['cooling-down', 'customer-returns', 'weather', 'part', 'trial-drive']),
      until: Instant,
    }),
    { roles },
  ),
  /** Whether the customer waits, and what was promised, written again. */
  'stay.changed': kind(z.strictObject({ waitsHere: z.boolean(), promisedAt: z.nullable(Instant) }), {
    roles: deskRoles,
    writtenWhere: 'server',
  }),
  /** The odometer as it came, written again or read later, or as it leaves. `confirmed`: an unlikely one was read twice. */
  'odometer.read': kind(
    z.strictObject({ when: z.enum(['arrival', 'leaving']), odometer: Distance, confirmed: z.boolean() }),
    { roles },
  ),
  'order.moved': kind(z.strictObject({ locationId: Id }), {
    roles: deskRoles,
    writtenWhere: 'server',
    strikable: 'no',
  }),
}
