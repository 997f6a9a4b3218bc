import { createHash, generateKeyPairSync, randomBytes, sign } from 'node:crypto'

/** A passkey in software: what an authenticator does with its key, made apart from the program's own checks. */
export type SoftwarePasskey = {
  readonly id: string
  /** What a browser sends of a new passkey. */
  readonly attest: (asked: Asked) => Sent
  /** What it sends of a signature. */
  readonly assert: (asked: Asked) => Sent
  /** How often it says that it has signed. */
  signCount: number
}

type Asked = {
  readonly challenge: string
  readonly rpId: string
  readonly origin?: string
  /** Whether it checked who holds it, by finger, face or PIN. */
  readonly verifies?: boolean
  readonly userHandle?: string
}
type Sent = { readonly id: string; readonly response: Readonly<Record<string, string>> }

const sha256 = (data: string | Uint8Array): Buffer => createHash('sha256').update(data).digest()
const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64url')

/** A byte string or a text in CBOR (RFC 8949), of fewer than 65,536 bytes. */
const cbor = (value: string | Uint8Array): Buffer => {
  const bytes = Buffer.from(value)
  const major = typeof value === 'string' ? 0x60 : 0x40
  const head =
    bytes.length < 24
      ? [major + bytes.length]
      : bytes.length < 256
        ? [major + 24, bytes.length]
        : [major + 25, bytes.length >> 8, bytes.length & 255]
  return Buffer.concat([Buffer.from(head), bytes])
}

/** `rpId`, flags (1 present, 4 verified, 64 with a new key) and count (Web Authentication, section 6.1). */
const authenticatorData = (
  rpId: string,
  flags: number,
  count: number,
  rest: Uint8Array = new Uint8Array(),
) => {
  const counted = Buffer.alloc(4)
  counted.writeUInt32BE(count)
  return Buffer.concat([sha256(rpId), Buffer.from([flags]), counted, rest])
}

const clientData = (type: 'webauthn.create' | 'webauthn.get', { challenge, rpId, origin }: Asked): Buffer =>
  Buffer.from(
    JSON.stringify({ type, challenge, origin: origin ?? `http://${rpId}:4310`, crossOrigin: false }),
  )

/** ECDSA with P-256 and SHA-256; its key as COSE writes it (RFC 9053, section 7.1.1). */
export const softwarePasskey = (): SoftwarePasskey => {
  const id = randomBytes(32)
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' })
  const { x = '', y = '' } = publicKey.export({ format: 'jwk' })
  const coordinates = [x, y].map((one) => cbor(Buffer.from(one, 'base64url')))
  const [atX = Buffer.alloc(0), atY = Buffer.alloc(0)] = coordinates
  const key = Buffer.concat([
    Buffer.from([0xa5, 0x01, 0x02, 0x03, 0x26, 0x20, 0x01, 0x21]),
    atX,
    Buffer.from([0x22]),
    atY,
  ])
  const passkey: SoftwarePasskey = {
    id: text(id),
    signCount: 0,
    attest: (asked) => {
      const credential = Buffer.concat([Buffer.alloc(16), Buffer.from([0, id.length]), id, key])
      const data = authenticatorData(asked.rpId, asked.verifies === false ? 65 : 69, 0, credential)
      const attestation = Buffer.concat([
        Buffer.from([0xa3]),
        ...[cbor('fmt'), cbor('none'), cbor('attStmt'), Buffer.from([0xa0])],
        ...[cbor('authData'), cbor(data)],
      ])
      return {
        id: text(id),
        response: {
          clientDataJSON: text(clientData('webauthn.create', asked)),
          attestationObject: text(attestation),
        },
      }
    },
    assert: (asked) => {
      const data = authenticatorData(asked.rpId, asked.verifies === false ? 1 : 5, passkey.signCount)
      const client = clientData('webauthn.get', asked)
      const signature = sign('sha256', Buffer.concat([data, sha256(client)]), privateKey)
      return {
        id: text(id),
        response: {
          clientDataJSON: text(client),
          authenticatorData: text(data),
          signature: text(signature),
          ...(asked.userHandle === undefined ? {} : { userHandle: asked.userHandle }),
        },
      }
    },
  }
  return passkey
}
