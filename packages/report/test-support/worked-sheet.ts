import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { advisor, lead } from './worked-people.ts'

const verified = {
  kind: 'maker-manual' as const,
  reference: 'owner’s manual page 312',
  enteredBy: advisor,
  verifiedBy: lead,
}

const tire = { size: '235/60R18 103H', loadClass: 'SL' as const, sidewallMaximumPsi: 51 }

/** A vehicle type of the demo shop, every safety figure verified. */
export const workedSheet: SpecificationSheet = {
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
  tire: { front: tire, rear: tire, spare: { ...tire, size: 'T155/90D17', sidewallMaximumPsi: 60 } },
  sensor: {
    frequencyMHz: 315,
    protocol: 'tarn-b',
    stem: 'clamp-in',
    mounting: 'valve',
    wokenBy: 'low-frequency-field',
    stemNutTorque: { value: 62, unit: 'lbf·in' },
    stemScrewTorque: null,
    coreTorque: { value: 4, unit: 'lbf·in' },
  },
  studs: {
    count: 5,
    thread: 'M14x1.5',
    fastener: 'nut',
    seat: 'cone',
    torque: { value: 100, unit: 'lbf·ft' },
    handTurns: 7,
    makersSequence: null,
    lockingFastener: false,
    retorqueMiles: { from: 50, to: 100 },
  },
  relearn: null,
  liftNotes: '',
  sources: { placard: verified, studTorque: verified, frequency: verified },
}
