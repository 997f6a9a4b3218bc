import type { Progress } from './cluster.ts'

/** Prints `what` if the work is still running after a second, so that the screen is never silent for long. */
export async function slowly<T>(progress: Progress, what: string, work: () => Promise<T>): Promise<T> {
  const timer = setTimeout(() => progress(`${what} …`), 1000)
  try {
    return await work()
  } finally {
    clearTimeout(timer)
  }
}
