/** After so long it is done in any case. */
const longestWaitMilliseconds = 1_000

/** Resolves when the screen has nothing to do, or after a second: for work that nobody waits for. */
export const whenIdle = (): Promise<void> =>
  new Promise((resolve) => {
    if (globalThis.requestIdleCallback === undefined) setTimeout(resolve)
    else requestIdleCallback(() => resolve(), { timeout: longestWaitMilliseconds })
  })
