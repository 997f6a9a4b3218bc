/** A caution as a customer reads it; its words change only with its version. Translated by people only. */
export type CustomerCaution = { readonly number: string; readonly version: number; readonly text: string }

/** Cautions for what a customer puts off or declines, and for what they should know when they drive away. */
export const customerCautions: readonly CustomerCaution[] = [
  {
    number: 'CT-01',
    version: 1,
    text: 'Until this is repaired, your vehicle will not warn you of a low tire. Check the pressures by hand every week.',
  },
  {
    number: 'CT-04',
    version: 1,
    text: 'This tire can fail without warning. Please do not drive on it; have the vehicle towed or the spare fitted.',
  },
  {
    number: 'CT-05',
    version: 1,
    text: 'The other sensors are about as old. Their batteries may end within the next years, one after the other.',
  },
  {
    number: 'CT-06',
    version: 1,
    text: 'A wheel that was off can settle. Come back after 50 to 100 miles and let us check its torque, free of charge.',
  },
  {
    number: 'CT-07',
    version: 1,
    text: 'The cure is not proven by driving yet. If the light comes back within the first drives, come back to us.',
  },
  {
    number: 'CT-10',
    version: 1,
    text: 'The pressures were set for cold weather and may read higher while the tires are warm. Do not let air out.',
  },
  {
    number: 'CT-13',
    version: 1,
    text: 'A wheel that is not held safely can come off. Please do not drive until this is repaired.',
  },
  {
    number: 'CT-14',
    version: 1,
    text: 'A tire that loses air runs hot and can fail. Gauge it before each drive, and fill it to the label on the door.',
  },
]

/** A caution by its number; `undefined` where there is none. */
export const customerCaution = (number: string): CustomerCaution | undefined =>
  customerCautions.find((caution) => caution.number === number)

/** Number and version together, as an entry names a caution that was shown: `CT-01@1`. */
export const cautionName = ({ number, version }: CustomerCaution): string => `${number}@${version}`
