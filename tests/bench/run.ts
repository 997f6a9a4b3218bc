import { cpus } from 'node:os'
import { benchReckoning } from './reckoning-bench.ts'
import { benchReport } from './report-bench.ts'
import { benchService } from './service-bench.ts'
import { printTable } from './table.ts'

/** `npm run bench`: how fast we are, as ratios inside one run on this machine. docs/testing.md says how to read it. */
const begun = performance.now()
const [processor] = cpus()
console.log(`Node ${process.version}, ${cpus().length} × ${processor?.model.trim() ?? 'unknown processor'}`)
printTable([...(await benchService()), ...(await benchReckoning()), ...(await benchReport())])
console.log(`${((performance.now() - begun) / 1000).toFixed(0)} s. How to read it: docs/testing.md`)
