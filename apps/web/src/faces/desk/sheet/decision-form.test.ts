import { expect, it } from 'vitest'
import { blankDecision, type DecisionForm, missingInDecision } from './decision-form.ts'

const bundle = { bundleKey: 'right-rear' }
const blank = blankDecision({ name: 'A customer', phone: '555 0100 200' })
const answered: DecisionForm = { ...blank, given: { 'right-rear': 'declined' } }
const decided: DecisionForm = { ...answered, relation: 'owner' }

it.each([
  ['each line needs an answer', blank, 'in-person', 'Each line needs a Yes, a No or a Not today.'],
  ['someone decides', answered, 'in-person', 'Who decides?'],
  ['who decides has a name', { ...decided, name: ' ' }, 'in-person', 'Write the name of who decides.'],
  [
    'a typed signature is the name of who decides',
    { ...decided, signature: { form: 'typed', name: 'Another customer' } },
    'in-person',
    'The name typed as a signature is not the name of who decides. Write both the same, or let them sign.',
  ],
  [
    'a typed signature may be written otherwise',
    { ...decided, signature: { form: 'typed', name: 'a CUSTOMER' } },
    'in-person',
    undefined,
  ],
  ['the customer signs here', decided, 'in-person', 'Let the customer sign.'],
  [
    'by telephone the answer is in words',
    decided,
    'telephone',
    'Write down the number called and the answer in words.',
  ],
  ['by telephone nobody signs', { ...decided, said: 'No, thank you.' }, 'telephone', undefined],
] as const)('%s', (_, form, channel, missing) => {
  expect(missingInDecision(form, channel, [bundle])).toBe(missing)
})

it('has the customer’s number as it is read and dialed', () => {
  expect(blankDecision({ name: 'A customer', phone: '+15555550119' }).number).toBe('(555) 555-0119')
})
