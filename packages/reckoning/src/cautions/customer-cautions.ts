/** A caution as a customer reads it, before a No or Later is recorded and again in the report. */
export type CustomerCaution = {
  readonly number: CustomerCautionNumber
  /** Changes with the words: an answer names the version that was read. */
  readonly version: number
  readonly about: string
  readonly words: string
}

export type CustomerCautionNumber = keyof typeof cautions

/** The caution of a number such as `CT-01`, in its newest version; `null` for a number that does not exist. */
export const customerCaution = (number: string): CustomerCaution | null =>
  isNumber(number) ? { number, ...cautions[number] } : null

/** What an answer keeps of a caution that was shown: `CT-01 v1`. */
export const cautionShown = ({ number, version }: Pick<CustomerCaution, 'number' | 'version'>): string =>
  `${number} v${version}`

/** Every caution's words by what an answer keeps of it, for whoever prints answers. */
export const cautionWordsByShown = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.keys(cautions)
      .map(customerCaution)
      .flatMap((caution) => (caution ? [[cautionShown(caution), caution.words]] : [])),
  )

const isNumber = (number: string): number is CustomerCautionNumber => Object.hasOwn(cautions, number)

/** Plain words of our own, each sentence of 25 words or fewer; the vehicle maker's manual governs. */
const cautions = {
  'CT-01': {
    version: 1,
    about: 'the warning stays off',
    words:
      'Until this is repaired, your vehicle will not warn you of a low tire. Check all pressures by hand every week.',
  },
  'CT-02': {
    version: 1,
    about: 'a plain stem instead of a sensor',
    words:
      'This wheel will have no sensor. The warning light stays on, and your vehicle cannot warn you of a low tire there.',
  },
  'CT-03': {
    version: 1,
    about: 'little tread, or an old tire',
    words:
      'Worn or old tires grip poorly in rain and can fail without notice. Slow down on wet roads and have them replaced soon.',
  },
  'CT-04': {
    version: 1,
    about: 'an unsafe tire',
    words: 'This tire can fail suddenly. Please do not drive on it. If you do, you do so against our advice.',
  },
  'CT-05': {
    version: 1,
    about: 'the other sensors are as old',
    words:
      'The other sensors are as old as the one that failed. Their batteries may end soon, each with another visit.',
  },
  'CT-06': {
    version: 1,
    about: 'the torque check after some miles',
    words:
      'Wheel fasteners can settle after a wheel was off. Come back after 50 to 100 miles, or as the maker says; the check is free.',
  },
  'CT-07': {
    version: 1,
    about: 'the proof drive is left to the customer',
    words:
      'The repair is not proven yet. Drive 20 minutes at normal road speed. If the light comes on, call us before the next trip.',
  },
  'CT-08': {
    version: 1,
    about: 'sealant in a tire',
    words:
      'Sealant from a can is a get-home measure. Its gas can burn, it can spoil the sensor, and the tire still needs a repair inside.',
  },
  'CT-09': {
    version: 1,
    about: 'wheels that are not the original ones',
    words:
      'These wheels are not the original ones. Seat, size or shielding may keep sensors from working; the wheel maker answers for fit.',
  },
  'CT-10': {
    version: 1,
    about: 'pressures set while the tires are warm',
    words:
      'Your tires were set while warm and may read above the door label until they cool. Do not let air out.',
  },
  'CT-11': {
    version: 1,
    about: 'the diagnosis is not complete',
    words:
      'We have not found the cause yet. The light may hide a low tire: check all pressures by hand every week.',
  },
  'CT-12': {
    version: 1,
    about: 'a used part, or one the customer brought',
    words: 'We do not warrant this part. If it fails, finding that out and replacing it is charged again.',
  },
  'CT-13': {
    version: 1,
    about: 'a wheel that is not secure',
    words:
      'This wheel is not held safely and can come off. Please do not drive. If you do, you do so against our advice.',
  },
  'CT-14': {
    version: 1,
    about: 'a tire that was driven low',
    words:
      'A tire that was driven low can be damaged inside and fail suddenly. Please do not drive on it before it was inspected.',
  },
  'CT-15': {
    version: 1,
    about: 'a temporary spare on the road',
    words:
      'A temporary spare has limits of speed and distance on its sidewall. Obey them, and have the wheel repaired soon.',
  },
  'CT-16': {
    version: 1,
    about: 'a leak that stays',
    words:
      'This tire keeps losing air. Filling is not a repair. Gauge it before every trip; driven low, it can fail suddenly.',
  },
  'CT-17': {
    version: 1,
    about: 'a damaged valve stem that stays',
    words:
      'This valve stem can let go without warning and empty the tire at once. Gauge the tire often and have the stem replaced soon.',
  },
} as const satisfies Record<string, { version: number; about: string; words: string }>
