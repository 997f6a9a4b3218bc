import type { PriceList } from '@bayledger/reckoning/money/price-list'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { RoadPosition } from '@bayledger/reckoning/wheels'
import { advisor, lead } from './shop.ts'

const manual = {
  kind: 'maker-manual',
  reference: "owner's manual, page 312",
  enteredBy: advisor.id,
  verifiedBy: lead.id,
} as const

/** An invented utility vehicle: 35 psi all round, five nuts at 100 lbf·ft, 315 MHz clamp-in, learns while driven. */
export const tarn: SpecificationSheet = {
  sheetId: 'tarn-2016',
  version: 3,
  name: 'Vantrell Tarn utility 2016',
  system: 'direct',
  pressureDisplay: false,
  locatesWheels: false,
  spare: 'temporary',
  spareMonitored: false,
  staggered: false,
  placard: { front: { psi: 35, kPa: 240 }, rear: { psi: 35, kPa: 240 }, spare: { psi: 60, kPa: 420 } },
  warnAtPsi: null,
  tire: {
    front: { size: '235/60R18', loadClass: 'SL', sidewallMaximumPsi: 51 },
    rear: { size: '235/60R18', loadClass: 'SL', sidewallMaximumPsi: 51 },
    spare: null,
  },
  sensor: {
    frequencyMHz: 315,
    protocol: 'P-315',
    stem: 'clamp-in',
    mounting: 'valve',
    wokenBy: 'low-frequency-field',
    stemNutTorque: { value: 62, unit: 'lbf·in' },
    stemScrewTorque: null,
    coreTorque: { value: 4, unit: 'lbf·in' },
  },
  studs: {
    count: 5,
    thread: 'M14×1.5',
    fastener: 'nut',
    seat: 'cone',
    torque: { value: 100, unit: 'lbf·ft' },
    handTurns: 7,
    makersSequence: null,
    lockingFastener: false,
    retorqueMiles: { from: 50, to: 100 },
  },
  relearn: {
    method: 'automatic',
    entry: 'Park 20 minutes with the ignition off, then drive.',
    confirmation: 'The light goes out while driving.',
    exit: 'Key off, key on.',
    timeLimitMinutes: null,
    parkMinutes: 20,
    driveMinutes: 20,
    driveSpeedMph: 20,
    knownTrap: null,
  },
  liftNotes: 'Lift at the four pads behind the wheels.',
  sources: { placard: manual, studTorque: manual, frequency: manual },
}

export const prices: PriceList = {
  version: 1,
  taxRatePercentThousandths: 6_250,
  taxedClasses: ['parts'],
  taxBasis: 'invoice',
  laborCentsPerHour: 13_000,
  hours: { look: 40, relearnFirst: 30, relearnEachMore: 20, reset: 20 },
  lowProfileAspect: 40,
  prices: {
    wheelService: 3_200,
    wheelServiceLowProfile: 3_600,
    repairLabor: 3_800,
    sensorSnapIn: 5_900,
    sensorClampIn: 6_800,
    sensorHighBand: 9_400,
    kitSnapIn: 450,
    kitClampIn: 750,
    repairUnit: 600,
    sensorDisposal: 200,
  },
  supplies: { percentThousandths: 5_000, capCents: 1_200 },
}

/** What each wheel holds and says as it comes; the right rear sensor is silent. */
export const asReceived: Readonly<
  Record<RoadPosition, { readonly psi: number; readonly id: string | null }>
> = {
  LF: { psi: 32.8, id: '0A1B2C10' },
  RF: { psi: 32.6, id: '0A1B2C11' },
  RR: { psi: 32.7, id: null },
  LR: { psi: 32.9, id: '0A1B2C13' },
}

/** What the vehicle still has stored for the silent wheel, and what the new sensor is given. */
export const oldRightRearId = '0A1B2C12'
export const newRightRearId = '0A1B2CF7'
