/** How often the parent is looked at. */
const lookEveryMs = 250

/**
 * Calls `stop` once the parent process is gone, where `npm start` or `npm run dev` began this one. npm passes SIGTERM to
 * the shell between them alone, which ends without passing it on: this process would stay behind, and its database too.
 */
export const endWithNpm = (stop: () => void): void => {
  if (!['start', 'dev'].includes(process.env.npm_lifecycle_event ?? '')) return
  const parent = process.ppid
  const timer = setInterval(() => {
    if (process.ppid === parent) return
    clearInterval(timer)
    stop()
  }, lookEveryMs)
  timer.unref()
}
