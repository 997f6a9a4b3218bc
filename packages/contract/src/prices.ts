import { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import * as z from 'zod/mini'
import { CsvApplied, CsvApply, CsvPreview, csvFile, csvReply } from './csv.ts'
import { endpoint } from './endpoint.ts'
import { recordEndpoints } from './record.ts'

/** `openEstimates`: orders in work with an estimate, whose prices stay. `inSeason`: the words of the seasons of today. */
const PriceBookFacts = z.strictObject({ openEstimates: z.int(), inSeason: z.array(z.string()) })
export type PriceBookFacts = z.infer<typeof PriceBookFacts>

const editors = ['manager', 'owner'] as const
const access = { who: 'desk', roles: editors } as const

const { list, read, put } = recordEndpoints({
  name: { one: 'PriceBook', all: 'PriceBooks' },
  path: '/api/price-book',
  words: { one: 'price book', all: 'price book' },
  roles: editors,
  content: PriceBookContent,
  facts: PriceBookFacts,
})

/** A shop has one price book, under the shop's own id. Saving makes a version; estimates that were issued keep theirs. */
export const priceBook = { list, read, put }

export const exportPrices = endpoint({
  operationId: 'exportPrices',
  summary: 'The price book in its newest version, as CSV.',
  method: 'GET',
  path: '/api/price-book.csv',
  access,
  replies: { 200: csvReply },
  problems: ['RECORD_NOT_FOUND'],
})

export const previewPriceImport = endpoint({
  operationId: 'previewPriceImport',
  summary: 'What importing a CSV file of the price book would add, change and refuse; changes nothing.',
  method: 'POST',
  path: '/api/price-book/import/preview',
  access,
  ...csvFile,
  replies: { 200: CsvPreview },
  problems: ['CSV_UNREADABLE', 'RECORD_NOT_FOUND'],
})

export const importPrices = endpoint({
  operationId: 'importPrices',
  summary: 'Do what the preview of a CSV file showed, as one version of the price book.',
  method: 'POST',
  path: '/api/price-book/import',
  access,
  once: true,
  query: CsvApply,
  ...csvFile,
  replies: { 200: CsvApplied },
  problems: ['CSV_UNREADABLE', 'CSV_PREVIEW_STALE', 'CSV_ROWS_REFUSED', 'RECORD_NOT_FOUND'],
})
