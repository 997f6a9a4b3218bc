import { create } from 'qrcode'

/**
 * A QR code (ISO/IEC 18004, error correction M) as one filled path of horizontal bars, with the quiet zone of
 * four modules left free inside `side` points.
 */
export const qrPath = (text: string, x: number, y: number, side: number): string => {
  const { modules } = create(text, { errorCorrectionLevel: 'M' })
  const quiet = 4
  const module = side / (modules.size + 2 * quiet)
  const bars: string[] = []
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (!modules.get(row, column)) continue
      const start = column
      while (column + 1 < modules.size && modules.get(row, column + 1)) column += 1
      const left = x + (quiet + start) * module
      const right = x + (quiet + column + 1) * module
      const top = y + (quiet + row) * module
      bars.push(`M ${left} ${top} L ${right} ${top} L ${right} ${top + module} L ${left} ${top + module} Z`)
    }
  }
  return bars.join(' ')
}
