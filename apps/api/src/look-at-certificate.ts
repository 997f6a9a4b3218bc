import { createPrivateKey, X509Certificate } from 'node:crypto'
import { ConfigProblem } from './config.ts'

/** Long enough to walk to the machine, short enough not to be passed over each time. */
const saidBeforeMs = 30 * 86_400_000

/**
 * What whoever keeps the machine has to know of the certificate of the service: that it ends soon or has ended; `null`: nothing.
 * @throws ConfigProblem where it cannot be read, or the key is not its own.
 */
export const lookAtCertificate = (
  { cert, key }: { readonly cert: string; readonly key: string },
  now: Date,
): string | null => {
  const certificate = readAs('TLS_CERT', 'certificate', () => new X509Certificate(cert))
  const privateKey = readAs('TLS_KEY', 'private key', () => createPrivateKey(key))
  if (!certificate.checkPrivateKey(privateKey))
    throw new ConfigProblem(
      'The key of TLS_KEY is not that of the certificate of TLS_CERT. Name the two files that belong together: host.pem and host-key.pem, where npm run certificate made them.',
    )
  const ends = new Date(certificate.validTo)
  if (ends.getTime() > now.getTime() + saidBeforeMs) return null
  const day = ends.toISOString().slice(0, 10)
  return ends <= now
    ? `The certificate of TLS_CERT ended on ${day}: tablets and browsers refuse it. Run npm run certificate with the same names, and start again.`
    : `The certificate of TLS_CERT ends on ${day}. Run npm run certificate with the same names before, and start again.`
}

const readAs = <T>(name: string, what: string, read: () => T): T => {
  try {
    return read()
  } catch (cause) {
    throw new ConfigProblem(`${name} names a file that holds no ${what} in PEM that can be read.`, { cause })
  }
}
