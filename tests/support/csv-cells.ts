/** Changes cells of the row of a vehicle in a CSV file as we write it; its line is the one that begins with its name. */
export const withCells = (file: string, vehicle: string, cells: Readonly<Record<string, string>>): string => {
  const [header = '', ...lines] = file.split('\r\n')
  const names = header.replace('\uFEFF', '').split(',')
  return [
    header,
    ...lines.map((line) => {
      if (!line.startsWith(vehicle)) return line
      const parts = line.match(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)?.slice(0, names.length) ?? []
      return parts.map((part, index) => cells[names[index] ?? ''] ?? part.replace(/,$/, '')).join(',')
    }),
  ].join('\r\n')
}
