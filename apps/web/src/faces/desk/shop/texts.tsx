import { getTexts, putTexts, type TextsContent, textsCsv } from '@bayledger/contract/texts'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { csvSource } from '../../../lib/csv-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { textIn } from '../../../ui/record/record-rows.ts'
import { useShopClock } from '../shop-clock.ts'
import type { ShopPageProps } from './shop-page.ts'
import { textContent, textRows, textValues } from './text-rows.ts'

const csv = csvSource(textsCsv)

/** The texts are one record that every shop has: none is added, and it is always open. */
const kindOf = (shop: string): RecordKind<TextsContent> => ({
  name: 'texts',
  words: { one: 'text', all: 'texts', add: '' },
  source: {
    list: async (signal) => [(await call(getTexts, { signal })).record],
    read: (_id, signal) => call(getTexts, { signal }),
    create: () => Promise.reject(new Error('texts are never added')),
    put: (_id, version, content) => call(putTexts, { version, body: { content } }),
  },
  rows: (values) => textRows(shop, textIn(values, 'telephone') || null),
  blank: {},
  toValues: textValues,
  toContent: textContent,
  title: () => 'What the shop says in its own words',
  line: () => '',
  touches: [['settings']],
  isOne: true,
})

/** The shop's own words on reports and in messages, as versions. */
export function TextsPage({ onOpen }: ShopPageProps) {
  const client = useQueryClient()
  const settings = useQuery(settingsQuery)
  return (
    <RecordPage
      kind={kindOf(settings.data?.shop.name ?? '')}
      open="texts"
      onOpen={onOpen}
      clock={useShopClock()}
      csv={<CsvExchange source={csv} name="texts" onApplied={() => client.invalidateQueries()} />}
    />
  )
}
