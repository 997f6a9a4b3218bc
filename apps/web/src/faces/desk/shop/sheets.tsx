import type { SheetContent } from '@bayledger/contract/sheets'
import { sheetsCsv } from '@bayledger/contract/sheets-csv'
import { figuresOf, figureWorth, SafetyFigure, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { figureWorthWords } from '@bayledger/wording/en/figure-worth'
import { useQueryClient } from '@tanstack/react-query'
import { csvSource } from '../../../lib/csv-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { useShopClock } from '../shop-clock.ts'
import { sheetContentIn, sheetValues } from './sheet-content.ts'
import { SheetFigures } from './sheet-figures.tsx'
import { SheetOrders } from './sheet-orders.tsx'
import { sheetRows } from './sheet-rows.ts'
import { type SheetFacts, sheetSource } from './sheet-source.ts'
import type { ShopPageProps } from './shop-page.ts'

const csv = csvSource(sheetsCsv)

const figureNames: Readonly<Record<SafetyFigure, string>> = {
  placard: 'label',
  studTorque: 'wheel torque',
  frequency: 'sensors',
}

const worthLine = (sheet: SpecificationSheet): string =>
  SafetyFigure.options
    .filter((figure) => figuresOf(sheet).includes(figure))
    .map((figure) => `${figureNames[figure]}: ${figureWorthWords[figureWorth(sheet, figure)]}`)
    .join(' · ')

const kind: RecordKind<SheetContent, SheetFacts> = {
  name: 'sheet-records',
  words: { one: 'sheet', all: 'sheets', add: 'Add a sheet' },
  source: sheetSource,
  rows: sheetRows,
  blank: {
    system: 'unknown',
    spare: 'unknown',
    pressureDisplay: 'no',
    locatesWheels: 'no',
    spareMonitored: 'no',
    staggered: 'no',
    'has.placard': 'missing',
    'has.studs': 'missing',
    'has.sensor': 'missing',
    'has.relearn': 'missing',
    'studs.retorqueMiles.from': '50',
    'studs.retorqueMiles.to': '100',
  },
  toValues: sheetValues,
  toContent: sheetContentIn,
  title: ({ name }) => name,
  line: ({ facts: { sheet } }) => worthLine(sheet),
  touches: [['sheets']],
  mayAdd: true,
}

/** The shop's own record of each kind of vehicle: its figures, where they were read, and what they are worth. */
export function SheetsPage({ open, onOpen }: ShopPageProps) {
  const clock = useShopClock()
  const client = useQueryClient()
  return (
    <RecordPage
      kind={kind}
      open={open}
      onOpen={onOpen}
      clock={clock}
      csv={
        <CsvExchange source={csv} name="specification-sheets" onApplied={() => client.invalidateQueries()} />
      }
      beside={({ facts: { sheet } }) => (
        <>
          <SheetFigures sheet={sheet} />
          <SheetOrders sheet={sheet} clock={clock} />
        </>
      )}
    />
  )
}
