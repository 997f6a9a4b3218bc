import type { CustomerProblemsWording } from '../customer-problems.ts'

/** What the desk or the service must do is not said here: a customer can load the page again or call. */
export const customerProblems: CustomerProblemsWording = {
  linkRefused: {
    title: 'The link is unknown, has ended or was withdrawn',
    detail: 'Open the newest link from the shop, or ask the shop for a new one.',
  },
  unavailable: {
    title: 'The service cannot work just now',
    detail: 'Try again in a moment; nothing was lost.',
  },
  readOnly: {
    title: 'Nothing can be added to this order',
    detail: 'The shop has to look at it first. Call the shop.',
  },
  estimateChanged: {
    title: 'The estimate has changed',
    detail:
      'The estimate is no longer what this page showed you. Load the page again, read it and answer it.',
  },
  answeredBefore: {
    title: 'You have answered before',
    detail: 'Your answer was already received. Load the page again to see it.',
  },
  fileTooLarge: {
    title: 'This file is too large to be a report',
    detail: 'Choose the PDF that the shop gave you.',
  },
  other: {
    title: 'This did not work',
    detail: 'Nothing was changed. Load the page again; if it fails again, call the shop.',
  },
  tooManyTries: (seconds) => ({
    title: 'Too many tries in a short time',
    detail: `Wait ${seconds} seconds, then try again.`,
  }),
}
