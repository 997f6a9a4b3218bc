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
  superseded: (report) => `A later report, ${report}, adds to it.`,
}
