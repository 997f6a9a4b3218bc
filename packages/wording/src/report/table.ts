/** A table's caption and the headings of its columns. */
export type TableWording<Column extends string> = {
  readonly caption: string
  readonly columns: Readonly<Record<Column, string>>
}
