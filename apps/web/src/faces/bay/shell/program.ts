/** Which program this page is: the version and a digest of its files, as "0.1.0+bcc2bcaf". The build writes it in. */
export const programVersion = (): string =>
  document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? ''

/**
 * Has the browser keep the bay on this tablet, so that it opens without a network. `null` where the browser cannot: the
 * address is neither https nor this machine.
 */
export const keepOnTablet = async (): Promise<ServiceWorkerRegistration | null> =>
  'serviceWorker' in navigator
    ? navigator.serviceWorker.register('/bay-worker.js', { scope: '/bay', updateViaCache: 'none' })
    : null

/**
 * Whether the bay is on this tablet whole, so that no screen needs the network. A browser that keeps no program never waits for
 * one.
 */
export const isKeptWhole = (): boolean =>
  !('serviceWorker' in navigator) || navigator.serviceWorker.controller !== null

/** Calls back whenever another program serves this page, the first one among them; gives what ends that. */
export const onServed = (served: () => void): (() => void) => {
  if (!('serviceWorker' in navigator)) return () => undefined
  const { serviceWorker } = navigator
  serviceWorker.addEventListener('controllerchange', served)
  return () => serviceWorker.removeEventListener('controllerchange', served)
}

/** Resolves to the newer program that waits to take over; `null` where there is none, or the server is out of reach. */
export const newerProgram = async (
  registration: ServiceWorkerRegistration,
): Promise<ServiceWorker | null> => {
  await registration.update().catch(() => undefined)
  if (registration.installing !== null) await settled(registration.installing)
  return registration.waiting
}

/** Resolves when a program is on the tablet whole, or was given up. */
const settled = (worker: ServiceWorker): Promise<void> =>
  new Promise((resolve) => {
    const look = () => {
      if (worker.state === 'installing') return
      worker.removeEventListener('statechange', look)
      resolve()
    }
    worker.addEventListener('statechange', look)
    look()
  })

/** Calls back when a newer program serves this page than the one that it was loaded from. */
export const onTakenOver = (isTaken: () => void): void => {
  let isServed = isKeptWhole()
  onServed(() => {
    // The first program that a tablet keeps is the very one that this page was loaded from.
    if (isServed) isTaken()
    isServed = true
  })
}
