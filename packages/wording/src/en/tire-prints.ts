import type { OtherTire, TirePrintsWording } from '../tire-prints.ts'
import { wheels } from './wheels.ts'

const differences = ({ differs: { isOtherSize, loadIndexApart, isSlower } }: OtherTire): string[] => [
  ...(isOtherSize ? ['another size'] : []),
  ...(loadIndexApart !== null && loadIndexApart < 0 ? ['a lower load index'] : []),
  ...(isSlower ? ['a lower speed symbol'] : []),
]

const governs =
  "the vehicle maker's label names the sizes that are right, and for any other the tire maker's load table decides"

export const tirePrints: TirePrintsWording = {
  unread: {
    'worn-off': 'worn off',
    'on-the-inner-side': 'on the inner side',
    covered: 'covered',
    'not-printed': 'not on the tire',
  },
  otherTire: (of) =>
    `The ${wheels.names[of.wheel]} tire says ${of.onTire}; the sheet has ${of.bySheet}: ${differences(of).join(', ')}. Whether it may stay was not decided here: ${governs}.`,
  age: ({ fullYears, atLeast }) => {
    const years = fullYears === 0 ? 'under a year' : fullYears === 1 ? '1 year' : `${fullYears} years`
    return atLeast ? `at least ${years}, decade unknown` : years
  },
}
