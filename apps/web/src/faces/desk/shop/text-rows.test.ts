import { ownMessagesIn } from '@bayledger/ledger/message-template'
import { describe, expect, it } from 'vitest'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { textContent, textRows, textValues } from './text-rows.ts'

const rows = textRows('Ours', '+15555550100')

const full = {
  lines: ['Tamber Street Tire & Wheel', '14 Tamber Street'],
  telephone: '+15555550100',
  cautions: 'We torque again after 50 miles.\nAsk us.',
  reportFooter: 'Thank you.',
  messages: {
    ...ownMessagesIn(null),
    estimate: { en: 'Dear {name}, please look: {link}', es: null },
    retorque: { en: null, es: '{name}: {when}' },
  },
  quietHours: '21:00-08:00',
  warranty: { laborMonths: 12, sensorMonths: 36, sensorMiles: 36_000 },
}
const empty = {
  lines: [],
  telephone: null,
  cautions: null,
  reportFooter: null,
  messages: ownMessagesIn(null),
  quietHours: null,
  warranty: { laborMonths: 0, sensorMonths: 0, sensorMiles: null },
}

describe('the shop’s texts as rows', () => {
  it.each([[full], [empty]])('come back as they were: %j', (content) => {
    const values = textValues(content)
    expect(recordFaultsOf(rows, values)).toEqual({})
    expect(textContent(values)).toEqual(content)
  })

  it('say at their rows what cannot be', () => {
    const values = {
      ...textValues(full),
      lines: 'a\nb\nc\nd\ne',
      telephone: '555 0100',
      'messages.estimate.en': 'Dear {name}, please look.',
      'messages.report.es': 'Hola, {nombre}: {link}',
      'messages.retorque.en': 'Come back.',
      'messages.deferred.es': 'Regrese.',
      reportFooter: 'x'.repeat(601),
      quietHours: '9 to 8',
    }
    expect(recordFaultsOf(rows, values)).toEqual({
      lines: 'Keep it to four lines of 80 letters.',
      telephone: 'Type it in international form, as +15555550100.',
      'messages.estimate.en': 'The link is missing. Put {link} where the address goes.',
      'messages.report.es':
        '{nombre} is not filled in. Type one of {name}, {vehicle}, {shop}, {link}, or leave the braces out.',
      'messages.retorque.en': 'Put {when} where it says when to come back.',
      'messages.deferred.es': 'Put {work} where the work that was put off is listed.',
      reportFooter: 'Keep it to 600 letters.',
      quietHours: 'Type two times, as 21:00-08:00.',
    })
  })

  it('show each message as it goes out, in the program’s own words where the shop has none', () => {
    const shown = (key: string, typed: string) => {
      const row = rows.find((one) => one.key === key)
      return row?.kind === 'text' ? row.preview?.(typed) : undefined
    }
    expect(shown('messages.estimate.en', '')).toMatch(/^Hello Jo Sample,/)
    expect(shown('messages.estimate.es', '')).toMatch(/^Hola, Jo Sample:/)
    expect(shown('messages.retorque.en', '{shop}: {when}')).toMatch(
      /^Ours: In 50 to 100 miles.*do not drive on, and call us, \(555\) 555-0100\.$/s,
    )
    expect(shown('messages.deferred.en', '')).toContain('- New tire, left front')
  })
})
