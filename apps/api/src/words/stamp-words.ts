import type { StampTrouble } from '../stamping/stamp-trouble.ts'

/** Why a report has no time-stamp, and what to do, for whoever runs the server. */
export const stampTroubleWords = (host: string, trouble: StampTrouble): string =>
  `The time-stamp authority at ${host} ${wrong(trouble)} Reports are sealed without a time-stamp, and one is asked for again each minute. docs/signing-certificate.md says more.`

const wrong = (trouble: StampTrouble): string => {
  switch (trouble.is) {
    case 'status':
      return `answered with HTTP status ${trouble.status}. Check the address, name and password in STAMP_URL.`
    case 'too-large':
    case 'token-too-large':
      return 'sent more than a time-stamp can be. Check the address in STAMP_URL.'
    case 'late':
      return 'did not answer in time. Check the network, or choose another authority.'
    case 'unreachable':
      return `cannot be reached (${trouble.code}). Check the address in STAMP_URL and the network.`
    case 'refused':
      return `refused: "${trouble.said}". Ask whoever runs it.`
    case 'malformed':
      return 'sent something that is no time-stamp. Check the address in STAMP_URL.'
    case 'another-nonce':
    case 'another-imprint':
      return 'sent the time-stamp of something else. Choose another authority.'
    case 'signature-wrong':
      return 'sent a time-stamp whose signature does not hold. Choose another authority.'
    case 'not-for-stamps':
      return 'signs with a certificate that is not for time-stamps. Choose another authority.'
    case 'certificate-not-named':
      return 'does not name its certificate by SHA-256 in the time-stamp, as RFC 5816 wants it. Choose another authority.'
    case 'unknown-authority':
      return 'has a certificate that leads to none of the roots that this machine trusts. Put its root into the file that STAMP_CA names, if you trust it.'
    case 'another-time':
      return `says that it is ${trouble.theirs}, and this machine says ${trouble.ours}. Correct the clock of this machine.`
  }
}
