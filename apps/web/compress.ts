import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod/mini'
import { compressFiles, isCompressible } from './compressed.ts'
import { budgetKiB, faces, firstLoadsFile, outFolder } from './faces.ts'
import { isTooHeavy } from './first-load.ts'

/**
 * Compresses what build.ts has named for what it holds, as far as no copy is there yet, and holds each face to its budget. It takes
 * some ten times as long as the build, and nothing but its own end waits for it: `npm start` serves meanwhile.
 */
const built = new Set((await readdir(join(outFolder, 'assets'))).map((file) => `assets/${file}`))
const missing = [...built].filter((file) => isCompressible(file) && !built.has(`${file}.br`))
await compressFiles(outFolder, missing)

const FirstLoads = z.record(z.enum(faces), z.array(z.string()))
const firstLoads = FirstLoads.parse(JSON.parse(await readFile(join(outFolder, firstLoadsFile), 'utf8')))

const kibOf = async (files: readonly string[]): Promise<number> => {
  const sizes = await Promise.all(files.map((file) => stat(join(outFolder, `${file}.br`))))
  return sizes.reduce((sum, { size }) => sum + size, 0) / 1024
}

const weights = await Promise.all(faces.map(async (face) => ({ face, kib: await kibOf(firstLoads[face]) })))
for (const { face, kib } of weights)
  console.log(
    `${face.padEnd(8)} ${kib.toFixed(1).padStart(6)} KiB of script, brotli, of ${budgetKiB[face]} KiB allowed`,
  )
const tooHeavy = weights.filter(({ face, kib }) => isTooHeavy(kib, budgetKiB[face]))
if (tooHeavy.length > 0) {
  console.error(
    `Too heavy: ${tooHeavy.map(({ face }) => face).join(', ')}. Load what the first screen does not need later, or take it out; then build again.`,
  )
  process.exit(1)
}
