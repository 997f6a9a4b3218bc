import { gateWords } from '../gates.ts'
import type { ProblemsWording, ProblemValues, RecordSubject } from '../problems.ts'
import { refusalWords } from '../refusals.ts'
import { csvProblems } from './csv-problems.ts'
import { doubts } from './doubts.ts'
import { erasureProblems } from './erasure-problems.ts'
import { gates } from './gates.ts'
import { mergeProblems } from './merge-problems.ts'
import { peopleProblems } from './people-problems.ts'
import { refusals } from './refusals.ts'
import { signInProblems, signInRefused } from './sign-in-problems.ts'
import { stockProblems } from './stock-problems.ts'

/** At most this many fields are named in a sentence; the reply lists them all. */
const mostNamed = 5

const wrongFields = (count: number): string => (count === 1 ? 'One field is' : `${count} fields are`)

const fieldsInvalid = (values: ProblemValues['FIELDS_INVALID']): string => {
  switch (values.what) {
    case 'fields':
      return `${wrongFields(values.fields.length)} not right: ${values.fields.slice(0, mostNamed).join(', ')}. Correct what is named and send it again.`
    case 'cursor':
      return 'The cursor is not one of ours. Begin the list again.'
    case 'if-match':
      return 'The header If-Match must hold one version in quotation marks.'
    case 'idempotency-key':
      return 'The header Idempotency-Key is not usable.'
    case 'location':
      return 'This shop has no such place. Choose one of its places.'
    case 'sides':
      return 'Words or prices arrived changed: their digest does not match. Send them again.'
    case 'values':
      return 'The database did not take this. Correct it and send it again.'
    case 'shop-not-named':
      return 'This service has several shops. Choose the shop that you work for, then sign in.'
    case 'shop-unknown':
      return 'This service has no such shop. Choose one from the list, then sign in.'
  }
}

const secondPersonRefused = (values: ProblemValues['SECOND_PERSON_REFUSED']): string => {
  switch (values.why) {
    case 'is-the-writer':
      return 'The second person must be somebody else. Choose another one.'
    case 'figure-not-agreed':
      return 'A figure is verified by somebody who did not enter it, with their PIN, for this very figure. Ask them to type it again.'
    case 'lacks-the-role':
      return `The second person must be one of these here: ${values.roles.join(', ')}. Ask one of them.`
  }
}

const entryRefused = (values: ProblemValues['ENTRY_REFUSED']): string => {
  switch (values.why) {
    case 'ledger':
      return refusalWords(refusals, values.refusal)
    case 'estimate-changed':
      return 'The estimate is no longer what this page showed you. Load the page again, read it and answer it.'
    case 'answered-before':
      return 'Your answer was already received. Load the page again to see it.'
    case 'another-name':
      return 'The name typed as a signature is not the name of who decides. Write both the same.'
    case 'known-before':
      return 'Something was already written under this id. Load the order again to see it.'
  }
}

const recordNames: Readonly<Record<RecordSubject, string>> = {
  person: 'person',
  place: 'place',
  instrument: 'instrument',
  tablet: 'tablet',
  'stock-item': 'part',
  'price-book': 'price book',
  'own-data': 'copy of a customer’s data',
}

const staleName = (what: ProblemValues['VERSION_STALE']['what']): string =>
  what in recordNames ? recordNames[what as RecordSubject] : what

const messageNotSent: Readonly<Record<ProblemValues['MESSAGE_NOT_SENT']['why'], string>> = {
  'no-mail-server':
    'No mail server is set. Print the link or show its code; whoever runs the server sets SMTP_URL and MAIL_FROM.',
  'no-text-folder': 'No folder for telephone texts is set. Whoever runs the server sets TEXT_FOLDER.',
  'no-address': 'The customer’s card has no e-mail address. Edit the customer first.',
  'no-number': 'The customer’s card has no telephone number. Edit the customer first.',
  'not-agreed': 'The customer has not agreed to this kind of message. Ask, and record the answer.',
  'no-estimate': 'There is no estimate yet. Issue one first.',
  'no-report': 'There is no sealed report yet. Seal it first.',
}

const unavailable: Readonly<
  Record<NonNullable<ProblemValues['SERVICE_UNAVAILABLE']['why']> | 'away', string>
> = {
  away: 'The database does not answer. Try again in a moment; nothing was lost.',
  'disk-full':
    'The disk of the database is full. Whoever runs the server has to make room; what was acknowledged before is kept.',
  'signing-key':
    'The key that seals reports cannot be used. Whoever runs the server finds in its log what is wrong and what to do; all else works.',
  'too-slow':
    'The database took too long and gave this request up. Look whether it was done, then try again.',
}

export const problems: ProblemsWording = {
  REQUEST_UNREADABLE: {
    title: 'The request cannot be read',
    detail: () => 'The request is not well formed. Send JSON text in UTF-8.',
  },
  ADDRESS_UNREADABLE: {
    title: 'The address cannot be read',
    detail: () => 'The address holds a percent sign that stands for no character of UTF-8. Correct it.',
  },
  ADDRESS_TOO_LONG: {
    title: 'The address is longer than any here',
    detail: () => 'A part of the address has more than 100 characters. No address of ours has; correct it.',
  },
  HEADERS_TOO_LARGE: {
    title: 'The head of the request is too large',
    detail: () => 'Address and headers may have 16 KB together. Send less.',
  },
  REQUEST_TOO_SLOW: {
    title: 'The request took too long to arrive',
    detail: () => 'The connection was closed before the whole request had arrived. Send it again.',
  },
  REQUEST_TOO_LARGE: {
    title: 'The request is larger than this route takes',
    detail: ({ limitMegabytes }) =>
      limitMegabytes === undefined
        ? 'Send less at once: fewer entries, or a smaller file.'
        : `At most ${limitMegabytes} MB are read here. Send less.`,
  },
  REQUEST_NOT_JSON: {
    title: 'This route takes JSON only',
    detail: () => 'Send the body as application/json (a report to be checked as application/pdf).',
  },
  REQUEST_COMPRESSED: {
    title: 'The body of the request is compressed',
    detail: () => 'Nothing is unpacked here. Send the body as it is, without Content-Encoding.',
  },
  FIELDS_INVALID: { title: 'Some fields are missing, unknown or out of range', detail: fieldsInvalid },
  ROUTE_NOT_FOUND: {
    title: 'There is no such address here',
    detail: ({ method, path }) => `${method} ${path} is not answered here.`,
  },
  TOO_MANY_REQUESTS: {
    title: 'Too many tries in a short time',
    detail: ({ seconds }) => `Wait ${seconds} seconds, then try again.`,
  },
  SERVICE_UNAVAILABLE: {
    title: 'The service cannot work just now',
    detail: ({ why }) => unavailable[why ?? 'away'],
  },
  INTERNAL_FAULT: {
    title: 'Something went wrong here',
    detail: ({ requestId }) =>
      `Try again. If it fails again, give the shop's owner this number: ${requestId}. What was acknowledged before is kept.`,
  },
  HOST_UNKNOWN: {
    title: 'This service is not known by that name',
    detail: ({ host }) =>
      `The request was for “${host}”. This service answers to localhost, to the names in its certificate and to PUBLIC_ADDRESS; whoever runs the server sets that.`,
  },
  REQUEST_FROM_ELSEWHERE: {
    title: 'The request came from another site',
    detail: () => 'Only pages of this service may write to it. Open the service itself and do it there.',
  },
  SESSION_MISSING: {
    title: 'Nobody is signed in',
    detail: ({ signInBy }) =>
      signInBy === 'pin'
        ? 'Sign in with your PIN and try again. Nothing was changed.'
        : 'Sign in and try again. Nothing was changed.',
  },
  SESSION_EXPIRED: {
    title: 'The session has ended',
    detail: () => 'Sign in again. Nothing was changed.',
  },
  SIGN_IN_REFUSED: {
    title: 'The name or the password is wrong',
    detail: ({ why }) => signInRefused[why ?? 'wrong'],
  },
  ...signInProblems,
  ...peopleProblems,
  ...erasureProblems,
  ...mergeProblems,
  SECOND_PERSON_REFUSED: {
    title: 'This person cannot be the second person here',
    detail: secondPersonRefused,
  },
  DEVICE_UNKNOWN: {
    title: 'This tablet is not enrolled',
    detail: () => 'Enroll this tablet with a code from the desk, then try again.',
  },
  DEVICE_KEY_TAKEN: {
    title: 'The server holds another key of this tablet',
    detail: () =>
      'This tablet has lost the key that it was enrolled with. Enroll it again with a code from the desk.',
  },
  SEALED_PARCEL_NOT_TAKEN: {
    title: 'The server does not take this sealed parcel',
    detail: () =>
      'It was not sealed to this server by one of its tablets, or the order takes nothing now. Keep it and send it again later.',
  },
  SEALED_PHOTO_NOT_TAKEN: {
    title: 'The server does not take this sealed photo',
    detail: () =>
      'It was not sealed to this server by one of its tablets, or no entry in the record names it. Look in the desk’s tray for the entry of the photo.',
  },
  SIGNATURE_REFUSED: {
    title: 'What this tablet handed in does not carry its signature',
    detail: ({ why }) =>
      why === 'no-key'
        ? 'The server holds no key of this tablet. Sign in on it with the server in reach, and it sends its key.'
        : 'The signature is not this tablet’s, or the entries were changed after it signed them. Nothing was taken. Enroll the tablet again with a code from the desk.',
  },
  ENROLLMENT_CODE_REFUSED: {
    title: 'The enrollment code is wrong, used or too old',
    detail: ({ minutes }) =>
      `Make a new code at the desk and type it within ${minutes} minutes. A code works once.`,
  },
  ACCESS_REFUSED: {
    title: 'This is not open to you',
    detail: ({ needs }) =>
      needs === 'desk'
        ? 'This is done at the desk. Sign in there, or ask an advisor.'
        : `This takes one of these roles: ${needs.join(', ')}. Ask someone who has one.`,
  },
  LINK_REFUSED: {
    title: 'The link is unknown, has ended or was withdrawn',
    detail: () => 'Open the newest link from the shop, or ask the shop for a new one.',
  },
  SECOND_STEP_NEEDED: {
    title: 'One more step',
    detail: () =>
      'Name and password are right. Type the code that your authenticator app shows, or a recovery code.',
  },
  SECOND_STEP_REFUSED: {
    title: 'The code is not right',
    detail: () =>
      'Each code is good once, and for about a minute. Wait for the next one and type that, or type a recovery code that you have not used.',
  },
  OWNER_CODE_REFUSED: {
    title: 'The name or the printed code is wrong',
    detail: () =>
      'Only an owner has such a code, it is good once, and the newest one counts. Check both and try again. After five wrong tries there is a wait. Without a code, another owner sets your password, or npm run owner:recover on the machine does.',
  },
  PASSKEY_REFUSED: {
    title: 'The passkey is not taken',
    detail: ({ why }) =>
      ({
        unknown:
          'Nobody of this shop has this passkey. It may have been removed. Choose another one, or sign in with your password.',
        'too-late':
          'It took more than five minutes, or was tried before. Press the button and try once more.',
        'does-not-fit':
          'What the passkey signed does not fit this address or what was asked of it. Try once more, or use your password.',
        'went-back':
          'This passkey has signed less often than before, so it may be a copy. Use your password, remove the passkey and add it again.',
        'kept-before': 'This device has a passkey of yours already. Use that one.',
        'too-many': 'You have ten passkeys. Remove one that you no longer use, then add this one.',
      })[why],
  },
  PASSKEY_NEEDS_NAME: {
    title: 'Passkeys do not work at this address',
    detail: ({ address, other }) =>
      `The desk is open at ${address}, and browsers make passkeys only for an address with a name. Open it at ${other}, or use your password.`,
  },
  PROOF_NEEDED: {
    title: 'Prove again that it is you',
    detail: () =>
      'What changes people, tablets, prices or texts needs a proof that is less than ten minutes old. Type your password again or use a passkey, then do it once more.',
  },
  CUSTOMER_NOT_FOUND: {
    title: 'There is no such customer',
    detail: () => 'Search for the customer again, or add a new one.',
  },
  VEHICLE_NOT_FOUND: {
    title: 'There is no such vehicle',
    detail: () => 'Search for the vehicle again, or add a new one.',
  },
  SHEET_NOT_FOUND: {
    title: 'There is no such specification sheet',
    detail: () => 'Choose a sheet from the list, or add a new one.',
  },
  ORDER_NOT_FOUND: {
    title: 'There is no such order',
    detail: () => 'Look for the order on the floor list, or search for its number.',
  },
  ORDER_WITHHELD: {
    title: 'This order is read at the desk only',
    detail: () =>
      'This order was begun before prices were kept apart, and holds some among its facts. Ask an advisor to open it at the desk.',
  },
  REPORT_NOT_FOUND: {
    title: 'There is no such report',
    detail: () => 'No such report is sealed. Open the order to see what is.',
  },
  PHOTO_NOT_FOUND: {
    title: 'There is no such photo',
    detail: () => 'No entry that is here names this photo, or it was not received yet. Load the order again.',
  },
  PHOTO_PIECE_WRONG: {
    title: 'This is not a piece of the photo',
    detail: ({ wanted, sent }) =>
      wanted === null
        ? 'The photo has fewer pieces. Ask which are missing and send those.'
        : `The piece has ${sent} bytes and must have ${wanted}. Cut the photo again and send the piece once more.`,
  },
  PHOTO_DAMAGED: {
    title: 'The photo changed on its way',
    detail: () => 'Its pieces do not make the photo that was taken. Send all of them again.',
  },
  PHOTO_UNREADABLE: {
    title: 'This file is not a photo',
    detail: () =>
      'It is broken, not a JPEG, PNG or WebP picture, or has more than 100 million pixels. Take it again with the camera.',
  },
  ...csvProblems,
  FIGURE_VERIFIED: {
    title: 'A second person has verified this figure',
    detail: () =>
      'Load the sheet again. If the figure is wrong, a lead, a manager or the owner changes it on the shop’s page.',
  },
  LINK_NOT_FOUND: {
    title: 'There is no such link',
    detail: () => 'Load the order again; this link is not one of its links.',
  },
  MESSAGE_NOT_WAITING: {
    title: 'This message does not wait any more',
    detail: () => 'Load the order again: it was sent, or somebody withdrew it.',
  },
  MESSAGE_NOT_SENT: {
    title: 'This message cannot be sent',
    detail: ({ why }) => messageNotSent[why],
  },
  REFUSED_ENTRY_NOT_FOUND: {
    title: 'There is no such refused entry',
    detail: () => 'Load the tray again; somebody may have settled it.',
  },
  RECORD_NOT_FOUND: {
    title: 'The shop keeps no such record',
    detail: ({ what }) =>
      `This shop has no such ${recordNames[what]}. Load the list again, and choose from it or add a new one.`,
  },
  ...stockProblems,
  VERSION_MISSING: {
    title: 'The version that you read is missing',
    detail: () => 'Send the version that you read in If-Match, as "3". Read it again first.',
  },
  VERSION_STALE: {
    title: 'Someone saved this in the meantime',
    detail: ({ what }) =>
      `Someone saved this ${staleName(what)} since you read it. Look at both versions, keep what is right, and save again.`,
  },
  VALUE_DOUBTFUL: {
    title: 'Is this right?',
    detail: ({ fields }) =>
      `${fields.length === 1 ? 'One value is' : `${fields.length} values are`} unusual. Look again at what is named: correct it, or say that it is right and save again. Nothing was changed yet.`,
  },
  IDEMPOTENCY_KEY_MISSING: {
    title: 'The request carries no Idempotency-Key',
    detail: () => 'Send an Idempotency-Key, made once when the form was opened.',
  },
  IDEMPOTENCY_KEY_REUSED: {
    title: 'The same Idempotency-Key came with other content',
    detail: () => 'This key was used for another request. Make a new key for what you want to do now.',
  },
  VIN_INVALID: {
    title: 'The VIN cannot be right',
    detail: (refusal) => `A VIN has ${refusal.allowed}. ${refusal.do}`,
  },
  VIN_TAKEN: {
    title: 'Another vehicle carries this VIN',
    detail: () => 'Search for the VIN and open that vehicle, or read this one again.',
  },
  ORDER_READ_ONLY: {
    title: 'Nothing can be added to this order',
    detail: ({ doubt }) => doubts.order[doubt.code](doubt.seq),
  },
  ENTRY_REFUSED: { title: 'This cannot be recorded now', detail: entryRefused },
  EVIDENCE_INVALID: {
    title: 'The evidence cannot be read',
    detail: ({ count }) => `${wrongFields(count)} not right. Correct what is named and send it again.`,
  },
  REPORT_NOT_DUE: {
    title: 'The report cannot be sealed yet',
    detail: (values) =>
      values.why === 'gate'
        ? gateWords(gates, values.gate)
        : values.why === 'says-the-same'
          ? `Report ${values.number} says all of it already. Nothing was sealed.`
          : 'This order is being written to. Wait until the bay is finished, then seal again.',
  },
}
