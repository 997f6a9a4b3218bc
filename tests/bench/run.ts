import { cpus } from 'node:os'
import { benchAppend } from './append-bench.ts'
import { benchBay } from './bay-bench.ts'
import { benchDesk } from './desk-bench.ts'
import { benchFloor } from './floor-bench.ts'
import { benchSearch } from './grown/search-bench.ts'
import { benchLive } from './live-bench.ts'
import { benchReckoning } from './reckoning-bench.ts'
import { benchReport } from './report-bench.ts'
import { withRunningShop } from './running-shop.ts'
import { scriptSizes } from './script-sizes.ts'
import { type Figure, type Line, printLines, printTable } from './table.ts'

/**
 * `npm run bench`: how fast we are, as ratios inside one run on this machine; `-- --json` gives one object a line, and
 * `-- --grown` measures searching in a shop that grew, and nothing else.
 * docs/testing.md says how to read it.
 */
const isForPrograms = process.argv.includes('--json')
const begun = performance.now()
const [processor] = cpus()
if (!isForPrograms)
  console.log(`Node ${process.version}, ${cpus().length} × ${processor?.model.trim() ?? 'unknown processor'}`)
const { lines, figures } = process.argv.includes('--grown') ? await benchGrown() : await benchAll()
if (isForPrograms) printLines(lines, figures)
else {
  printTable(lines, figures)
  console.log(`${((performance.now() - begun) / 1000).toFixed(0)} s. How to read it: docs/testing.md`)
}

async function benchAll(): Promise<{ lines: readonly Line[]; figures: readonly Figure[] }> {
  const service = await withRunningShop(async (shop) => ({
    lines: [...(await benchAppend(shop)), ...(await benchFloor(shop))],
    figures: [...(await benchBay(shop)), ...(await benchDesk(shop)), ...(await benchLive(shop))],
  }))
  return {
    lines: [...service.lines, ...(await benchReckoning()), ...(await benchReport())],
    figures: [...service.figures, ...scriptSizes()],
  }
}

async function benchGrown(): Promise<{ lines: readonly Line[]; figures: readonly Figure[] }> {
  const figures = await withRunningShop((shop) => benchSearch(shop, (line) => console.error(line)))
  return { lines: [], figures }
}
