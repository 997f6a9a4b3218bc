import type { ReportPageOneWording } from '../../report/page-one.ts'

export const reportPageOne: ReportPageOneWording = {
  facts: {
    order: 'Order',
    report: 'Report',
    date: 'Date',
    vehicle: 'Vehicle',
    plate: 'Plate',
    vin: 'VIN, last 6',
    odometer: {
      came: 'Odometer when it came',
      drove: 'Odometer after our drive',
      left: 'Odometer when it left',
    },
    readTwice: (label) => `${label} (unlikely, read twice)`,
    notReadAgain: 'not read again',
  },
  call: (telephone) => `Call ${telephone}`,
  signatures: { customer: 'Customer', shop: 'For the shop' },
  signing: 'Signing says that you were given this report, and nothing else.',
  check: (address) =>
    `The code opens ${address}: choose this PDF there to see whether it is ours, unchanged. A paper copy cannot be checked.`,
  titles: {
    canDrive: 'Can I drive it?',
    told: 'What you told us',
    found: 'What we found',
    did: 'What we did',
    notDone: 'What you answered “No” or “Not today”',
    fixed: 'Is it fixed?',
    next: 'Do this next',
    genuine: 'Is this report genuine?',
  },
  nothingRefused: 'You refused nothing.',
  quoted: (words) => `“${words}”`,
  further: 'the whole of it further on',
  more: (count) => `and ${count} more, further on`,
  codeAlt: (address) => `QR code of the address ${address}, where this file can be checked.`,
}
