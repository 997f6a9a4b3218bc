import type { Contradiction, ContradictionCode, FindingCode } from './diagnosis.ts'
import type { Judgment } from './engine/judge.ts'
import type { Facts } from './facts/facts.ts'
import { sheetFrequencyDoubtful } from './facts/sensing.ts'
import { thresholds } from './thresholds.ts'

type Voice = {
  readonly code: ContradictionCode
  readonly holds: (facts: Facts, has: (code: FindingCode) => boolean) => boolean
  readonly says: string
  readonly do: string
}

/** What contradicts what. Both sides are kept and said; none is bent to fit. */
export const voices: readonly Voice[] = [
  {
    code: 'light-against-evidence',
    holds: (_facts, has) => has('malfunction-unexplained'),
    says: 'The sensors pass every test that we can do standing still; the vehicle says it cannot hear one.',
    do: 'Read codes, unplug added devices, drive 20 minutes and repeat; sell no part on a guess.',
  },
  {
    code: 'light-off-tire-low',
    holds: (_facts, has) => has('no-warning-given'),
    says: 'The warning should have come, or has not had time.',
    do: 'Watch the lamp check at key-on, drive 20 minutes and look again.',
  },
  {
    code: 'light-on-tires-right',
    holds: (_facts, has) => has('warning-unexplained'),
    says: 'The vehicle believes something that we cannot see.',
    do: 'Look at the spare, at the distance between sensors and gauge, and at the stored places.',
  },
  {
    code: 'gauge-against-sensors',
    holds: (_facts, has) => has('gauge-suspect'),
    says: 'Our gauge is the odd one out.',
    do: 'Take every reading again with the master gauge.',
  },
  {
    code: 'positions-exchanged',
    holds: (facts, has) =>
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

export const contradictionsOf = ({ facts, judged }: Judgment): Contradiction[] => {
  const codes = new Set(judged.map(({ rule }) => rule.code))
  return voices
    .filter((voice) => voice.holds(facts, (code) => codes.has(code)))
    .map((voice) => ({ code: voice.code, says: voice.says, do: voice.do }))
}

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
