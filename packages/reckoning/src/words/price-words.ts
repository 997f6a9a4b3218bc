/** What a field of the price book may hold, for whoever edits it; nothing stores it. */
export const priceWords = {
  amount: 'an amount from 0.00 to 100,000.00',
  hours: 'hours in whole tenths from 0 to 100, as 0.3; 0.25 lies between two tenths',
  share: (low: number, high: number) => `${low} to ${high} %, to a thousandth`,
  words: 'some words',
  key: 'small letters, digits and hyphens, as state-tire-fee',
  dayOfYear: 'a month and a day, as 11-15',
  someClass: 'one class at least',
  sizeOfTire: 'a size for a tire, as 225/65R17 102H, and none for anything else',
  eachOnce: 'each key once',
} as const
