import type { Evidence, WheelEvidence } from '../../evidence/evidence-schema.ts'
import { gaugeOf } from './air.test-support.ts'
import { type Instruments, lightOf, sentBy } from './instruments.test-support.ts'
import type { Random } from './random.test-support.ts'
import { type Corner, corners, eachCorner, type TrueVehicle } from './vehicle.test-support.ts'

const feetInMeter = 3.28084
const feet = (meters: number): number => Math.round(meters * feetInMeter)

const ids = { LF: '1A2B3C10', RF: '1A2B3C11', RR: '1A2B3C12', LR: '1A2B3C13' } as const

/** What an arrival of this vehicle leaves on record: everything that instruments and people report, and nothing beyond it. */
export const evidenceOf = (vehicle: TrueVehicle, instruments: Instruments, random: Random): Evidence => {
  const { sheet, here, lastSet, dead } = vehicle
  const { gauge, thermometer } = instruments
  const perAxle = <T>(value: T) => ({ front: value, rear: value })
  const isTruck = sheet.loadClass.startsWith('LT')
  const codes = dead
    .filter(() => random.chance(0.7))
    .map((wheel) => ({ class: 'no-signal' as const, wheel, text: 'no signal' }))
  return {
    units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
    vehicle: {
      system: 'direct',
      sensorFrequencyMHz: 433.92,
      pressureDisplay: false,
      spare: 'none',
      spareMonitored: false,
      placard: { ...sheet.label, verified: true },
      loadClass: perAxle(sheet.loadClass),
      ...(isTruck && sheet.casing !== 'unread' ? { casing: perAxle(sheet.casing) } : {}),
      sidewallMaximum: perAxle(sheet.sidewallMaximum),
    },
    light: { lampCheck: 'lights', behavior: lightOf(vehicle, instruments) },
    wheels: eachCorner((corner) => wheelOf(vehicle, instruments, corner)),
    controlModule: { state: 'read', notation: 'hex', ids, codes },
    events: [],
    surroundings: {
      outdoor: thermometer(here.fahrenheit),
      tires: vehicle.told,
      altitude: feet(here.meters),
      lastSet: {
        temperature: lastSet.temperatureKnown ? thermometer(lastSet.fahrenheit) : null,
        altitude: lastSet.altitudeKnown ? feet(lastSet.meters) : null,
      },
    },
    history: {
      earlierReadings: earlierReadings(vehicle, gauge, thermometer),
      idsOnOtherVehicles: [],
      ourWorkOn: [],
    },
  }
}

const wheelOf = (vehicle: TrueVehicle, instruments: Instruments, corner: Corner): WheelEvidence => {
  const fahrenheit = vehicle.airTemperature[corner]
  const seen = {
    gauge: instruments.gauge(gaugeOf(vehicle.air[corner], { fahrenheit, meters: vehicle.here.meters })),
    valve: 'snap-in',
    stem: 'sound',
    sensorAgeMonths: 36,
    tireAgeYears: 2,
    treadDepth32nds: 8,
  } as const
  if (vehicle.dead.includes(corner)) return { ...seen, answer: 'silent', tries: 3 }
  return {
    ...seen,
    answer: 'answered',
    tries: 1,
    id: ids[corner],
    sensorPressure: instruments.sensor[corner](sentBy(vehicle, corner, fahrenheit)),
    sensorTemperature: instruments.thermometer(fahrenheit + vehicle.rimHotter[corner]),
    battery: 'ok',
    frequencyMHz: 433.92,
  }
}

const earlierReadings = (
  { earlier }: TrueVehicle,
  gauge: Instruments['gauge'],
  thermometer: Instruments['thermometer'],
) =>
  earlier === null
    ? []
    : corners.map((wheel) => ({
        wheel,
        pressure: gauge(gaugeOf(earlier.air[wheel], earlier.place)),
        temperature: thermometer(earlier.place.fahrenheit),
        altitude: feet(earlier.place.meters),
        daysAgo: earlier.daysAgo,
      }))
