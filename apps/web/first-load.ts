import { writeFile } from 'node:fs/promises'
import { promisify } from 'node:util'
import { brotliCompress, constants } from 'node:zlib'
import type { Rolldown } from 'vite'
import { outFolder } from './builds.ts'

export type Output = Rolldown.OutputChunk | Rolldown.OutputAsset

/**
 * File names of the scripts that a page needs before it shows anything: its entry and all that it imports
 * outright, at any depth. Throws if no entry was built for the page.
 */
export function scriptsOfFirstLoad(outputs: readonly Output[], page: string): string[] {
  const chunks = outputs.filter((output) => output.type === 'chunk')
  const entry = chunks.find((chunk) => chunk.isEntry && chunk.facadeModuleId?.endsWith(`/${page}`))
  if (entry === undefined) throw new Error(`No entry was built for ${page}.`)
  const byName = new Map(chunks.map((chunk) => [chunk.fileName, chunk]))
  const needed = new Set([entry.fileName])
  for (const fileName of needed) {
    for (const imported of byName.get(fileName)?.imports ?? []) needed.add(imported)
  }
  return [...needed]
}

/** Whether a face weighs more than it may; an unknown weight (NaN) is too heavy as well. */
export const isTooHeavy = (kib: number, budgetKiB: number): boolean => Number.isNaN(kib) || kib > budgetKiB

/**
 * Writes a brotli copy (`.br`) beside every script, stylesheet, drawing and WebAssembly module, for the server to send as it is.
 * Gives the compressed size in bytes by file name.
 */
export async function compressAssets(outputs: readonly Output[]): Promise<Map<string, number>> {
  const texts = outputs.filter((output) => /\.(js|css|svg|wasm)$/.test(output.fileName))
  const sizes = await Promise.all(
    texts.map(async (output) => {
      const text = Buffer.from(output.type === 'chunk' ? output.code : output.source)
      const packed = await promisify(brotliCompress)(text, {
        params: { [constants.BROTLI_PARAM_SIZE_HINT]: text.length },
      })
      await writeFile(`${outFolder}${output.fileName}.br`, packed)
      return [output.fileName, packed.length] as const
    }),
  )
  return new Map(sizes)
}
