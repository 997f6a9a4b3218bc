import * as contract from '@bayledger/contract/texts'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { textsCsv } from './service/texts-csv.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const textRoutes: readonly Binding[] = [
  bind(contract.getTexts)(async ({ deps }) => {
    const read = await service.getTexts(deps)
    return { status: 200, body: read, headers: etag(read.record) }
  }),
  bind(contract.putTexts)(async ({ deps, actor, version, body }) => {
    const saved = await service.putTexts(deps, actor, version, body.content)
    return { status: 200, body: saved, headers: etag(saved) }
  }),
  ...bindCsv(contract.textsCsv, 'texts.csv', textsCsv),
]
