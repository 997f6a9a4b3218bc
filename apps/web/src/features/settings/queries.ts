import { getSettings, listInstruments, listStock } from '@bayledger/contract/settings'
import { listSheets } from '@bayledger/contract/sheets'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

export const settingsQuery = queryOptions({
  queryKey: ['settings'],
  queryFn: ({ signal }) => call(getSettings, { signal }),
  staleTime: 60_000,
})

export const sheetsQuery = queryOptions({
  queryKey: ['sheets'],
  queryFn: ({ signal }) => call(listSheets, { signal }),
  staleTime: 60_000,
})

export const instrumentsQuery = queryOptions({
  queryKey: ['instruments'],
  queryFn: ({ signal }) => call(listInstruments, { signal }),
  staleTime: 15_000,
})

export const stockQuery = queryOptions({
  queryKey: ['stock'],
  queryFn: ({ signal }) => call(listStock, { signal }),
  staleTime: 15_000,
})
