import type { NoAnswer, ReportAnswersWording } from '../../report/answers.ts'

const answer = (of: NoAnswer): string => {
  switch (of.answer) {
    case 'none':
      return 'Not answered'
    case 'taken-back':
      return 'No, after a Yes that was taken back before any work on it'
    case 'declined':
      return 'No'
    case 'deferred':
      return of.until === null ? 'Not today' : `Not today, until ${of.until}`
  }
}

export const reportAnswers: ReportAnswersWording = {
  title: 'Your answers',
  nothingOpen: 'Nothing was answered with “No” or “Not today”.',
  open: {
    caption: 'Declined and deferred',
    columns: { proposal: 'Proposal', price: 'Price', answer: 'Answer', caution: 'Caution shown' },
  },
  answer,
  noCaution: 'none shown',
  consents: {
    caption: 'Consents',
    columns: { estimate: 'Estimate', by: 'Answered by', how: 'How', when: 'When' },
  },
  version: (revision, total) => `version ${revision}, ${total ?? 'total not on file'}`,
  channels: { 'in-person': 'at the desk', link: 'by link', telephone: 'by telephone' },
  relations: {
    owner: 'owner',
    'named-person': 'person named by the owner',
    'fleet-contact': 'manager of company cars',
    driver: 'driver',
  },
  refused: {
    caption: 'Refused although unsafe',
    columns: { finding: 'Finding', proof: 'Proof', caution: 'Caution shown', by: 'Told by' },
  },
  signed: 'Signed by the customer.',
  witnessed: (name) => `Refused to sign; witness: ${name ?? 'name not on file'}.`,
  leaves: {
    towed: 'It is towed.',
    'sound-spare': 'It leaves on its spare.',
    'as-it-is': 'It leaves as it is.',
  },
}
