import { type PriceBookFacts, priceBook, pricesCsv } from '@bayledger/contract/prices'
import type { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import { useQueryClient } from '@tanstack/react-query'
import { csvSource } from '../../../lib/csv-source.ts'
import { recordSource } from '../../../lib/record-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { useShopClock } from '../shop-clock.ts'
import { priceContent, priceRows, priceValues } from './price-rows.ts'
import type { ShopPageProps } from './shop-page.ts'

const csv = csvSource(pricesCsv)

const kind: RecordKind<PriceBookContent, PriceBookFacts> = {
  name: 'price-book',
  words: { one: 'price book', all: 'prices', add: 'Set the prices' },
  source: recordSource(priceBook),
  rows: priceRows,
  blank: {},
  toValues: priceValues,
  toContent: priceContent,
  title: () => 'The price book',
  line: ({ version, content, facts }) =>
    [
      `version ${version}`,
      `labor $${(content.laborCentsPerHour / 100).toFixed(2)} an hour`,
      `tax ${content.taxRatePercentThousandths / 1_000} %`,
      ...facts.inSeason.map((words) => `in season: ${words}`),
    ].join(' · '),
  touches: [['settings'], ['checklist']],
  isOne: true,
}

/** All that the shop asks money for: works, parts, fees, tax, discounts and seasons. */
export function PricesPage({ open, onOpen }: ShopPageProps) {
  const client = useQueryClient()
  return (
    <RecordPage
      kind={kind}
      open={open}
      onOpen={onOpen}
      clock={useShopClock()}
      csv={<CsvExchange source={csv} name="prices" onApplied={() => client.invalidateQueries()} />}
      beside={({ facts }) => <p>{openEstimateWords(facts)}</p>}
    />
  )
}

/** What a change does to estimates that are out: nothing. */
const openEstimateWords = ({ openEstimates, inSeason }: PriceBookFacts): string =>
  [
    openEstimates === 0
      ? 'No open order has an estimate.'
      : `${openEstimates} open ${openEstimates === 1 ? 'order has an estimate, which keeps its' : 'orders have an estimate, and each keeps its'} prices: a version that was issued is frozen.`,
    'What is built from now on takes the new prices.',
    ...(inSeason.length === 0 ? [] : [`Today these seasons change them: ${inSeason.join(', ')}.`]),
  ].join(' ')
