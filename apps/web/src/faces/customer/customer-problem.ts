import type { CustomerProblem } from '@bayledger/wording/customer-problems'
import type { CustomerWords } from '@bayledger/wording/customer-words'
import { isCallProblem, type ProblemBody, problemText } from '../../lib/problem.ts'

type Said = Pick<ProblemBody, 'title' | 'detail' | 'fields' | 'requestId'>

const byCode: Readonly<Partial<Record<ProblemBody['code'], CustomerProblem>>> = {
  LINK_REFUSED: 'linkRefused',
  SESSION_MISSING: 'linkRefused',
  SESSION_EXPIRED: 'linkRefused',
  SERVICE_UNAVAILABLE: 'unavailable',
  ORDER_READ_ONLY: 'readOnly',
  REQUEST_TOO_LARGE: 'fileTooLarge',
  ENTRY_REFUSED: 'estimateChanged',
}

/** Refusals of an answer that say what else is wrong; every other is mended by reading the page again. */
const byReason: Readonly<Partial<Record<string, CustomerProblem>>> = {
  ENTRY_ID_REUSED: 'answeredBefore',
  BUNDLE_ALREADY_DECIDED: 'answeredBefore',
  SIGNATURE_OF_ANOTHER: 'anotherName',
}

/** The page shows something that is no longer so: what to do is to load it again. */
export const isOutOfDate = (thrown: unknown): boolean =>
  isCallProblem(thrown, 'ENTRY_REFUSED') && byReason[thrown.body.reason ?? ''] !== 'anotherName'

/** A problem in the page's language. The server's own words are English: in another language its code is worded here. */
export const customerProblem = ({ customerProblems, screens }: CustomerWords, thrown: unknown): Said => {
  if (customerProblems === null) return problemText(thrown)
  if (!isCallProblem(thrown)) return screens.failedToShow
  const { code, reason, status, requestId, retryAfterSeconds } = thrown.body
  if (code === 'UNREACHABLE') return screens.unreachable
  if (code === 'REPLY_UNREADABLE') return screens.notOurs(status)
  if (code === 'TOO_MANY_REQUESTS') return customerProblems.tooManyTries(retryAfterSeconds ?? 60)
  const refused = code === 'ENTRY_REFUSED' ? byReason[reason ?? ''] : undefined
  return { ...customerProblems[refused ?? byCode[code] ?? 'other'], requestId }
}
