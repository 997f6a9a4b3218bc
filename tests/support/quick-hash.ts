import { argon2Sync, randomBytes } from 'node:crypto'

const cost = { memory: 8, passes: 1, parallelism: 1 } as const

/**
 * A password or PIN as the service stores it, at the least cost that argon2id has (RFC 9106, 3.1). The service compares at the
 * cost that is stored with each hash; what it stores itself costs 40 ms of a core at each sign-in, more than most
 * requests of a test together.
 */
export const quickHash = async (password: string): Promise<string> => {
  const nonce = randomBytes(16)
  const tag = argon2Sync('argon2id', {
    ...cost,
    nonce,
    tagLength: 32,
    message: Buffer.from(password, 'utf8'),
  })
  const [salt, digest] = [nonce, tag].map((bytes) => bytes.toString('base64').replace(/=+$/, ''))
  return `$argon2id$v=19$m=${cost.memory},t=${cost.passes},p=${cost.parallelism}$${salt}$${digest}`
}
