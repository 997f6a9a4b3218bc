import { mkdir, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Outcome, TextMessage } from './carrier.ts'

/**
 * Puts each text into a folder as one JSON file, from which a program of the shop's own choice takes it. A file has its
 * message's id for a name and appears whole; written again it is the same file.
 */
export const folderCarrier =
  (folder: string) =>
  async ({ id, createdAt, to, text }: TextMessage): Promise<Outcome> => {
    const file = join(folder, `${id}.json`)
    try {
      await mkdir(folder, { recursive: true })
      await writeFile(`${file}.part`, `${JSON.stringify({ id, createdAt, to, text }, null, 2)}\n`)
      await rename(`${file}.part`, file)
      return { became: 'handed-over', words: `${id}.json` }
    } catch (error) {
      return { became: 'later', words: (error as Error).message }
    }
  }
