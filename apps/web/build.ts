import { rm } from 'node:fs/promises'
import { build } from 'vite'
import { budgetKiB, customerBuild, type Face, outFolder, staffBuild } from './builds.ts'
import { compressAssets, isTooHeavy, type Output, scriptsOfFirstLoad } from './first-load.ts'

await rm(outFolder, { recursive: true, force: true })
const outputs = (await Promise.all([staffBuild, customerBuild].map(buildOnce))).flat()
const sizes = await compressAssets(outputs)

const faces: readonly Face[] = ['desk', 'bay', 'customer']
const tooHeavy = faces.filter((face) => {
  const scripts = scriptsOfFirstLoad(outputs, `${face}.html`)
  const kib = scripts.reduce((sum, script) => sum + (sizes.get(script) ?? Number.NaN), 0) / 1024
  const budget = budgetKiB[face]
  console.log(
    `${face.padEnd(8)} ${kib.toFixed(1).padStart(6)} KiB of script, brotli, of ${budget} KiB allowed`,
  )
  return isTooHeavy(kib, budget)
})

if (tooHeavy.length > 0) {
  console.error(
    `Too heavy: ${tooHeavy.join(', ')}. Load what the first screen does not need later, or take it out; then build again.`,
  )
  process.exit(1)
}

async function buildOnce(config: typeof staffBuild): Promise<Output[]> {
  const result = await build(config)
  if (!('output' in result) && !Array.isArray(result))
    throw new Error('The build is watching instead of building.')
  return [result].flat().flatMap((one) => one.output)
}
