import type { ProblemsWording, ProblemValues } from '../problems.ts'

const pieces = (count: number): string => (count === 1 ? '1 is' : `${count} are`)

const notMoved = (values: ProblemValues['STOCK_NOT_MOVED']): string => {
  switch (values.why) {
    case 'moved-since':
      return `The list said ${values.listed} when you counted and says ${values.now} now: parts were drawn or received meanwhile. Count again.`
    case 'not-enough':
      return `${pieces(values.onHand)} on the list here, and you asked for ${values.asked}. If more lie on the shelf, count first.`
    case 'more-than-sent':
      return `${values.sent} were sent, and you recorded ${values.asked}. Record what was sent at most, and receive the rest as a delivery.`
    case 'more-cores-than-owed':
      return `${values.owed} cores are owed, and you recorded ${values.asked} as given back. Correct the number.`
    case 'same-place':
      return 'The parts are at this place already. Choose another place.'
    case 'arrived-before':
      return 'The arrival of this transfer was recorded already. Load the list again to see it.'
    case 'no-such-transfer':
      return 'There is no such transfer. Load the list again and choose it there.'
    case 'missing-not-explained':
      return 'Fewer arrived than were sent. Write what became of the rest, in a few words.'
  }
}

/** What staff read where the stock list does not take something. */
export const stockProblems: Pick<ProblemsWording, 'STOCK_NOT_MOVED'> = {
  STOCK_NOT_MOVED: { title: 'The stock list does not take this', detail: notMoved },
}
