import { randomUUID } from 'node:crypto'
import type { CsvPreview } from '@bayledger/contract/csv'
import type { Caller } from './app.ts'

const file = { 'content-type': 'application/octet-stream' }

/** One list of a shop as CSV: written, previewed, and read back by one person. */
export const csvCaller = (caller: Caller, path: string) => {
  const preview = async (text: string): Promise<CsvPreview> =>
    (await caller.call('post', `${path}/import/preview`, file).send(Buffer.from(text)).expect(200)).body
  const apply = (text: string, digest: string, refused: 'leave-out' | 'stop' = 'leave-out') =>
    caller
      .call('post', `${path}/import?digest=${digest}&refused=${refused}`, {
        ...file,
        'idempotency-key': randomUUID(),
      })
      .send(Buffer.from(text))
  return {
    written: async (): Promise<string> => (await caller.get(`${path}.csv`).expect(200)).text,
    preview,
    apply,
    /** Previews a file and does what the preview shows. */
    take: async (text: string) => {
      const shown = await preview(text)
      await apply(text, shown.digest).expect(200)
      return shown
    },
  }
}

/** A file with other lines in it: `change` gets each line and gives what it becomes; `added` come last. */
export const csvWith = (text: string, change: (line: string) => string, added: readonly string[] = []) => {
  const [header = '', ...rows] = text.trimEnd().split('\r\n')
  return [header, ...rows.map(change), ...added].join('\r\n')
}
