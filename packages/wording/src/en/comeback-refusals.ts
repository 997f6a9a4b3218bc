import type { RefusalValues } from '@bayledger/ledger/admit/refusal-values'

export const comebacksNotJudged: Readonly<Record<RefusalValues['COMEBACK_NOT_JUDGED']['why'], string>> = {
  'no-comeback': 'This order is joined to no earlier one, so it has no cause of a comeback.',
  'findings-unconfirmed':
    'The cause follows confirmed findings. Let the technician confirm the present ones first.',
  'words-missing': 'Write in a few words what the cause is.',
  'cause-missing': 'This is a comeback. Record its cause first: the warranty depends on it.',
}

export const unclearCovers: Readonly<
  Record<RefusalValues['ESTIMATE_COVER_UNCLEAR']['why'], (bundle: string) => string>
> = {
  differs: (bundle) =>
    `The warranty terms say something else of "${bundle}". The cause or the terms have changed: build the estimate again.`,
  open: (bundle) =>
    `Nobody read the odometer, so the warranty of "${bundle}" is open. Read it, or decide and write the reason.`,
  price: (bundle) => `A price of "${bundle}" does not fit its warranty. Build the estimate again.`,
  reason: (bundle) => `Whoever decides against the warranty terms writes why, at "${bundle}".`,
  role: (bundle) =>
    `Your role may not decide against the warranty terms at "${bundle}". Leave it as the terms have it, or ask a lead, a manager or the owner.`,
}
