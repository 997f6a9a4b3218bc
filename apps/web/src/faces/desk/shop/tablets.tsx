import { type TabletContent, type TabletFacts, tablets, tabletsCsv } from '@bayledger/contract/tablets'
import { useQueryClient } from '@tanstack/react-query'
import { csvSource } from '../../../lib/csv-source.ts'
import type { Clock } from '../../../lib/format.ts'
import { recordSource } from '../../../lib/record-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import type { RowOption } from '../../../ui/rows/rows.ts'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import { TabletCode } from '../tablet-code.tsx'
import type { ShopPageProps } from './shop-page.ts'
import { tabletContent, tabletLine, tabletRows, tabletValues } from './tablet-rows.ts'
import { usePlaces } from './use-places.ts'

const csv = csvSource(tabletsCsv)

const source = recordSource<TabletContent, TabletFacts>(tablets)

const kindWith = (places: readonly RowOption[], clock: Clock): RecordKind<TabletContent, TabletFacts> => ({
  name: 'tablets',
  words: { one: 'tablet', all: 'tablets', add: 'Add a tablet' },
  source,
  rows: tabletRows(places),
  blank: {},
  toValues: tabletValues,
  toContent: tabletContent,
  title: ({ name }) => name,
  line: (kept) => tabletLine(kept, places, new Date().toISOString(), clock),
  touches: [['checklist']],
})

/** The shop's tablets: where each is and when it was seen; renamed, moved, put out; and a code for one more. */
export function TabletsPage({ open, onOpen }: ShopPageProps) {
  const places = usePlaces()
  const client = useQueryClient()
  const clock = useShopClock()
  if (places === null) return <StatusLine>Reading the places.</StatusLine>
  return (
    <>
      <RecordPage
        kind={kindWith(places, clock)}
        open={open}
        onOpen={onOpen}
        clock={clock}
        csv={<CsvExchange source={csv} name="tablets" onApplied={() => client.invalidateQueries()} />}
        beside={(kept) => <p>{tabletLine(kept, places, new Date().toISOString(), clock)}</p>}
      />
      {open === null ? <TabletCode /> : null}
    </>
  )
}
