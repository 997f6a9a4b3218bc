import type { CompleteSheet } from '../src/sheet.ts'

/** Where a figure of it was read; a second person verified it. */
export const verifiedSource = {
  kind: 'maker-manual',
  reference: 'manual p. 12',
  enteredBy: 'a',
  verifiedBy: 'b',
} as const

/** An invented vehicle type whose every figure is verified: sensors with clamp-in stems, one label for both axles. */
export const utilitySheet: CompleteSheet = {
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
  sources: { placard: verifiedSource, studTorque: verifiedSource, frequency: verifiedSource },
}

/** The same vehicle with a spare that is a wheel like the others. */
export const withFullSizeSpare = (sheet: CompleteSheet): CompleteSheet => ({
  ...sheet,
  spare: 'full-size',
  tire: { ...sheet.tire, spare: sheet.tire.front },
})
