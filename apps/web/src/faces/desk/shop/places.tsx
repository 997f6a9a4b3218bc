import { type PlaceContent, places, placesCsv } from '@bayledger/contract/places'
import { useQueryClient } from '@tanstack/react-query'
import { csvSource } from '../../../lib/csv-source.ts'
import { recordSource } from '../../../lib/record-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { useShopClock } from '../shop-clock.ts'
import { placeContent, placeRows, placeValues } from './place-rows.ts'
import type { ShopPageProps } from './shop-page.ts'

const csv = csvSource(placesCsv)

const kind: RecordKind<PlaceContent> = {
  name: 'places',
  words: { one: 'place', all: 'places', add: 'Add a place' },
  source: recordSource(places),
  rows: placeRows,
  // The strictest reading, until the owner confirms what the law of the place requires.
  blank: {
    bays: '1',
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    'lawProfile.writtenEstimateAboveCents': '0.00',
    'lawProfile.overrun.kind': 'none',
    'lawProfile.consentChannels': 'in-person,link,telephone',
    'lawProfile.retentionYears': '7',
    'lawProfile.secondPersonForTorque': 'yes',
  },
  toValues: placeValues,
  toContent: placeContent,
  title: ({ name }) => name,
  line: ({ content: { address, bays, altitudeFeet } }) =>
    [address || 'no address yet', bays === 1 ? '1 bay' : `${bays} bays`, `${altitudeFeet} ft`].join(' · '),
  touches: [['settings']],
  mayAdd: true,
}

/** The shop's places: where they are, when they are open, and what the law asks for there. */
export function PlacesPage({ open, onOpen }: ShopPageProps) {
  const client = useQueryClient()
  return (
    <RecordPage
      kind={kind}
      open={open}
      onOpen={onOpen}
      clock={useShopClock()}
      csv={<CsvExchange source={csv} name="places" onApplied={() => client.invalidateQueries()} />}
    />
  )
}
