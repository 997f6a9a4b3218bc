import {
  type InstrumentContent,
  type InstrumentFacts,
  instruments,
  instrumentsCsv,
} from '@bayledger/contract/instruments'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { csvSource } from '../../../lib/csv-source.ts'
import { recordSource } from '../../../lib/record-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import type { RowOption } from '../../../ui/rows/rows.ts'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import {
  instrumentContent,
  instrumentLine,
  instrumentNeeds,
  instrumentRows,
  instrumentValues,
} from './instrument-rows.ts'
import type { ShopPageProps } from './shop-page.ts'
import { TorquedWheels } from './torqued-wheels.tsx'
import { usePlaces } from './use-places.ts'

const source = recordSource<InstrumentContent, InstrumentFacts>(instruments)

const csv = csvSource(instrumentsCsv)

/** YYYY-MM-DD in UTC, as the ledger compares days. */
const today = (): string => new Date().toISOString().slice(0, 10)

const kindWith = (places: readonly RowOption[]): RecordKind<InstrumentContent, InstrumentFacts> => ({
  name: 'registered-instruments',
  words: { one: 'wrench or gauge', all: 'wrenches and gauges', add: 'Add a wrench or gauge' },
  source,
  rows: instrumentRows(places),
  blank: {
    rangeUnit: 'lbf·ft',
    offsetPsi: '0',
    quarantined: 'no',
    ...(places.length === 1 ? { locationId: places[0]?.value ?? '' } : {}),
  },
  toValues: instrumentValues,
  toContent: instrumentContent,
  title: ({ code, kind }) => `${code}, ${kind === 'wrench' ? 'torque wrench' : 'tire gauge'}`,
  line: (kept) => instrumentLine(kept, today()),
  touches: [['instruments'], ['checklist']],
  mayAdd: true,
})

/** Wrenches and gauges: what each is good for, until when, and what counts on it. */
export function InstrumentsPage({ open, onOpen }: ShopPageProps) {
  const places = usePlaces()
  const clock = useShopClock()
  const client = useQueryClient()
  if (places === null) return <StatusLine>Reading the places.</StatusLine>
  return (
    <RecordPage
      kind={kindWith(places)}
      open={open}
      onOpen={onOpen}
      clock={clock}
      csv={<CsvExchange source={csv} name="instruments" onApplied={() => client.invalidateQueries()} />}
      beside={({ id, content }) =>
        content.kind === 'wrench' ? (
          <TorquedWheels
            key={id}
            instrumentId={id}
            code={content.code}
            goodOn={content.calibratedOn}
            clock={clock}
          />
        ) : null
      }
    />
  )
}

/** For the left list: what is overdue, and what is due within a week. */
export const useInstrumentNeeds = (): string | null => {
  const list = useQuery({
    queryKey: ['registered-instruments'],
    queryFn: ({ signal }) => source.list(signal),
  })
  return list.data === undefined ? null : instrumentNeeds(list.data, today())
}
