import type { LookFeeTerms } from '@bayledger/ledger/subjects/opening/kinds'
import type { EventEvidence, LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import { type DemoVisitor, vehicleOf } from './customers.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'
import { tamberStreet } from './places.ts'
import { lookFeeCents } from './settings.ts'

type WriteUp = {
  /** A key of the demo's vehicles, or a vehicle of another source. */
  readonly vehicle: string | DemoVisitor
  /** Four times of the demo day: opened, complaint, consent, sheet. */
  readonly at: readonly [string, string, string, string]
  readonly by: DemoPerson
  readonly waitsHere: boolean
  readonly promisedAt: string
  readonly odometerMiles: number
  readonly words: string
  readonly reportedLight: LightBehavior
  readonly events: readonly EventEvidence[]
  readonly consentBy: 'in-person' | 'telephone'
  readonly lookFee: LookFeeTerms
  /** The order that this one comes back from. */
  readonly comebackOf?: string
}

/** The desk's part: who, which vehicle, the complaint in the customer's words, consent to look and to drive. */
export const writeUp = (pen: OrderPen, told: WriteUp): void => {
  const { vehicle, sheet, ownerName } =
    typeof told.vehicle === 'string' ? vehicleOf(told.vehicle) : told.vehicle
  const [opened, complaint, consent, chosen] = told.at
  pen.write(
    'order.opened',
    {
      locationId: tamberStreet.id,
      customerId: vehicle.customerId,
      vehicleId: vehicle.id,
      waitsHere: told.waitsHere,
      promisedAt: pen.calendar.at(told.promisedAt),
      odometer: { value: told.odometerMiles, unit: 'mi' },
      odometerConfirmed: false,
      comebackOf: told.comebackOf ?? null,
    },
    { at: opened, by: told.by },
  )
  pen.write(
    'complaint.recorded',
    { words: pen.personal(told.words), reportedLight: told.reportedLight, events: [...told.events] },
    { at: complaint, by: told.by },
  )
  pen.write(
    'authority.given',
    {
      to: ['look', 'drive'],
      by: { relation: 'owner', name: pen.personal(ownerName) },
      channel: told.consentBy,
      money: pen.money({ lookFeeCents }),
      lookFee: told.lookFee,
    },
    { at: consent, by: told.by },
  )
  pen.write('sheet.chosen', { sheet }, { at: chosen, by: told.by })
}

/** What the desk asks about by name at a write-up; the rest is for the bay to inspect. */
const askedByName = [
  'rotation',
  'tires-changed',
  'seasonal-wheels',
  'used-wheel',
  'aftermarket-wheels',
  'sensor-replaced-elsewhere',
  'battery-disconnected',
  'control-module-work',
  'collision',
  'sealant',
  'driven-low',
  'topped-up-before-arrival',
  'dash-cam-added',
  'charger-added',
  'window-film-added',
] as const satisfies readonly EventEvidence['kind'][]

/** What the customer said did happen, and a No to everything else that was asked. */
export const askedAbout = (...happened: EventEvidence[]): EventEvidence[] => [
  ...happened,
  ...askedByName
    .filter((kind) => !happened.some((event) => event.kind === kind))
    .map((kind) => ({ kind, happened: false })),
]
