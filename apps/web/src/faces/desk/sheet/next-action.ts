import type { MoveCode } from '@bayledger/ledger/questions/move'

/** What the desk does about a move: where on the sheet, and whether the part's main button is pressed at once. */
export type NextAction = {
  readonly words: string
  readonly part: 'complaint' | 'choose-sheet' | 'findings' | 'comeback' | 'estimate' | 'report'
  /** The part's main button needs nothing typed first: the button in the head presses it. */
  readonly presses: boolean
}

const to = (words: string, part: NextAction['part'], presses = false): NextAction => ({
  words,
  part,
  presses,
})

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
  keys: to('Hand it back', 'report'),
}

const fields = 'input:not([type=hidden]), select, textarea'

/** Goes to the part of the sheet that a move is made in: opens it, and focuses its first field or its main button. */
export const takeNextAction = ({ part, presses }: NextAction): void => {
  const section = document.getElementById(part)
  if (section === null) return
  section.querySelector<HTMLElement>('.section-fold[aria-expanded="false"]')?.click()
  // The part is open after the next paint.
  requestAnimationFrame(() => {
    const main = section.querySelector<HTMLElement>('.button-main')
    const target = presses ? main : (section.querySelector<HTMLElement>(fields) ?? main)
    const found = target ?? section.querySelector<HTMLElement>('button, a') ?? section
    section.scrollIntoView({ block: 'start' })
    found.focus({ preventScroll: true })
    if (presses && main !== null) main.click()
  })
}
