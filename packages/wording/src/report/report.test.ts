import { describe, expect, it } from 'vitest'
import { faultOf } from '../../test-support/plain-sentence.ts'
import { report } from '../en/report/report.ts'

const { answers, done, findings, found, money, people, pressures, proof, readings, torque } = report
const seen = { lampCheck: 'lights', behavior: 'stays off' } as const
const low = [
  { wheel: 'right rear', psi: '24.0', label: '33' },
  { wheel: 'spare', psi: '38.0', label: '60' },
]

/** What a report rarely says; what it usually says is read in the reports of the demo (apps/api, packages/report). */
const said: readonly (readonly [string, string])[] = [
  [
    done.set([
      { by: 'day', set: [{ psi: '35.1', road: null, spare: false }] },
      { by: 'limit', set: [{ psi: '44.0', road: ['left front', 'right front'], spare: true }] },
    ]),
    'Set all four tires to 35.1 psi for today’s temperature; left front, right front and spare to 44.0 psi, as far as its limit allows.',
  ],
  [
    done.torqued({
      wheels: ['left front'],
      figure: '80 lbf·ft',
      took: '48 s',
      check: { by: 'same-person', minutesLater: 6 },
    }),
    'Took off the left front wheel; torqued to 80 lbf·ft in 48 s, checked again 6 min later; no second person was available.',
  ],
  [
    done.proven({ relearn: 'reset', drive: { minutes: 1, byTheClock: 0, isLightOff: false } }),
    'The monitoring system was reset; we drove 1 minute (0 by the clock) and the warning light was on at the end.',
  ],
  [found.alsoLow(low), 'Also low when it came: right rear 24.0 psi of 33 and spare 38.0 psi of 60.'],
  [found.removesUnpriced(null), 'What fixes it: a repair. No price was given; we price it when you ask.'],
  [
    found.removes(found.offer('new tire, left front', '$214.50'), 'declined'),
    'What fixes it: new tire, left front, $214.50 with tax. You said No.',
  ],
  [answers.witnessed(null), 'Refused to sign; witness: name not on file.'],
  [
    findings.confirmation.differs('Rowan Tell', 'a loose core', 'It bubbled.'),
    'Rowan Tell does not agree and finds: a loose core. Reason: It bubbled.',
  ],
  [money.totals('$10.00', '$4.00', '$6.00', null), 'Price with tax: $10.00. Paid: $4.00. Open: $6.00.'],
  [
    money.totals('$10.00', '$8.00', '$0.00', '$2.00'),
    'Price with tax: $10.00. Paid: $8.00, after $2.00 was given back. Open: $0.00.',
  ],
  [
    people.settled({ what: people.heardLate(41), by: 'Rowan Tell', moment: 'Jan 12', words: 'It was done.' }),
    'Entry 41 was written on a device that had not heard what was written before it. Settled by Rowan Tell, Jan 12: “It was done.”.',
  ],
  [
    pressures.margin.nearest({ wheels: ['left rear'], all: 4, psi: '3.2', byMaker: true }),
    'Nearest to the warning light is the left rear, once cold, as left, 3.2 psi over the maker’s warning point.',
  ],
  [
    pressures.margin.nearest({ wheels: ['left rear', 'right rear'], all: 2, psi: '3.2', byMaker: false }),
    'All 2 road tires are alike, each once cold, as left, 3.2 psi over the warning point of the rule; the maker’s own may lie higher.',
  ],
  [
    pressures.labelFrom({
      read: { kind: 'placard photo', reference: 'door' },
      confirmed: null,
      worth: 'label',
    }),
    'Source of the label’s figures: placard photo, door (read off the label, not verified).',
  ],
  [
    proof.light({ ...seen, took: '' }),
    'The warning light at the closing check: at key-on it lights; with the engine running stays off.',
  ],
  [readings.codesUnreadable('no plug'), 'Codes stored in the vehicle: could not be checked: no plug.'],
  [
    readings.codes([readings.code({ text: 'C0123', class: 'no signal', wheel: 'right rear' })]),
    'Codes stored in the vehicle: C0123 (no signal, right rear).',
  ],
  [
    torque.checkedAlone(['left front', 'right rear']),
    'No second person was available: whoever torqued the left front and right rear wheels checked it again.',
  ],
]

describe('a report in words', () => {
  it.each(said)('says: %s', (words, expected) => {
    expect(words).toBe(expected)
  })

  it('says a sentence in each of its lines that stand alone', () => {
    const alone = [
      ...Object.values(found.noCause),
      ...Object.values(answers.leaves),
      ...[answers.nothingOpen, answers.signed, money.noEstimate, money.noPayment, people.noneWithdrawn],
      ...[findings.notIssued, pressures.noneSet, pressures.howDerived, proof.noDrive, proof.slept],
    ]
    expect(alone.map((words) => [words, faultOf(words)])).toEqual(alone.map((words) => [words, null]))
  })

  it('names an answer that is no Yes', () => {
    expect(answers.answer({ answer: 'none' })).toBe('Not answered')
    expect(answers.answer({ answer: 'deferred', until: 'Mar 1, 2026' })).toBe('Not today, until Mar 1, 2026')
    expect(answers.answer({ answer: 'taken-back' })).toBe(
      'No, after a Yes that was taken back before any work on it',
    )
  })
})
