import type { TableWording } from './table.ts'

export type ReportPhotosWording = {
  readonly title: string
  readonly none: string
  readonly photos: TableWording<'of' | 'taken' | 'digest' | 'file'>
  readonly received: string
  readonly notReceived: string
  readonly caption: (entry: number, of: string, taken: string) => string
  readonly onlySome: (count: number) => string
}
