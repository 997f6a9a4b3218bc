import type { ProblemsWording, ProblemValues } from '../problems.ts'

const held = (order: string | null): string =>
  order === null ? 'There is a legal hold on the customer.' : `There is a legal hold on order ${order}.`

const obstacle = (one: ProblemValues['ERASURE_REFUSED']['obstacles'][number]): string => {
  switch (one.why) {
    case 'held':
      return `${held(one.order)} An owner lifts it once its reason is over.`
    case 'open':
      return `Order ${one.order} is open. Hand the vehicle back or close the order first.`
    case 'owed':
      return `Order ${one.order} is not settled. Note the payment, or give back what was paid too much.`
    case 'on-tablet':
      return `${one.tablet} still keeps order ${one.order}. Bring the tablet into the network, or put it out on the page Tablets.`
  }
}

export const erasureProblems: Pick<
  ProblemsWording,
  'ERASURE_REFUSED' | 'CUSTOMER_ERASED' | 'HOLD_NOT_FOUND' | 'HOLD_NOT_CHANGED'
> = {
  ERASURE_REFUSED: {
    title: 'The data cannot be erased yet',
    detail: ({ obstacles }) => ['Nothing was erased.', ...obstacles.map(obstacle)].join(' '),
  },
  CUSTOMER_ERASED: {
    title: 'This person’s data were erased',
    detail: () => 'Nothing was saved. If the person comes again, make a new customer card.',
  },
  HOLD_NOT_FOUND: {
    title: 'There is no such legal hold',
    detail: () => 'Load the page again; it lists every legal hold of this shop.',
  },
  HOLD_NOT_CHANGED: {
    title: 'Somebody was there before you',
    detail: ({ why }) =>
      why === 'held-before'
        ? 'There is a legal hold on this already. Load the page again to read its reason.'
        : 'This legal hold was lifted before you. Load the page again.',
  },
}
