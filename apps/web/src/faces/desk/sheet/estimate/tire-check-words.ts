import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { ClassRefusal } from '@bayledger/reckoning/tire/load-class-change'
import type { ReplacementVerdict } from '@bayledger/reckoning/tire/replacement-tire'
import { temporarySpareLimits } from '@bayledger/reckoning/tire/temporary-spare'
import type { TiresApart } from '@bayledger/reckoning/tire/tread-apart'

const refusals: Readonly<Record<ClassRefusal, string>> = {
  'passenger-for-light-truck': 'The sheet names a light-truck tire, and this is a passenger tire.',
  'lower-load-range': 'Its load range is lower than the sheet’s.',
  'standard-for-extra-load': 'The sheet names extra load (XL), and this is a standard load tire.',
  'not-high-load': 'The sheet names a high load tire (HL), and this is none.',
  'not-commercial': 'The sheet names a commercial tire (C), and this is a passenger tire.',
}

const heads = {
  'as-sheet': 'It is the tire that the sheet names, in size, load index and speed symbol.',
  refused: 'Do not fit it.',
  'load-check': 'It is not the tire that the sheet names. The load tables decide.',
} as const

/** What the check says of a replacement tire, sentence by sentence. */
export const verdictWords = (verdict: ReplacementVerdict, system: SpecificationSheet['system']): string[] => {
  if (verdict.outcome === 'unreadable')
    return [
      verdict.which === 'sheet'
        ? 'The size of the sheet cannot be read. Type it as the door label prints it, as 235/60R18 103H.'
        : 'Type the new tire’s size as its sidewall prints it, as 235/60R18 103H.',
    ]
  const { outcome, classRefusal, load, diameter, warning } = verdict
  return [
    heads[outcome],
    ...(classRefusal === null ? [] : [refusals[classRefusal]]),
    ...(outcome === 'as-sheet' && load.outcome === 'asks' ? [] : [load.says]),
    ...(diameter === null || diameter.percent === 0
      ? []
      : [
          `Its diameter is ${Math.abs(diameter.percent).toFixed(1)} % ${diameter.percent > 0 ? 'larger' : 'smaller'}, nominally: the speedometer shows ${diameter.percent > 0 ? 'too little' : 'too much'}. ${diameter.withinTrade ? 'The trade takes up to 3 % as the same.' : 'That is over the 3 % that the trade takes as the same.'}`,
        ]),
    ...(warning === null
      ? []
      : [
          `At the pressure that you set, the vehicle warns after a loss of ${warning.percent.toFixed(0)} %.${warning.isMoreThanAQuarter ? ' That is later than the quarter that its label gives: say so to the customer.' : ''}`,
        ]),
    ...(system === 'indirect'
      ? [
          'This vehicle compares how its tires roll. Set the pressures and reset it once the new tires are on, all four of one size and tread; until then it warns falsely or not at all.',
        ]
      : []),
    'This does not say whether the tire fits the wheel and clears the body. The vehicle maker’s label governs.',
  ]
}

const inches = (millimeters: number): string => (millimeters / 25.4).toFixed(2)
const thirtySeconds = (millimeters: number): string => (millimeters / 0.79375).toFixed(1).replace('.0', '')

/** How far tires are apart: of one axle, or of all four. */
export const apartWords = (
  where: string,
  { treadApart, aroundApart, isTreadOver, isAroundOver }: TiresApart,
): string =>
  [
    `${where}: ${thirtySeconds(treadApart)}/32 in of tread apart`,
    aroundApart === null ? '' : `, ${inches(aroundApart)} in around`,
    isTreadOver
      ? '. Over 2/32 in: too much.'
      : isAroundOver
        ? '. Over 1/4 in around: some makers allow no more.'
        : '.',
  ].join('')

const { milesPerHour, kilometersPerHour, miles, psi } = temporarySpareLimits

/** What holds for a temporary spare; `percent`: how much smaller it is than the tires. */
export const temporarySpareWords = (percent: number | null): string =>
  `A temporary spare is usually for at most ${milesPerHour} mph (${kilometersPerHour} km/h), about ${miles} miles, at ${psi} psi, and not on a driven axle where there is another. Its sidewall and the vehicle’s handbook govern.${percent === null || percent < 0.1 ? '' : ` It is ${percent.toFixed(1)} % smaller than the tires: its wheel turns that much faster.`}`
