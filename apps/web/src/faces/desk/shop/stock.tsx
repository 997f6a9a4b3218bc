import { type StockContent, type StockItem, stockCsv, stockItems } from '@bayledger/contract/stock'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { sessionQuery } from '../../../features/people/queries.ts'
import { csvSource } from '../../../lib/csv-source.ts'
import { recordSource } from '../../../lib/record-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import type { RowOption } from '../../../ui/rows/rows.ts'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import type { ShopPageProps } from './shop-page.ts'
import { StockMoves } from './stock-moves.tsx'
import { stockContent, stockLine, stockNeeds, stockRows, stockValues } from './stock-rows.ts'
import { TransfersOnTheWay } from './transfers.tsx'
import { usePlaces } from './use-places.ts'

const name = 'stock-items'
const source = recordSource<StockContent, StockItem['facts']>(stockItems)
const csv = csvSource(stockCsv)
const today = (): string => new Date().toISOString().slice(0, 10)

const kindWith = (
  places: readonly RowOption[],
  mayAdd: boolean,
): RecordKind<StockContent, StockItem['facts']> => ({
  name,
  words: { one: 'part', all: 'parts', add: 'Put a part on the list' },
  source,
  rows: stockRows(places),
  blank: { kind: 'sensor', ...(places.length === 1 ? { locationId: places[0]?.value ?? '' } : {}) },
  toValues: stockValues,
  toContent: stockContent,
  title: ({ partNumber, locationId }) =>
    `${partNumber}, ${places.find(({ value }) => value === locationId)?.label ?? 'another place'}`,
  line: (item) => stockLine(item, today()),
  touches: [['stock']],
  mayAdd,
})

/** What lies on the shelves of all places: what each part is, how many there are, and what moved them. */
export function StockPage({ open, onOpen }: ShopPageProps) {
  const places = usePlaces()
  const session = useQuery(sessionQuery)
  const clock = useShopClock()
  const client = useQueryClient()
  const mayEdit = (session.data?.staff.roles ?? []).some((role) => role === 'manager' || role === 'owner')
  if (places === null) return <StatusLine>Reading the places.</StatusLine>
  return (
    <>
      {open === null ? <TransfersOnTheWay places={places} clock={clock} /> : null}
      <RecordPage
        kind={kindWith(places, mayEdit)}
        open={open}
        onOpen={onOpen}
        clock={clock}
        csv={
          mayEdit ? (
            <CsvExchange source={csv} name="stock" onApplied={() => client.invalidateQueries()} />
          ) : null
        }
        beside={(item) => <StockMoves key={item.id} item={item} places={places} clock={clock} />}
      />
    </>
  )
}

/** For the left list: how many parts need something. */
export const useStockNeeds = (): string | null => {
  const list = useQuery({ queryKey: [name], queryFn: ({ signal }) => source.list(signal) })
  const needing = (list.data ?? []).filter((item) => stockNeeds(item, today()).length > 0).length
  return needing === 0 ? null : `${needing} ${needing === 1 ? 'part needs' : 'parts need'} a look`
}
