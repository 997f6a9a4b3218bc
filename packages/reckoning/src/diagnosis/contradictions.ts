import type { Contradiction, ContradictionCode, FindingCode } from './diagnosis.ts'
import type { Judgment } from './engine/judge.ts'
import type { Facts } from './facts/facts.ts'
import { storedIsKnown } from './facts/identity.ts'
import { clearsLamp, warns } from './facts/lamp-threshold.ts'
import { frequencyFits, sheetFrequencyDoubtful } from './facts/sensing.ts'
import { thresholds } from './thresholds.ts'

type Voice = {
  readonly code: ContradictionCode
  readonly holds: (facts: Facts, stands: Stands) => boolean
  readonly says: string
  readonly do: string
}

type Stands = {
  readonly has: (code: FindingCode) => boolean
  /** Something found explains the light that was seen. */
  readonly explained: boolean
}

/** What contradicts what. Both sides are kept and said; none is bent to fit. */
export const voices: readonly Voice[] = [
  {
    code: 'light-against-evidence',
    holds: (facts, { has, explained }) =>
      has('malfunction-unexplained') ||
      (facts.behavior === 'flash-then-solid' && !explained && everySensorIsHeard(facts)),
    says: 'The sensors pass every test that we can do standing still; the vehicle says it cannot hear one.',
    do: 'Read codes, unplug added devices, drive 20 minutes and repeat; sell no part on a guess.',
  },
  {
    code: 'light-off-tire-low',
    holds: (facts, { has }) => has('no-warning-given') || isDarkOverLowTire(facts),
    says: 'The warning should have come, or has not had time.',
    do: 'Watch the lamp check at key-on, drive 20 minutes and look again.',
  },
  {
    code: 'light-on-tires-right',
    holds: (facts, { has, explained }) =>
      has('warning-unexplained') || (facts.behavior === 'solid' && !explained && everyTireClears(facts)),
    says: 'The vehicle believes something that we cannot see.',
    do: 'Look at the spare, at the distance between sensors and gauge, and at the stored places.',
  },
  {
    code: 'gauge-against-sensors',
    holds: (_facts, { has }) => has('gauge-suspect'),
    says: 'Our gauge is the odd one out.',
    do: 'Take every reading again with the master gauge.',
  },
  {
    code: 'fault-not-flashed',
    holds: (facts, { has }) =>
      (facts.behavior === 'off' || facts.behavior === 'solid') &&
      facts.lampCheck !== 'dark' &&
      !mayNotHaveJudgedYet(facts) &&
      unheardCodes.some(has),
    says: 'The vehicle should flash for a sensor that it cannot hear, and the light does not flash.',
    do: 'Watch the light for two minutes from key-on, after 20 minutes of driving: a flash that nobody watched for looks like a steady light.',
  },
  {
    code: 'lamp-dark-yet-lit',
    holds: (facts) => facts.lampCheck === 'dark' && facts.behavior !== null && facts.behavior !== 'off',
    says: 'The light was dark at key-on, and yet it is said to come on.',
    do: 'Watch the lamp check again, then the light; keep both as they were seen.',
  },
  {
    code: 'positions-exchanged',
    holds: (facts, { has }) =>
      has('tire-low') &&
      (has('rotated-without-relearn') || has('spare-rotated-without-relearn') || namesAnotherWheel(facts)),
    says: 'The vehicle and the gauge name different tires: the vehicle has the wheels exchanged in memory.',
    do: 'Mend the tire that the gauge names, then relearn the places.',
  },
  {
    code: 'stray-sensors-heard',
    holds: (facts) => (facts.evidence.strayIds ?? []).length > 0,
    says: 'More sensors were heard than this vehicle has wheels: other wheels lie near.',
    do: 'Move the vehicle or the other wheels 5 ft away and read every wheel again.',
  },
  {
    code: 'light-reported-otherwise',
    holds: (facts) => {
      const reported = facts.evidence.light?.reported ?? null
      return reported !== null && facts.behavior !== null && reported !== facts.behavior
    },
    says: 'The customer saw the light behave in another way than we did. Both are kept.',
    do: 'Watch it again after 20 minutes of driving.',
  },
  {
    code: 'sheet-frequency-doubtful',
    holds: (facts) => sheetFrequencyDoubtful(facts),
    says: 'All four sensors that the vehicle knows send on one frequency that is not the one of the sheet: the sheet is wrong, not four sensors.',
    do: 'Verify the frequency of this vehicle type and mend the sheet; replace no sensor.',
  },
  {
    code: 'sensor-older-than-reported',
    holds: (facts) => facts.wheels.some((wheel) => isOlderThanReported(facts, wheel.position)),
    says: 'A sensor is said to have been replaced, and the one in the wheel is much older.',
    do: 'Photograph its date of make: the part on the bill is not the part in the wheel.',
  },
]

export const contradictionsOf = ({ facts, judged, primary }: Judgment): Contradiction[] => {
  const has = (code: FindingCode): boolean => judged.some(({ rule }) => rule.code === code)
  const stands = { has, explained: primary !== null }
  return voices
    .filter((voice) => voice.holds(facts, stands))
    .map((voice) => ({ code: voice.code, says: voice.says, do: voice.do }))
}

/** Findings of a sensor that the vehicle cannot hear, for which it should flash. */
const unheardCodes = [
  'sensor-silent',
  'no-sensor-on-arrival',
  'frequency-wrong',
  'id-not-stored',
  'stored-id-unheard',
  'other-wheel-set',
  'id-duplicated',
  'control-module-blank',
] as const satisfies readonly FindingCode[]

/** Right after work on the wheels the vehicle has not seen the change yet. */
const mayNotHaveJudgedYet = ({ events, place }: Facts): boolean =>
  (place.minutesDriven ?? 0) < thresholds.judgedAfterMinutes &&
  (['serviced-today', 'topped-up-before-arrival', 'sensor-fitted-today'] as const).some((kind) =>
    events.happened(kind),
  )

/** No lamp check failed, no light, and a tire at or under its warning point, whatever else is still to be asked. */
const isDarkOverLowTire = (facts: Facts): boolean =>
  facts.behavior === 'off' &&
  facts.lampCheck !== 'dark' &&
  (facts.system === 'direct' || facts.system === 'indirect') &&
  facts.wheels.some((wheel) => (wheel.road || facts.spareMonitored) && warns(wheel.judged, wheel))

const everyTireClears = (facts: Facts): boolean =>
  facts.system === 'direct' &&
  facts.road.every((wheel) => clearsLamp(wheel.judged, wheel) && clearsLamp(wheel.seen, wheel))

/** Each wheel told an ID that the vehicle holds, wherever it holds it, on the frequency that it listens to. */
const everySensorIsHeard = (facts: Facts): boolean =>
  storedIsKnown(facts) &&
  facts.monitored.length > 0 &&
  facts.monitored.every(
    (wheel) =>
      wheel.sensor.idKey !== null &&
      facts.stored.all.has(wheel.sensor.idKey) &&
      frequencyFits(facts, wheel) === true,
  )

/** The vehicle stores a low-pressure code for a tire that is not low, and none for the one that is. */
const namesAnotherWheel = (facts: Facts): boolean => {
  const named = facts.codes.flatMap((code) => (code.class === 'low-pressure' ? (code.wheel ?? []) : []))
  const isLow = (wheel: Facts['road'][number]) =>
    wheel.judged !== null && wheel.warn !== null && wheel.judged <= wheel.warn
  return (
    named.length > 0 &&
    facts.road.some(isLow) &&
    facts.road.every((wheel) => !(named.includes(wheel.position) && isLow(wheel)))
  )
}

const isOlderThanReported = (facts: Facts, position: Facts['wheels'][number]['position']): boolean => {
  const age = facts.wheel(position)?.given.sensorAgeMonths
  if (typeof age !== 'number') return false
  return (facts.evidence.events ?? []).some(
    (event) =>
      (event.kind === 'sensor-replaced-elsewhere' || event.kind === 'sensor-fitted-today') &&
      event.happened !== false &&
      event.wheel === position &&
      age > thresholds.shelfMonths + (event.daysAgo ?? 0) / 30,
  )
}
