import type { CustomerEstimateWording } from '../customer-page.ts'

export const customerEstimate: CustomerEstimateWording = {
  title: 'What it costs',
  version: (revision) => `Version ${revision}`,
  ready: (time) => `If you say yes now, it will be ready by ${time}.`,
  stillUnsafe: 'A Yes to other work does not make the vehicle safe to drive.',
  look: 'The inspection, as agreed',
  total: 'What you pay, with tax',
  answers: { authorized: 'Yes', declined: 'No', deferred: 'Not today' },
  question: {
    insteadOf: (title) => `This is in place of: ${title}. You can choose only one of them.`,
    isNew: 'New since the version before.',
    changed: (sum) => `Changed since the version before. It was ${sum}.`,
    eachPrice: 'See each price',
    tax: 'Tax',
    yours: 'Do you want this?',
    onlyNo: 'No, I no longer want it',
    given: 'Your answer:',
    notGiven: 'not given',
    onceDriven: 'Once it may be driven again: ',
    lookTerms: {
      charged: () => 'You agreed to this before we began. It is charged whatever you answer.',
      'waived-with-work': (sum) =>
        `You agreed to this before we began. It is free if you say Yes to any work, and ${sum} if not.`,
      waived: () => 'This is free of charge.',
    },
  },
  answered: {
    title: 'Your answer',
    recorded: 'Thank you. Your answer is recorded, with your name and this version of the estimate.',
    next: ({ work, owes, ready, mayDrive }) => {
      if (work === 'none')
        return mayDrive
          ? 'We do no more work on it. You can pick it up during our hours.'
          : 'We do no more work on it. It must not be driven away as it is: call us about towing.'
      const begins = work === 'begun' ? 'We have begun the work' : 'We begin as soon as a bay is free'
      return `${begins}${ready === null ? '' : `, and it will be ready by ${ready}`}. We call you before the price or the time changes.${owes ? ' You pay when you pick it up.' : ''}`
    },
    afterNo: 'If you change your mind about a No, call the shop.',
    answerDeferred: 'Answer what you put off',
    takeBack: 'Take back a Yes',
    takingBack: 'Work on it has not begun. Say No below to what you no longer want, and sign.',
    keep: 'Keep my answer',
  },
  sign: {
    title: 'Sign',
    youAre: 'You are',
    relations: {
      owner: 'The owner of this vehicle',
      'named-person': 'Somebody the owner named to decide',
      'fleet-contact': 'I manage company cars',
    },
    name: 'Your name',
    signature: 'Your signature',
    before: 'Before you send',
    electronic: {
      label: 'I agree to decide and to be given the record electronically.',
      detail: 'You may ask for paper, and you may change your mind at any time: call the shop.',
    },
    parts: 'I want the removed parts back.',
    send: 'Send my answer',
    loadAgain: 'Load the page again',
    missing: {
      answers: (open) =>
        `${open === 1 ? 'One question above has' : `${open} questions above have`} no answer yet.`,
      relation: 'Say who you are.',
      name: 'Write your name.',
      signature: 'Sign in the field, or type your name instead.',
      sameName: 'The name typed as a signature must be your name above. Write both the same.',
      agreement: 'Agree to an electronic record, or call the shop for paper.',
    },
  },
}
