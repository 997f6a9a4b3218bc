import { argon2, randomBytes, timingSafeEqual } from 'node:crypto'
import { promisify } from 'node:util'

const derive = promisify(argon2)

/** The minimum for argon2id in OWASP's Password Storage Cheat Sheet: 19 MiB, 2 passes, 1 lane. */
const cost = { memory: 19_456, passes: 2, parallelism: 1 } as const
const tagLength = 32

/** A password or PIN as it is stored: argon2id (RFC 9106) in the usual `$argon2id$…` text. Takes about 50 ms. */
export const hashPassword = async (password: string): Promise<string> => {
  const nonce = randomBytes(16)
  const tag = await derive('argon2id', { ...cost, nonce, tagLength, message: Buffer.from(password, 'utf8') })
  return `$argon2id$v=19$m=${cost.memory},t=${cost.passes},p=${cost.parallelism}$${unpadded(nonce)}$${unpadded(tag)}`
}

export const passwordMatches = async (password: string, stored: string): Promise<boolean> => {
  const parts = /^\$argon2id\$v=19\$m=(\d+),t=(\d+),p=(\d+)\$([^$]+)\$([^$]+)$/.exec(stored)
  if (!parts) throw new Error('a stored password is not argon2id text')
  const [, memory, passes, parallelism, nonce = '', tag = ''] = parts
  const wanted = Buffer.from(tag, 'base64')
  const found = await derive('argon2id', {
    memory: Number(memory),
    passes: Number(passes),
    parallelism: Number(parallelism),
    nonce: Buffer.from(nonce, 'base64'),
    tagLength: wanted.length,
    message: Buffer.from(password, 'utf8'),
  })
  return timingSafeEqual(found, wanted)
}

/** Takes as long as a real comparison, so that timing does not reveal whether a name exists. */
export const spendPasswordTime = async (password: string): Promise<false> => {
  await derive('argon2id', {
    ...cost,
    nonce: randomBytes(16),
    tagLength,
    message: Buffer.from(password, 'utf8'),
  })
  return false
}

const unpadded = (bytes: Buffer): string => bytes.toString('base64').replace(/=+$/, '')
