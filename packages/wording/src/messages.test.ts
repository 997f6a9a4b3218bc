import { messagesAbout, templateFault } from '@bayledger/ledger/message-template'
import { describe, expect, it } from 'vitest'
import { customerLanguages } from './customer-languages.ts'
import { letterText, type MessageFacts } from './messages.ts'

const of: MessageFacts = {
  name: 'P. Lindqvist-Roe',
  vehicle: 'Linnet C',
  shop: 'Tamber Street Tire & Wheel',
  telephone: '+15555550100',
  link: 'https://shop.example/customer#s3cret',
  lines: ['New sensor, right rear', 'New tire, left front'],
}

describe.each(Object.entries(customerLanguages))('messages in %s', (_, { messages }) => {
  it('name the customer, the vehicle and the way to the shop, and no message has an empty place', () => {
    for (const about of messagesAbout) {
      const letter = letterText(messages, about, of, null)
      for (const part of [of.name, of.vehicle]) expect(letter, about).toContain(part)
      expect(letter, about).toContain('(555) 555-0100')
      expect(letter, about).not.toMatch(/[{}]/)
      expect(templateFault(about, messages.usual[about]), about).toBeNull()
      expect(letterText(messages, about, { ...of, telephone: null }, null), about).not.toMatch(
        /null|undefined|\s,|\(\)/,
      )
    }
  })

  it('hold the link only where there is a page to open, and the work that was put off line by line', () => {
    expect(letterText(messages, 'estimate', of, null)).toContain(of.link)
    expect(letterText(messages, 'report', of, null)).toContain(of.link)
    const letter = letterText(messages, 'deferred', of, null)
    expect(letter).not.toContain('s3cret')
    expect(letter).toContain('- New sensor, right rear\n- New tire, left front')
  })

  it('say in the reminder of the torque check not to drive on with a vibration, in a shop’s own words too', () => {
    const lines = ['In 50 to 100 miles: come back.']
    const letter = letterText(messages, 'retorque', { ...of, lines }, 'Dear {name}, {when}')
    expect(letter).toMatch(/^Dear P\. Lindqvist-Roe, In 50 to 100 miles: come back\.\n\n/)
    expect(letter).toMatch(/do not drive on|no siga manejando/)
  })

  it('tell an owner of a figure that was wrong for which vehicle, and not to drive on', () => {
    const said = messages.wrongFigure('Linnet C 2019')
    expect(said).toContain('Linnet C 2019')
    expect(said).toMatch(/do not drive on; call us|no siga manejando; llámenos/)
  })

  it('fit into a text to a telephone', () => {
    // 3GPP TS 23.038: 160 signs of the GSM alphabet, 70 of another, to a part; three parts at most.
    for (const text of Object.values(messages.texts)) expect(text(of).length).toBeLessThan(3 * 67)
  })
})
