/// <reference lib="webworker" />
import { createHandlerBoundToURL, type PrecacheEntry, precacheAndRoute } from 'workbox-precaching'
import { NavigationRoute, registerRoute } from 'workbox-routing'

declare const self: ServiceWorkerGlobalScope
/** The bay's files, each with the digest of what it holds; the build writes them in. */
declare const __BAY_SHELL__: PrecacheEntry[]

/**
 * Keeps the bay's own files on the tablet, so that it opens without a network. A file that does not have its digest, as the
 * answer of a network that wants a sign-in first, is not kept, and then this worker is not installed at all. It answers
 * nothing else: neither the service, nor the desk, nor a customer's page.
 */
precacheAndRoute(__BAY_SHELL__)
registerRoute(new NavigationRoute(createHandlerBoundToURL('/bay.html')))

// The first worker serves the page that brought it; a newer one waits until that page says that no step is open.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))
self.addEventListener('message', ({ data }) => {
  if (data === 'take over') void self.skipWaiting()
})
