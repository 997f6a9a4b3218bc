import type { Passkey } from '@bayledger/contract/passkeys'
import type { PasskeyRow } from '../sessions/service/use-passkeys.ts'

export const presentPasskey = ({ id, name, rpId, addedAt, lastUsedAt }: PasskeyRow): Passkey => ({
  passkeyId: id,
  name,
  rpId,
  addedAt: addedAt.toISOString(),
  lastUsedAt: lastUsedAt?.toISOString() ?? null,
})
