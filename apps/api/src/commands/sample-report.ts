import { writeFile } from 'node:fs/promises'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { sealReport } from '@bayledger/report/seal'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { demoReport } from './demo-report.ts'

const usage = 'usage: npm run -s report:sample -- out.pdf [order]'

/** Writes the sealed report of one of the demo's finished orders: no server, no database, and a key made for this one file. */
const writeSample = async (path: string, orderNumber: string): Promise<void> => {
  const content = demoReport(orderNumber)
  const identity = await createSigningIdentity({
    commonName: `${content.pageOne.shop.name} (sample)`,
    notBefore: content.composedAt,
    days: 3_650,
  })
  const sealed = await sealReport(await drawReport(content), {
    certificate: identity.certificatePem,
    privateKey: identity.privateKeyPem,
    reason: `Report ${content.reportNumber} of order ${content.orderNumber}`,
    signedAt: content.composedAt,
  })
  await writeFile(path, sealed)
}

const [path, orderNumber = 'T-2601', ...more] = process.argv.slice(2)
if (!path || more.length > 0) {
  console.error(`Name one file to write the sealed report to; ${usage}`)
  process.exitCode = 2
} else {
  try {
    await writeSample(path, orderNumber)
  } catch (error) {
    console.error(
      `The sample report was not written to ${path}: ${error instanceof Error ? error.message : error}`,
    )
    process.exitCode = 1
  }
}
