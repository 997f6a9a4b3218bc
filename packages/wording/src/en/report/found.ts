import type { Answer } from '@bayledger/reckoning/estimate'
import type { LowTire, ReportFoundWording } from '../../report/found.ts'
import { lightWasOff } from '../lights.ts'
import { listed } from './listed.ts'

const answered: Readonly<Record<Answer, string>> = {
  authorized: 'You said Yes; it is not finished.',
  declined: 'You said No.',
  deferred: 'You said “Not today”.',
}

/** "right rear 24.0 psi of 33" */
const low = (tires: readonly LowTire[]): string =>
  listed(tires.map(({ wheel, psi, label }) => `${wheel} ${psi} psi of ${label}`))

export const reportFound: ReportFoundWording = {
  notIssued: 'No findings were issued on this order.',
  settled: 'Unsafe when it came, settled here',
  onTheSpare: 'Unsafe when it came; the spare is on in its place',
  removes: (work, answer) =>
    `What fixes it: ${work}. ${answer === null ? 'You have not answered.' : answered[answer]}`,
  removesUnpriced: (work) =>
    `What fixes it: ${work ?? 'a repair'}. No price was given; we price it when you ask.`,
  offer: (work, price) => `${work}, ${price === null ? 'price erased on request' : `${price} with tax`}`,
  ownFinding: (finding, reason) => `${finding} (the technician’s own finding: ${reason})`,
  theLight: 'The warning light',
  causeOfTheLight: 'Cause of the light',
  dangerExplainsIt: 'The danger above also explains the light.',
  noCause: {
    'nobody-looked': 'Nobody saw what it does, so no cause is named.',
    'was-off': lightWasOff,
    unexplained: 'Nothing was found that explains it.',
  },
  done: (work) => `Done about it: ${listed(work)}.`,
  agreed: (work) => `Agreed and not finished: ${listed(work)}.`,
  nothingDone: 'Nothing was done about it.',
  alsoLow: (tires) => `Also low when it came: ${low(tires)}.`,
  left: { word: 'Left as it is', low: 'Left low', onTheLabel: (tires) => `${low(tires)} on the label` },
  lowestOf: (count) => `, the lowest of ${count}`,
}
