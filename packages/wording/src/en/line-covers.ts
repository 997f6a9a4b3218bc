import type { LineCoversWording } from '../line-covers.ts'

const not = 'Our warranty does not cover this'

export const lineCovers: LineCoversWording = {
  covered: ({ term, order, price, until, miles }) =>
    `Covered by our warranty: $0.00 (would be ${price}). We ${term === 'sensor' ? 'put in this sensor' : 'did this work'} on order ${order}. The warranty is good until ${until}${miles === null ? '' : ` or ${miles} miles`}.`,
  charged: {
    'new-damage': () => `${not}: it is new damage.`,
    'days-over': ({ until }) => `${not}: it ended on ${until}.`,
    'miles-over': ({ miles }) => `${not}: it ended at ${miles} miles.`,
    'another-wheel': () => `${not}: we did not work on this wheel before.`,
    'part-not-ours': () => `${not}: we did not put in this part.`,
    'work-not-ours': () => `${not}: we did not do this work before.`,
    'wear-part': () => `${not}: a tire wears with use.`,
  },
  waived: (price, why) => `You do not pay for this: $0.00 (would be ${price}). The reason: ${why}`,
  refused: (why) => `${not}. The reason: ${why}`,
  part: (price) => `Our warranty covers ${price} of this, before tax.`,
  day: (day) =>
    new Intl.DateTimeFormat('en-US', {
      ...{ timeZone: 'UTC', year: 'numeric', month: 'short', day: 'numeric' },
    }).format(new Date(`${day}T00:00:00.000Z`)),
  count: (miles) => miles.toLocaleString('en-US'),
}
