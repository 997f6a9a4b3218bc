import { writeFileSync } from 'node:fs'
import bwipjs from 'bwip-js/node'

/**
 * A film for Chromium's fake camera (`--use-file-for-fake-video-capture`), in the format YUV4MPEG2: barcodes in black on
 * white, drawn by bwip-js, which knows nothing of the reader that has to read them.
 */
const width = 1280
const height = 720
const framesEach = 3

export type Barcode = {
  readonly symbology: 'code39' | 'code128' | 'datamatrix' | 'qrcode'
  readonly text: string
}

/** Shows each barcode for a second and a half, over and over. */
export const writeFilm = (file: string, barcodes: readonly Barcode[]): void => {
  const frames = barcodes.flatMap((barcode) => {
    const frame = frameOf(barcode)
    return Array.from({ length: framesEach }, () => frame)
  })
  writeFileSync(
    file,
    Buffer.concat([
      Buffer.from(`YUV4MPEG2 W${width} H${height} F2:1 Ip A1:1 C420jpeg\n`),
      ...frames.flatMap((frame) => [Buffer.from('FRAME\n'), frame]),
    ]),
  )
}

/** One picture: brightness for every pixel, then no color for every four. */
const frameOf = ({ symbology, text }: Barcode): Buffer => {
  const frame = Buffer.alloc((width * height * 3) / 2, 128)
  frame.fill(235, 0, width * height)
  const isDark = darkModules({ symbology, text })
  const scale = Math.floor(Math.min((width * 0.86) / isDark.columns, (height * 0.6) / isDark.rows))
  const left = Math.floor((width - isDark.columns * scale) / 2)
  const top = Math.floor((height - isDark.rows * scale) / 2)
  for (let y = 0; y < isDark.rows * scale; y += 1)
    for (let x = 0; x < isDark.columns * scale; x += 1)
      if (isDark.at(Math.floor(x / scale), Math.floor(y / scale))) frame[(top + y) * width + left + x] = 16
  return frame
}

type Modules = {
  readonly columns: number
  readonly rows: number
  readonly at: (column: number, row: number) => boolean
}

const darkModules = ({ symbology, text }: Barcode): Modules => {
  const [symbol] = bwipjs.raw(symbology, text, {}) as unknown as [
    { sbs: number[] } | { pixs: number[]; pixx: number; pixy: number },
  ]
  if ('pixs' in symbol)
    return {
      columns: symbol.pixx,
      rows: symbol.pixy,
      at: (column, row) => symbol.pixs[row * symbol.pixx + column] === 1,
    }
  // Widths of bars and of the spaces between them, in turn.
  const bars = symbol.sbs.flatMap((span, index) => Array.from({ length: span }, () => index % 2 === 0))
  return { columns: bars.length, rows: 60, at: (column) => bars[column] === true }
}
