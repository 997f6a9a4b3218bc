import { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { recordEndpoints } from './record.ts'

/** `openEstimates`: orders in work with an estimate, whose prices stay. `inSeason`: the words of the seasons of today. */
const PriceBookFacts = z.strictObject({ openEstimates: z.int(), inSeason: z.array(z.string()) })
export type PriceBookFacts = z.infer<typeof PriceBookFacts>

const editors = ['manager', 'owner'] as const

const { list, read, put } = recordEndpoints({
  name: { one: 'PriceBook', all: 'PriceBooks' },
  path: '/api/price-book',
  words: { one: 'price book', all: 'price book' },
  roles: editors,
  content: PriceBookContent,
  facts: PriceBookFacts,
  proof: 'recent',
})

/** A shop has one price book, under the shop's own id. Saving makes a version; estimates that were issued keep theirs. */
export const priceBook = { list, read, put }

/** The price book in its newest version, as CSV and back: what a file changes is one version of it. */
export const pricesCsv = csvEndpoints({
  name: 'Prices',
  words: 'prices',
  path: '/api/price-book',
  roles: editors,
  problems: ['RECORD_NOT_FOUND'],
  proof: 'recent',
})
