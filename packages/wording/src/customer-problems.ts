type Said = { readonly title: string; readonly detail: string }

/** What can go wrong on a customer's page; `other` is said of whatever has no words of its own. */
export type CustomerProblem =
  | 'linkRefused'
  | 'unavailable'
  | 'readOnly'
  | 'estimateChanged'
  | 'anotherName'
  | 'answeredBefore'
  | 'fileTooLarge'
  | 'other'

/** `null` for the language in which the server words a problem itself. */
export type CustomerProblemsWording =
  | (Readonly<Record<CustomerProblem, Said>> & { readonly tooManyTries: (seconds: number) => Said })
  | null
