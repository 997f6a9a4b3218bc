import type { Progress } from './cluster.ts'

/** Says `what` when the work is still running after a second, so that nobody looks at a silent screen. */
export async function slowly<T>(progress: Progress, what: string, work: () => Promise<T>): Promise<T> {
  const timer = setTimeout(() => progress(`${what} …`), 1000)
  try {
    return await work()
  } finally {
    clearTimeout(timer)
  }
}
