import type { OtherTire, TirePrintsWording, UnevenTread, WornAround } from '../tire-prints.ts'
import { wheels } from './wheels.ts'

const differences = ({ differs: { isOtherSize, loadIndexApart, isSlower } }: OtherTire): string[] => [
  ...(isOtherSize ? ['another size'] : []),
  ...(loadIndexApart !== null && loadIndexApart < 0 ? ['a lower load index'] : []),
  ...(isSlower ? ['a lower speed symbol'] : []),
]

const governs =
  "the vehicle maker's label names the sizes that are right, and for any other the tire maker's load table decides"

const across: Readonly<Record<UnevenTread['hint'], string>> = {
  middle:
    'the middle is worn more than both shoulders. Too much pressure often does that: check the cold pressure against the label.',
  'both-shoulders':
    'both shoulders are worn more than the middle. Too little pressure often does that: check the cold pressure against the label, and look for a leak.',
  'inner-shoulder':
    'the inner shoulder is worn more than the outer one. A wheel that is not aligned often does that: have the alignment checked.',
  'outer-shoulder':
    'the outer shoulder is worn more than the inner one. A wheel that is not aligned often does that: have the alignment checked.',
}

const around: Readonly<Record<WornAround['seen'], string>> = {
  cups: 'is worn in dips around it. A wheel out of balance or a worn damper often does that: check both.',
  feathers:
    'has blocks of tread with one sharp edge. A wheel that is not aligned often does that: have the alignment checked.',
}

const perhaps = 'It is a hint and no finding: it may have begun when the tire was at another wheel.'

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
  wornAcross: ({ wheel, across: { inner, middle, outer }, hint }) =>
    `The ${wheels.names[wheel]} tire has ${inner}/32, ${middle}/32 and ${outer}/32 in of tread from its inner side to its outer side: ${across[hint]} ${perhaps}`,
  wornAround: ({ wheel, seen }) => `The ${wheels.names[wheel]} tire ${around[seen]} ${perhaps}`,
}
