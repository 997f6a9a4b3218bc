import { capitalized } from '../capitalized.ts'
import type { CustomerPageWording } from '../customer-page.ts'
import { lightWasOff } from './lights.ts'

const label = (psi: number | null): string => (psi === null ? 'no figure on the label' : `should be ${psi}`)

const silent = (tries: number): string => (tries === 1 ? 'no answer, 1 test' : `no answer, ${tries} tests`)

export const customerPage: CustomerPageWording = {
  document: {
    title: 'Your vehicle',
    needsScript:
      'This page needs JavaScript. Turn it on, load the page again, or call the shop that sent you the link.',
  },
  opening: 'Opening your vehicle’s page…',
  notWhole: {
    title: 'This address is not whole.',
    detail: 'Open the link again from the message that the shop sent you, or call the shop.',
  },
  titles: {
    canDrive: 'Can I drive it?',
    dangerous: 'What is dangerous',
    light: 'The warning light',
    report: 'Your report',
  },
  how: 'How to check, and why',
  sensorIs: 'A sensor is the small part in each wheel that tells your car its air pressure.',
  photos: (count) => (count === 1 ? 'See the photo' : `See the ${count} photos`),
  noCause: {
    'still-looking': 'The shop is still looking. This page will say what was found.',
    'was-off': lightWasOff,
    unexplained: 'So far we found nothing that explains it.',
  },
  technicianDiffers:
    'Our technician sees the cause otherwise and will explain it to you. Call us if we have not yet.',
  found: {
    words: {
      'do-not-drive': 'Do not drive',
      'do-not-open-the-tire': 'Handled with care here',
      'repair-before-release': 'To be repaired before it leaves',
      cause: 'The cause',
      unexplained: 'What we know so far',
    },
    marks: {
      'do-not-drive': 'Do not drive',
      'do-not-open-the-tire': 'With care',
      'repair-before-release': 'Repair first',
      cause: 'Cause',
      unexplained: 'Not sure',
    },
    sensorMark: 'Its sensor',
  },
  measured: {
    title: 'See what we measured',
    caption:
      'The air in each tire when your vehicle came in, and what the label in the door asks for, in psi. The drawing is seen from above, front at the top: LF is the left front wheel, RF the right front, LR the left rear, RR the right rear, SP the spare.',
    at: (name) => `${capitalized(name)}:`,
    label,
    silent,
    wheel: ({ name, mark, pressure, labelPsi, silent: tries }) =>
      `${name}: ${[
        ...(mark === null ? [] : [mark]),
        ...(pressure === null
          ? []
          : [`${pressure} measured`, `${label(labelPsi)}${labelPsi === null ? '' : ' psi'}`]),
        ...(tries === null ? [] : [silent(tries)]),
      ].join(', ')}`,
  },
  report: {
    sealed: (number, day, time) =>
      `Report ${number}, sealed ${day} at ${time}. Keep it: it says what was wrong, what was done and what to do next.`,
    open: 'Open the report (PDF)',
    check: {
      before: 'Anyone can check that a report is untouched: ',
      link: 'upload the file here',
      after: '.',
    },
  },
  question: 'A question?',
  call: (shop, telephone) => (telephone === null ? `Call ${shop}.` : `Call ${shop}, ${telephone}`),
}
