import type { FigureSource, SheetRelearn, SheetSensor, SheetTire } from '@bayledger/reckoning/sheet'
import { usualRetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { people } from './people.ts'

/** What the demo's sheets have in common. Every figure is of an invented vehicle; a real one's comes from its maker. */

export const tire = (
  size: string,
  loadClass: SheetTire['loadClass'],
  sidewallMaximumPsi: number,
): SheetTire => ({
  size,
  loadClass,
  sidewallMaximumPsi,
})

/** A temporary spare's label figure is also the most that its sidewall allows. */
export const temporarySpare = tire('T125/70D17', 'SL', 60)

export const printed = (psi: number, kPa: number) => ({ psi, kPa })

/** Torque of stem nut, stem screw and valve core as the sensor makers met in the demo print them, in lbf·in. */
export const clampInSensor = (
  frequencyMHz: number,
  protocol: string,
  nutInchPounds: number,
): SheetSensor => ({
  frequencyMHz,
  protocol,
  stem: 'clamp-in',
  mounting: 'valve',
  wokenBy: 'low-frequency-field',
  stemNutTorque: { value: nutInchPounds, unit: 'lbf·in' },
  stemScrewTorque: null,
  coreTorque: { value: 4, unit: 'lbf·in' },
})

export const snapInSensor = (frequencyMHz: number, protocol: string): SheetSensor => ({
  frequencyMHz,
  protocol,
  stem: 'snap-in',
  mounting: 'valve',
  wokenBy: 'low-frequency-field',
  stemNutTorque: null,
  stemScrewTorque: { value: 17, unit: 'lbf·in' },
  coreTorque: { value: 4, unit: 'lbf·in' },
})

/** Advised distance to a torque check, in miles (common practice, no source; a maker's own distance governs). */
export const retorqueMiles = usualRetorqueMiles

const verified = (kind: FigureSource['kind'], reference: string): FigureSource => ({
  kind,
  reference,
  enteredBy: people.ottoline.id,
  verifiedBy: people.greta.id,
})

export const placardPhoto = (vehicle: string): FigureSource =>
  verified('placard-photo', `Door label of a ${vehicle}, photographed here`)

export const makerManual = (reference: string): FigureSource => verified('maker-manual', reference)

export const sensorSheet = (reference: string): FigureSource => verified('sensor-maker-sheet', reference)

/** A figure that one person typed and no one has checked yet: its steps wait for a second person. */
export const unverified = (source: FigureSource): FigureSource => ({ ...source, verifiedBy: null })

export const stationaryRelearn = (
  entry: string,
  timeLimitMinutes: number,
  knownTrap: string | null,
): SheetRelearn => ({
  method: 'stationary',
  entry,
  confirmation: 'The horn chirps once for each wheel as its sensor is triggered, LF, RF, RR, LR.',
  exit: 'The horn chirps twice after the last wheel. Turn the key off, then on, and read the stored IDs.',
  timeLimitMinutes,
  parkMinutes: null,
  driveMinutes: null,
  driveSpeedMph: null,
  knownTrap,
})

export const automaticRelearn = (parkMinutes: number, driveMinutes: number): SheetRelearn => ({
  method: 'automatic',
  entry: 'Set the pressures, then leave the vehicle parked with the key off.',
  confirmation: 'The flashing stops during the drive and the stored IDs match the wheels.',
  exit: 'Key off, key on: the warning light lights and goes out. Read the stored IDs back.',
  timeLimitMinutes: null,
  parkMinutes,
  driveMinutes,
  driveSpeedMph: 30,
  knownTrap:
    'Stop-and-go traffic does not count, and a stack of wheels near the start can be learned instead.',
})

export const connectorRelearn: SheetRelearn = {
  method: 'connector',
  entry: 'Read all four wheels first. Connect, key on, engine off, and send each ID to its own position.',
  confirmation: 'The IDs read back from the vehicle are those sent, position by position.',
  exit: 'Clear the stored codes, key off, key on, and read the IDs once more.',
  timeLimitMinutes: null,
  parkMinutes: null,
  driveMinutes: 5,
  driveSpeedMph: 30,
  knownTrap: 'One digit typed wrong is accepted without a word: read back, do not trust the sending.',
}

export const menuReset: SheetRelearn = {
  method: 'reset',
  entry: 'Key on, engine off. In the vehicle menu open Tires, choose Set pressures as new, and hold OK.',
  confirmation: 'The display says that the tires are being learned.',
  exit: 'Nothing to leave: the vehicle learns by itself over the next 20 to 60 minutes of driving.',
  timeLimitMinutes: null,
  parkMinutes: null,
  driveMinutes: 60,
  driveSpeedMph: 30,
  knownTrap: 'Reset with a tire still low and the low tire becomes the new normal.',
}
