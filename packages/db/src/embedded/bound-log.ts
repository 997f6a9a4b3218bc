import { copyFileSync, existsSync, statSync, truncateSync } from 'node:fs'

const LARGEST_LOG_BYTES = 10_000_000
const LOOK_EVERY_MS = 60_000

/**
 * Keeps PostgreSQL's log from filling the disk: one that is larger than `largest` bytes becomes `….before`, in the place of the
 * one before it. PostgreSQL holds the file open and appends, so the file is copied and emptied; a line that it writes
 * between the two is lost.
 */
export function boundLog(log: string, largest: number = LARGEST_LOG_BYTES): void {
  if (!existsSync(log) || statSync(log).size <= largest) return
  copyFileSync(log, `${log}.before`)
  truncateSync(log)
}

/** Bounds the log each minute until it is stopped; one that cannot be bounded now is looked at again. */
export function keepLogBounded(log: string, progress: (line: string) => void): () => void {
  const timer = setInterval(() => {
    try {
      boundLog(log)
    } catch (error) {
      progress(`PostgreSQL's log cannot be shortened: ${error instanceof Error ? error.message : error}`)
    }
  }, LOOK_EVERY_MS)
  timer.unref()
  return () => clearInterval(timer)
}
