import { readFile, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, constants } from 'node:zlib'

/** Scripts, stylesheets, drawings and WebAssembly modules; pictures and fonts are compressed already. */
export const isCompressible = (file: string): boolean => /\.(js|css|svg|wasm)$/.test(file)

/**
 * Writes a brotli copy (`.br`) beside each file of the folder, for the server to send as it is. A copy is there whole or not at
 * all: the folder may be served meanwhile.
 */
export const compressFiles = async (folder: string, files: readonly string[]): Promise<void> => {
  await Promise.all(
    files.map(async (file, index) => {
      const bytes = await readFile(join(folder, file))
      const packed = await promisify(brotliCompress)(bytes, {
        params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length },
      })
      const unfinished = join(folder, `.${process.pid}-${index}`)
      await writeFile(unfinished, packed)
      await rename(unfinished, join(folder, `${file}.br`))
    }),
  )
}
