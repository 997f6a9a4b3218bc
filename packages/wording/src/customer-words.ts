import type { CustomerLanguage } from './language.ts'

/** What the customer's page says by itself: all that a browser loads of a language. */
export type CustomerWords = Pick<
  CustomerLanguage,
  | 'code'
  | 'locale'
  | 'controls'
  | 'customerEstimate'
  | 'customerPage'
  | 'customerProblems'
  | 'photos'
  | 'reportCheck'
  | 'reports'
  | 'screens'
  | 'wheels'
>
