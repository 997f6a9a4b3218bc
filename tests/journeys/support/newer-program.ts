import { createHash } from 'node:crypto'
import { cpSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const built = join(import.meta.dirname, '../../../apps/web/dist')

/** Writes the built faces into `folder` as the next version would be: another number on the bay's page, kept by its digest. */
export const writeNewerProgram = (folder: string, number: string): void => {
  cpSync(built, folder, { recursive: true })
  const page = join(folder, 'bay.html')
  const html = readFileSync(page, 'utf8')
  const next = html.replace(/(<meta name="version" content=")[^+"]+/, `$1${number}`)
  const worker = join(folder, 'bay-worker.js')
  const listed = readFileSync(worker, 'utf8')
  const renewed = listed
    .replace(digestOf(html, 'sha384', 'base64'), digestOf(next, 'sha384', 'base64'))
    .replace(digestOf(html, 'sha256', 'hex'), digestOf(next, 'sha256', 'hex'))
  if (next === html || renewed === listed) throw new Error(`${built} holds no bay that says its version.`)
  writeFileSync(page, next)
  writeFileSync(worker, renewed)
}

const digestOf = (text: string, algorithm: 'sha256' | 'sha384', encoding: 'hex' | 'base64'): string =>
  createHash(algorithm).update(text).digest(encoding)
