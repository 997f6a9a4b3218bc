import type { SigningTrouble } from '../signing/look-at-key.ts'

/** What is wrong with the key that seals a shop's reports, and what to do, for whoever runs the server. */
export const troubleWords = (shopName: string, folder: string, trouble: SigningTrouble): string =>
  `No report of ${shopName} can be sealed: ${wrong(folder, trouble)} Nothing else is affected, and reports that are sealed stay genuine.`

const rotate =
  'If it is gone for good, make a new key by npm run certificate -- rotate; earlier reports stay genuine at /check.'

const wrong = (folder: string, trouble: SigningTrouble): string => {
  switch (trouble.why) {
    case 'lost':
      return `its key is missing from ${folder}. Put certificate.pem and private-key.pem back from a backup, or copy them from the server that has sealed so far. ${rotate}`
    case 'key-only':
      return `certificate.pem is missing from ${folder}, beside its key. Put it back from a backup. ${rotate}`
    case 'certificate-only':
      return `private-key.pem is missing from ${folder}, beside its certificate. Put it back from a backup. ${rotate}`
    case 'certificate-unreadable':
      return `the certificate cannot be read. It is PEM text, in ${folder} or where SIGNING_CERT says. Put it back from a backup.`
    case 'key-unreadable':
      return `the private key cannot be read. It is PEM text without a passphrase, in ${folder} or where SIGNING_KEY says. Put it back from a backup.`
    case 'not-p256':
      return 'its key is not EC P-256 (prime256v1). docs/signing-certificate.md says what to buy.'
    case 'foreign-key':
      return `the private key in ${folder}, or where SIGNING_KEY says, belongs to another certificate. Put both back from the same backup.`
    case 'signs-wrong':
      return 'what its key signs does not verify. Put certificate and key back from a backup.'
    case 'not-yet-valid':
      return `the certificate is valid from ${trouble.from} to ${trouble.to}. Correct the clock of this machine, or put the certificate of before back.`
    case 'expired':
      return `the certificate was valid from ${trouble.from} to ${trouble.to}. Put the renewed one in its place; one that Bayledger made is renewed by npm run certificate -- rotate.`
    case 'earlier-key':
      return `this server holds an earlier key (${trouble.here.slice(0, 16)}…); the shop seals with ${trouble.shops.slice(0, 16)}… now. Copy certificate.pem and private-key.pem from the server that has it to ${folder}, or correct SIGNING_CERT and SIGNING_KEY.`
    case 'another-key':
      return `this server holds another key (${trouble.here.slice(0, 16)}…) than the shop’s reports are sealed with (${trouble.shops.slice(0, 16)}…). Several servers share one key: copy certificate.pem and private-key.pem to ${folder}, or correct SIGNING_CERT and SIGNING_KEY. If the shop shall seal with this key from now on, run npm run certificate -- rotate.`
  }
}
