/** The rows of a CSV file by the names in its first line (RFC 4180), read without the code that wrote it. */
export const csvRows = <Column extends string>(text: string): Readonly<Record<Column, string>>[] => {
  const lines: string[][] = [[]]
  for (const [, quoted, plain = '', end] of text
    .replace(/^\uFEFF/, '')
    .matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    lines.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain)
    if (end === '\r\n') lines.push([])
    if (end === '') break
  }
  const [names = [], ...rows] = lines.filter((line) => line.some((cell) => cell !== ''))
  return rows.map(
    (row) =>
      Object.fromEntries(names.map((name, index) => [name, row[index] ?? ''])) as Readonly<
        Record<Column, string>
      >,
  )
}
