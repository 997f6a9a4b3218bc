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
  superseded: (report) => `A later report, ${report}, adds to it.`,
}
