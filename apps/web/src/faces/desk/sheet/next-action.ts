import type { MoveCode } from '@bayledger/ledger/questions/move'

/** What the desk does about a move: where on the sheet, and whether the part's main button is pressed at once. */
export type NextAction = {
  readonly words: string
  readonly part: 'complaint' | 'choose-sheet' | 'findings' | 'comeback' | 'estimate' | 'report'
  /** The element of the part that it is about, where the part is about more. */
  readonly place: string
  /** The part's main button needs nothing typed first: the button in the head presses it. */
  readonly presses: boolean
}

const to = (words: string, part: NextAction['part'], presses = false, place: string = part): NextAction => ({
  words,
  part,
  presses,
  place,
})

/** Below the payments of the report's part: whoever hands back types no odometer into an amount. */
export const handBackId = 'hand-back'

/** The moves that the desk can make from the sheet; the bay makes the others. */
export const nextActions: Partial<Readonly<Record<MoveCode, NextAction>>> = {
  complaint: to('Write it down', 'complaint'),
  sheet: to('Choose it', 'choose-sheet'),
  'stop-untold': to('Note the call', 'findings'),
  'wheel-parked': to('Offer it', 'estimate'),
  'comeback-cause-missing': to('Record it', 'comeback'),
  'estimate-missing': to('Build it', 'estimate'),
  'estimate-unshown': to('Show it by link', 'estimate', true),
  'estimate-unanswered': to('Note the answer', 'estimate'),
  'drive-doubtful': to('Settle it', 'report'),
  'payment-open': to('Take the payment', 'report'),
  'report-unsealed': to('Seal it', 'report', true),
  keys: to('Hand it back', 'report', false, handBackId),
}

const fields = 'input:not([type=hidden]), select, textarea'

/** Goes to the part of the sheet that a move is made in: opens it, and focuses its first field or its main button. */
export const takeNextAction = ({ part, place, presses }: NextAction): void => {
  const section = document.getElementById(part)
  if (section === null) return
  section.querySelector<HTMLElement>('.section-fold[aria-expanded="false"]')?.click()
  // The part is open after the next paint.
  requestAnimationFrame(() => {
    const within = document.getElementById(place) ?? section
    const main = within.querySelector<HTMLElement>('.button-main')
    const target = presses ? main : (within.querySelector<HTMLElement>(fields) ?? main)
    const found = target ?? within.querySelector<HTMLElement>('button, a') ?? within
    // The head covers the top of the sheet, and only parts keep clear of it.
    within.scrollIntoView({ block: within === section ? 'start' : 'center' })
    found.focus({ preventScroll: true })
    // As Tab does: what is typed replaces what is there. 70 typed after 52 would take $5,270.
    if (found instanceof HTMLInputElement) found.select()
    if (presses && main !== null) main.click()
  })
}
