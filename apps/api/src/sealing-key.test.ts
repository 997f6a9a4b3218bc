import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { keptDigestKey } from './proof/digest-key.ts'
import { keptSealingKey } from './sealing-key.ts'

it('a key is kept where only its owner can read it, and is the same at the next start', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'keys-'))
  const permissions = (name: string) => statSync(join(folder, 'signing', name)).mode & 0o777
  try {
    const first = await keptSealingKey(folder)
    const digests = keptDigestKey(folder, false)
    expect(permissions('.')).toBe(0o700)
    for (const file of ['sealing-key.pem', 'digest-key.pem']) expect(permissions(file), file).toBe(0o600)
    expect((await keptSealingKey(folder)).publicKey).toBe(first.publicKey)
    expect(keptDigestKey(folder, true).fingerprint).toBe(digests.fingerprint)
  } finally {
    rmSync(folder, { recursive: true })
  }
})
