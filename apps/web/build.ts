import { rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { build } from 'vite'
import { customerBuild, staffBuild } from './builds.ts'
import { compressFiles, isCompressible } from './compressed.ts'
import { faces, firstLoadsFile, outFolder } from './faces.ts'
import { type Output, scriptsOfFirstLoad } from './first-load.ts'

/**
 * Builds the three faces. What is named for what it holds is compressed by compress.ts, which may run while it is served. What
 * keeps its name, as the bay's worker does, is compressed here: no copy of an earlier build may be beside it.
 */
await rm(outFolder, { recursive: true, force: true })
const outputs = (await Promise.all([staffBuild, customerBuild].map(buildOnce))).flat()
const firstLoads = faces.map((face) => [face, scriptsOfFirstLoad(outputs, `${face}.html`)])
await writeFile(join(outFolder, firstLoadsFile), JSON.stringify(Object.fromEntries(firstLoads)))
const files = outputs.map(({ fileName }) => fileName).filter(isCompressible)
await compressFiles(
  outFolder,
  files.filter((file) => !file.startsWith('assets/')),
)

async function buildOnce(config: typeof staffBuild): Promise<Output[]> {
  const result = await build(config)
  if (!('output' in result) && !Array.isArray(result))
    throw new Error('The build is watching instead of building.')
  return [result].flat().flatMap((one) => one.output)
}
