import * as contract from '@bayledger/contract/photos'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { takeSealedPhoto } from './service/take-sealed.ts'
import * as service from './service.ts'

export const photoRoutes = (parts: Parts): readonly Binding[] => [
  bind(contract.handInSealedPhoto)(async ({ body }) => {
    await takeSealedPhoto(parts, body)
    return { status: 200, body: { received: true } }
  }),
  bind(contract.getPhotoStatus)(async ({ deps, params }) => ({
    status: 200,
    body: await service.getPhotoStatus(deps, params.digest),
  })),
  bind(contract.putPhotoPiece)(async ({ deps, params, body }) => ({
    status: 200,
    body: await service.putPhotoPiece(deps, params.digest, { number: Number(params.piece), bytes: body }),
  })),
  bind(contract.listOrderPhotos)(async ({ deps, actor, params }) => ({
    status: 200,
    body: await service.listOrderPhotos(deps, actor, params.orderId),
  })),
  bind(contract.getOrderPhoto)(async ({ deps, actor, params }) => ({
    status: 200,
    bytes: await service.getOrderPhoto(deps, actor, params),
    fileName: `${params.digest.slice(0, 16)}.jpg`,
  })),
]
