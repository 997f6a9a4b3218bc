import { csvEndpoints } from './csv-endpoints.ts'

/** Every specification sheet in its newest version, as CSV and back. Apart from the sheets that a tablet loads, which is no place for files. */
export const sheetsCsv = csvEndpoints({
  name: 'Sheets',
  words: 'specification sheets',
  path: '/api/sheets',
  roles: ['lead', 'manager', 'owner'],
})
