import { deskRoles } from '@bayledger/ledger/role'
import { ChecklistPage, useChecklistNeeds } from './checklist.tsx'
import { FilesPage } from './files.tsx'
import { InstrumentsPage, useInstrumentNeeds } from './instruments.tsx'
import { LotRecallPage } from './lot-recall.tsx'
import { NumbersPage } from './numbers.tsx'
import { PeoplePage } from './people.tsx'
import { PlacesPage } from './places.tsx'
import { PricesPage } from './prices.tsx'
import { PrivacyPage } from './privacy.tsx'
import { SecurityPage } from './security.tsx'
import { SheetsPage } from './sheets.tsx'
import { nothingNeeded, type ShopPage } from './shop-page.ts'
import { StockPage, useStockNeeds } from './stock.tsx'
import { TabletsPage } from './tablets.tsx'
import { TextsPage } from './texts.tsx'

/** One line a page; the order is that of the left list. */
export const shopPages: readonly ShopPage[] = [
  {
    path: 'checklist',
    name: 'Checklist',
    roles: ['manager', 'owner'],
    useNeeds: useChecklistNeeds,
    Page: ChecklistPage,
  },
  {
    path: 'numbers',
    name: 'Numbers',
    roles: ['manager', 'owner'],
    useNeeds: nothingNeeded,
    Page: NumbersPage,
  },
  { path: 'people', name: 'People', roles: ['owner'], useNeeds: nothingNeeded, Page: PeoplePage },
  { path: 'security', name: 'Security', roles: ['owner'], useNeeds: nothingNeeded, Page: SecurityPage },
  { path: 'privacy', name: 'Privacy', roles: ['owner'], useNeeds: nothingNeeded, Page: PrivacyPage },
  { path: 'places', name: 'Places', roles: ['owner'], useNeeds: nothingNeeded, Page: PlacesPage },
  { path: 'texts', name: 'Texts', roles: ['owner'], useNeeds: nothingNeeded, Page: TextsPage },
  {
    path: 'instruments',
    name: 'Wrenches and gauges',
    roles: ['manager', 'owner'],
    useNeeds: useInstrumentNeeds,
    Page: InstrumentsPage,
  },
  {
    path: 'tablets',
    name: 'Tablets',
    roles: ['manager', 'owner'],
    useNeeds: nothingNeeded,
    Page: TabletsPage,
  },
  { path: 'prices', name: 'Prices', roles: ['manager', 'owner'], useNeeds: nothingNeeded, Page: PricesPage },
  { path: 'stock', name: 'Stock', roles: deskRoles, useNeeds: useStockNeeds, Page: StockPage },
  { path: 'recall', name: 'Lot recall', roles: deskRoles, useNeeds: nothingNeeded, Page: LotRecallPage },
  {
    path: 'sheets',
    name: 'Specification sheets',
    roles: ['lead', 'manager', 'owner'],
    useNeeds: nothingNeeded,
    Page: SheetsPage,
  },
  {
    path: 'files',
    name: 'Files',
    roles: deskRoles,
    useNeeds: nothingNeeded,
    Page: FilesPage,
  },
]
