import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buffer } from 'node:stream/consumers'
import { zstdDecompressSync } from 'node:zlib'
import { Decrypter } from 'age-encryption'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { writeArchive } from './archive-writer.ts'
import { makeBackupKey, readIdentities, readRecipients } from './backup-key.ts'
import { clearUnfinished } from './clear-unfinished.ts'
import { readTar } from './read-tar.ts'
import { readSealed, writeSealed } from './sealed-file.ts'

let folder: string
let identity: string
let recipients: string[]
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bayledger-sealed-'))
  identity = (await makeBackupKey(folder)).identity
  recipients = await readRecipients(folder)
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** The same every time, and nothing that a compressor could make smaller. */
const noise = (bytes: number): Buffer =>
  Buffer.concat(
    Array.from({ length: Math.ceil(bytes / 32) }, (_, at) => createHash('sha256').update(`${at}`).digest()),
  ).subarray(0, bytes)

const photo = noise(300_000)
const made = async (): Promise<string> => {
  await writeArchive({ folder, nameOf: () => 'shop.age' }, recipients, async (archive) => {
    await archive.addFolder('postgres/pg_wal')
    await archive.addBytes('signing/key.pem', Buffer.from('the key\n'))
    await archive.addFile('postgres/base/1', 1024, pieces(Buffer.from('shorter than said')))
    await archive.addFile('postgres/base/2', photo.length, pieces(photo))
  })
  return join(folder, 'shop.age')
}

async function* pieces(content: Uint8Array) {
  for (let at = 0; at < content.length; at += 7_000) yield content.subarray(at, at + 7_000)
}

const readBack = async (file: string, keys: readonly string[] = [identity]) => {
  const found: Record<string, string> = {}
  for await (const { path, kind, content } of readTar(readSealed(file, keys)))
    found[path] = kind === 'folder' ? 'a folder' : (await buffer(content)).toString('latin1')
  return found
}

describe('a sealed archive', () => {
  it('gives back what was put in, with nothing readable outside', async () => {
    const file = await made()
    expect(await readBack(file)).toEqual({
      'postgres/pg_wal': 'a folder',
      'signing/key.pem': 'the key\n',
      'postgres/base/1': 'shorter than said'.padEnd(1024, '\0'),
      'postgres/base/2': photo.toString('latin1'),
    })
    expect(readFileSync(file, 'latin1')).toMatch(/^age-encryption\.org\/v1\n-> X25519 /)
    expect(readFileSync(file, 'latin1')).not.toContain('the key')
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([])
  })

  // The archive is checked by the system's own tar: the format is POSIX ustar, not ours.
  it('is an archive that tar reads, behind age and Zstandard', async () => {
    const decrypter = new Decrypter()
    decrypter.addIdentity(identity)
    const tar = zstdDecompressSync(await decrypter.decrypt(readFileSync(await made())))
    execFileSync('tar', ['-xf', '-', '-C', folder], { input: tar })
    expect(readFileSync(join(folder, 'postgres/base/2')).equals(photo)).toBe(true)
    expect(readFileSync(join(folder, 'signing/key.pem'), 'utf8')).toBe('the key\n')
  })

  it('says so when it was cut short, at whatever place', async () => {
    const file = await made()
    const whole = readFileSync(file)
    for (const bytes of [whole.length - 1, 65_536 * 2, 400]) {
      writeFileSync(file, whole)
      truncateSync(file, bytes)
      await expect(readBack(file)).rejects.toThrow(
        /is damaged: it was cut short or changed .* Use another copy/,
      )
    }
    truncateSync(file, 60)
    await expect(readBack(file)).rejects.toThrow(/cannot be opened: .* its beginning is damaged/)
  })

  it('says so when one byte was changed', async () => {
    const file = await made()
    const bytes = readFileSync(file)
    bytes[200_000] = (bytes[200_000] ?? 0) ^ 1
    writeFileSync(file, bytes)
    await expect(readBack(file)).rejects.toThrow(/is damaged/)
  })

  it('opens with no other key, and says that', async () => {
    const file = await made()
    const other = await makeBackupKey(folder)
    await expect(readBack(file, [other.identity])).rejects.toThrow(
      /was made for another key\. Give the identity/,
    )
    expect(await readBack(file, [other.identity, identity])).toHaveProperty(['signing/key.pem'])
  })

  it('is refused where the file is no such thing or not there', async () => {
    writeFileSync(join(folder, 'letter'), 'Dear shop')
    await expect(readBack(join(folder, 'letter'))).rejects.toThrow(/is not an encrypted backup/)
    await expect(readBack(join(folder, 'none'))).rejects.toThrow(/There is no file/)
  })

  it('leaves nothing behind when it cannot be finished', async () => {
    const failing = writeSealed(join(folder, 'x.age'), recipients, async (put) => {
      await put(photo)
      throw new Error('the database went away')
    })
    await expect(failing).rejects.toThrow('the database went away')
    expect(readdirSync(folder)).toEqual(['backup-recipients.txt'])
    // The largest number that Linux gives to a process is 2^22: this one was killed.
    writeFileSync(join(folder, 'unfinished-4194305-0a1b2c3d.part'), '')
    writeFileSync(join(folder, `unfinished-${process.pid}-0a1b2c3d.part`), '')
    clearUnfinished(folder)
    expect(readdirSync(folder)).toEqual(['backup-recipients.txt', `unfinished-${process.pid}-0a1b2c3d.part`])
  })
})

describe('the key for backups', () => {
  it('is kept as a recipient only; its identity is read from a file with comments', () => {
    expect(readFileSync(join(folder, 'backup-recipients.txt'), 'utf8')).toBe(`${recipients[0]}\n`)
    const file = join(folder, 'key.txt')
    writeFileSync(file, `# kept in the safe\n\n${identity}\n`)
    expect(readIdentities(file)).toEqual([identity])
    writeFileSync(file, `${recipients[0]}\n`)
    expect(() => readIdentities(file)).toThrow(/holds no identity\. It is the line that begins with AGE-/)
    expect(() => readIdentities(join(folder, 'none'))).toThrow(/There is no key file/)
  })

  it('is refused where its file was damaged, and missing where none was made', async () => {
    writeFileSync(join(folder, 'backup-recipients.txt'), 'age1nonsense\n')
    await expect(readRecipients(folder)).rejects.toThrow(/holds a line that is no recipient/)
    expect(await readRecipients(join(folder, 'elsewhere'))).toEqual([])
  })
})
