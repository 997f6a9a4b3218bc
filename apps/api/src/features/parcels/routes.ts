import * as contract from '@bayledger/contract/parcels'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { handIn, takeSealed } from './service.ts'

export const parcelRoutes = (parts: Parts): readonly Binding[] => [
  bind(contract.handInParcel)(async ({ deps, actor, body }) => ({
    status: 200,
    body: { results: await handIn(deps, actor.deviceId, body) },
  })),
  bind(contract.handInSealedParcel)(async ({ body }) => {
    await takeSealed(parts, body.box)
    return { status: 200, body: { received: true } }
  }),
]
