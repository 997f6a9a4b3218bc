import * as contract from '@bayledger/contract/passkeys'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from '../sessions/service/use-passkeys.ts'
import { presentPasskey } from './present.ts'

export const passkeyRoutes: readonly Binding[] = [
  bind(contract.challengeForProof)(async ({ deps, actor, from }) => ({
    status: 201,
    body: await service.challengeForProof(deps, actor, from),
  })),
  bind(contract.proveByPasskey)(async ({ deps, actor, body, from }) => {
    await service.proveByPasskey(deps, actor, body.passkey, from)
    return { status: 204 }
  }),
  bind(contract.challengeForPasskey)(async ({ deps, actor, from }) => ({
    status: 201,
    body: await service.challengeForPasskey(deps, actor, from),
  })),
  bind(contract.addPasskey)(async ({ deps, actor, body, from }) => ({
    status: 201,
    body: presentPasskey(await service.addPasskey(deps, actor, body, from)),
  })),
  bind(contract.listPasskeys)(async ({ deps, actor, params }) => ({
    status: 200,
    body: { passkeys: (await service.listPasskeys(deps, actor, params.id)).map(presentPasskey) },
  })),
  bind(contract.removePasskey)(async ({ deps, actor, params: { id, passkeyId } }) => {
    await service.removePasskey(deps, actor, { staffId: id, passkeyId })
    return { status: 204 }
  }),
]
