import { composeReportContent } from '@bayledger/report/compose-content'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { sealReport } from '@bayledger/report/seal'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { drawWithPdfkitAlone } from '../../packages/report/test-support/pdfkit-alone.ts'
import { reportContext } from '../../packages/report/test-support/worked-context.ts'
import { workedState } from '../../packages/report/test-support/worked-state.ts'
import { interleave } from './interleave.ts'
import type { Line } from './table.ts'

/** The sealed report, in this process, against pdfkit that writes the same words on as many pages. */
export const benchReport = async (): Promise<Line[]> => {
  const compose = () => drawReport(composeReportContent(workedState, reportContext))
  const drawn = await compose()
  const identity = await createSigningIdentity({
    commonName: reportContext.shop.name,
    notBefore: '2026-01-01T00:00:00.000Z',
    days: 3_650,
  })
  const seal = (pdf: Uint8Array) =>
    sealReport(pdf, {
      certificate: identity.certificatePem,
      privateKey: identity.privateKeyPem,
      reason: 'bench',
      signedAt: reportContext.composedAt,
    })
  const bounds = { blocks: 4, block: 3, seconds: 10 }
  const alone = drawWithPdfkitAlone(composeReportContent(workedState, reportContext))
  const composing = await interleave(compose, alone, bounds)
  const sealing = await interleave(async () => seal(await compose()), compose, bounds)
  return [
    {
      name: 'report.compose.ratio',
      what: 'report, composed and drawn',
      against: 'pdfkit alone, same marks',
      ...composing,
      of: 'p50',
      goal: 1.3,
    },
    {
      name: null,
      what: `the same and sealed, ${Math.round(drawn.length / 1024)} KiB`,
      against: 'the same unsealed',
      ...sealing,
      of: 'p50',
      goal: null,
    },
  ]
}
