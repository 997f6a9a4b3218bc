import { contract } from '@bayledger/contract/contract'
import { openApi } from '@bayledger/contract/open-api'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { openApiDocument } from '../../http/open-api.ts'

export const openApiRoutes = (parts: Parts): Binding[] => [
  bind(openApi)(async () => ({ status: 200, body: openApiDocument(contract, parts.publicAddress) })),
]
