import type { ReportCheckWording } from '../customer-page.ts'

export const reportCheck: ReportCheckWording = {
  title: 'Is this report genuine?',
  what: 'Choose the PDF that you were given. It is compared with what this shop sealed, and is not kept.',
  choose: 'Choose a report, or drop it here',
  checking: 'Checking…',
  verdicts: {
    genuine: 'Genuine and untouched',
    changed: 'Changed after it was sealed',
    unknown: 'Not a report of this shop',
  },
  keys: 'The keys that seal here',
  keysAre:
    'A PDF reader shows who signed a file by a name that anybody can write. Each report prints the fingerprint of its key; it is one of these.',
  keySince: (shop, day) => `${shop}, since ${day}:`,
  stamp: ({ where, verdict, authority, moment }) => {
    if (verdict === 'bad')
      return 'The time-stamp of this report does not hold, so nobody outside of the shop confirms when it was sealed.'
    if (verdict === 'unknown-authority')
      return `A time-stamp by “${authority}” says ${moment}. This service cannot tell whether that authority is genuine.`
    return where === 'within'
      ? `${authority} confirmed that this report was sealed by ${moment}. Its time-stamp is in the file.`
      : `${authority} confirmed that this report existed on ${moment}. Its time-stamp was made after the report was sealed, and is kept here.`
  },
  saveStamp: 'Save the time-stamp (RFC 3161)',
  superseded: (report) => `A later report, ${report}, adds to it.`,
}
