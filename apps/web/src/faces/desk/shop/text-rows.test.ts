import { describe, expect, it } from 'vitest'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { textContent, textRows, textValues } from './text-rows.ts'

const full = {
  lines: ['Tamber Street Tire & Wheel', '14 Tamber Street'],
  telephone: '+15555550100',
  cautions: 'We torque again after 50 miles.\nAsk us.',
  reportFooter: 'Thank you.',
  linkMessage: 'Dear {name}, please look: {link}',
  quietHours: '21:00-08:00',
}
const empty = {
  lines: [],
  telephone: null,
  cautions: null,
  reportFooter: null,
  linkMessage: null,
  quietHours: null,
}

describe('the shop’s texts as rows', () => {
  it.each([[full], [empty]])('come back as they were: %j', (content) => {
    const values = textValues(content)
    expect(recordFaultsOf(textRows(), values)).toEqual({})
    expect(textContent(values)).toEqual(content)
  })

  it('say at their rows what cannot be', () => {
    const values = {
      ...textValues(full),
      lines: 'a\nb\nc\nd\ne',
      telephone: '555 0100',
      linkMessage: 'Dear {name}, please look.',
      reportFooter: 'x'.repeat(601),
      quietHours: '9 to 8',
    }
    expect(recordFaultsOf(textRows(), values)).toEqual({
      lines: 'Keep it to four lines of 80 letters.',
      telephone: 'Type it in international form, as +15555550100.',
      linkMessage: 'Put {link} where the address goes.',
      reportFooter: 'Keep it to 600 letters.',
      quietHours: 'Type two times, as 21:00-08:00.',
    })
  })
})
