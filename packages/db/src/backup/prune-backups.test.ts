import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { backupName, findBackup, listBackups, logFolder } from './backup-folder.ts'
import { pruneBackups } from './prune-backups.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bayledger-backups-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const segment = (number: number): string =>
  `0000000100000000${number.toString(16).toUpperCase().padStart(8, '0')}`
const keep = (at: string, log: { line: string; firstSegment: string } | null): void =>
  writeFileSync(join(folder, backupName(new Date(at), log)), 'sealed')
const days = (): string[] => listBackups(folder).map(({ at }) => at.toISOString().slice(0, 10))

/** A backup each night of a year, one file of the log further each. */
const keepYear = (): void => {
  for (let day = 0; day < 365; day += 1)
    keep(new Date(Date.UTC(2026, 0, 1 + day, 5)).toISOString(), { line: 'ab', firstSegment: segment(day) })
}

describe('the rule by which backups are kept', () => {
  it('keeps the newest of each of the last days, weeks and months', () => {
    keepYear()
    expect(pruneBackups(folder, { days: 7, weeks: 5, months: 12 })).toHaveLength(365 - 21)
    expect(days()).toEqual([
      ...['2026-12-31', '2026-12-30', '2026-12-29', '2026-12-28', '2026-12-27', '2026-12-26', '2026-12-25'],
      // Sundays, with which weeks end, and the last days of months.
      ...['2026-12-20', '2026-12-13', '2026-12-06', '2026-11-30', '2026-10-31', '2026-09-30', '2026-08-31'],
      ...['2026-07-31', '2026-06-30', '2026-05-31', '2026-04-30', '2026-03-31', '2026-02-28', '2026-01-31'],
    ])
    expect(pruneBackups(folder, { days: 7, weeks: 5, months: 12 })).toEqual([])
  })

  it('always keeps the newest, and passes over files that are no backups', () => {
    keep('2026-11-28T05:00:00.000Z', null)
    keep('2026-11-29T05:00:00.000Z', null)
    writeFileSync(join(folder, 'holiday.jpg'), '')
    expect(pruneBackups(folder, { days: 0, weeks: 0, months: 0 })).toHaveLength(1)
    expect(readdirSync(folder).toSorted()).toEqual([
      'bayledger-2026-11-29T05-00-00-000Z-tables.age',
      'holiday.jpg',
    ])
  })

  it('counts backups of files and of tables apart', () => {
    keep('2026-11-29T05:00:00.000Z', { line: 'ab', firstSegment: segment(1) })
    keep('2026-11-29T14:00:00.000Z', null)
    expect(pruneBackups(folder, { days: 7, weeks: 0, months: 0 })).toEqual([])
  })

  it('keeps the log that continues a daily backup, and no other', () => {
    mkdirSync(logFolder(folder, 'ab'))
    mkdirSync(logFolder(folder, 'left'))
    writeFileSync(join(logFolder(folder, 'left'), `${segment(1)}.age`), '')
    for (const name of [`${segment(3)}.age`, `${segment(4)}.age`, `${segment(5)}.part.age`, 'file-x.age'])
      writeFileSync(join(logFolder(folder, 'ab'), name), '')
    keep('2026-11-28T05:00:00.000Z', { line: 'ab', firstSegment: segment(3) })
    keep('2026-11-29T05:00:00.000Z', { line: 'ab', firstSegment: segment(4) })
    pruneBackups(folder, { days: 1, weeks: 0, months: 2 })
    expect(readdirSync(logFolder(folder, 'ab')).toSorted()).toEqual([
      `${segment(4)}.age`,
      `${segment(5)}.part.age`,
      'file-x.age',
    ])
    expect(existsSync(logFolder(folder, 'left'))).toBe(false)
  })
})

describe('finding a backup', () => {
  it('takes the newest of a folder, or the newest before a moment', () => {
    keep('2026-11-28T05:00:00.000Z', null)
    keep('2026-11-29T05:00:00.000Z', { line: 'ab', firstSegment: segment(4) })
    expect(findBackup(folder, null)).toMatchObject({ log: { line: 'ab', firstSegment: segment(4) } })
    expect(findBackup(folder, new Date('2026-11-29T04:59:00Z'))).toMatchObject({ log: null })
    expect(() => findBackup(folder, new Date('2026-11-01T00:00:00Z'))).toThrow(/is from before that moment/)
    expect(() => findBackup(join(folder, 'none'), null)).toThrow(/There is no backup/)
  })
})
