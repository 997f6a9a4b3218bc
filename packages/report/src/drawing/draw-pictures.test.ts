import { beforeAll, describe, expect, it } from 'vitest'
import { drawnJpeg } from '../../../../tests/support/pictures.ts'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import { finishedOrder } from '../../test-support/finished-order.ts'
import { withFile } from '../../test-support/temporary-file.ts'
import type { Picture, ReportContent } from '../content.ts'
import { drawReport } from './draw-report.ts'

let pictures: readonly Picture[]
let report: ReportContent
let pdf: Uint8Array
beforeAll(async () => {
  const sizes = [
    { width: 720, height: 540 },
    { width: 405, height: 720 },
    { width: 720, height: 300 },
  ]
  pictures = await Promise.all(
    sizes.map(async (size, index) => ({
      alt: `Photo of left front, stem, 10:4${index} AM`,
      caption: `Entry ${index}: Left front, stem. Taken 10:4${index} AM.`,
      jpeg: { ...size, bytes: await drawnJpeg(size) },
    })),
  )
  report = { ...finishedOrder, sections: [{ title: 'Photos', blocks: [{ kind: 'pictures', pictures }] }] }
  pdf = await drawReport(report)
}, 60_000)

const said = (tool: 'pdfimages' | 'pdfinfo' | 'pdftotext', options: readonly string[], rest: string[] = []) =>
  withFile(pdf, (path) => runOutsideTool(tool, [...options, path, ...rest]).output)

describe('photos in a report', () => {
  it('are in the file as they came, for pdfimages', () => {
    const rows = said('pdfimages', ['-list']).trim().split('\n').slice(2)
    expect(rows.map((row) => row.trim().split(/\s+/).slice(3, 5).map(Number))).toEqual(
      pictures.map(({ jpeg }) => [jpeg.width, jpeg.height]),
    )
    for (const row of rows) expect(row).toContain('jpeg')
  })

  it('are figures with words in their place, and captions beside them', () => {
    expect(said('pdfinfo', ['-struct']).match(/^ *Figure\b/gm)?.length).toBeGreaterThanOrEqual(3)
    const text = said('pdftotext', ['-raw'], ['-']).replace(/\s+/g, ' ')
    for (const { caption } of pictures) expect(text).toContain(caption)
    const unpacked = withFile(pdf, (path) =>
      runOutsideTool('qpdf', ['--qdf', '--object-streams=disable', path, '-']),
    )
    for (const { alt } of pictures) expect(unpacked.output).toContain(`/Alt (${alt})`)
  })

  it('make a well-formed file, the same one every time', async () => {
    expect(withFile(pdf, (path) => runOutsideTool('qpdf', ['--check', path])).status).toBe(0)
    expect(Buffer.from(await drawReport(structuredClone(report))).equals(Buffer.from(pdf))).toBe(true)
  })
})
