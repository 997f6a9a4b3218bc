import { QueryClientProvider } from '@tanstack/react-query'
import { useEffect } from 'react'
import { createBrowserRouter } from 'react-router'
import { RouterProvider } from 'react-router/dom'
import { patterns } from '../../lib/paths.ts'
import { StatusLine } from '../../ui/sentence.tsx'
import { BayLayout } from './layout.tsx'
import { bayQueryClient } from './query-client.ts'
import { BayFaultRoute } from './routes/bay-fault.tsx'
import { MyVehiclesRoute } from './routes/my-vehicles.tsx'
import { NoSuchPageRoute } from './routes/no-such-page.tsx'
import { BayDoor } from './session/bay-door.tsx'

/** One vehicle's screens, loaded behind the list of vehicles, which is what a tablet shows first. */
const loadOrderRoute = async () => {
  const { BayOrderRoute } = await import('./routes/bay-order.tsx')
  return { Component: BayOrderRoute }
}

/** A tablet is enrolled once. */
const loadEnrollRoute = async () => {
  const { EnrollRoute } = await import('./routes/enroll.tsx')
  return { Component: EnrollRoute }
}

const router = createBrowserRouter([
  {
    element: <BayLayout />,
    errorElement: <BayFaultRoute />,
    children: [
      {
        path: patterns.enroll,
        lazy: loadEnrollRoute,
        hydrateFallbackElement: <StatusLine>Opening …</StatusLine>,
      },
      {
        element: <BayDoor />,
        errorElement: <BayFaultRoute />,
        children: [
          { path: patterns.bay, element: <MyVehiclesRoute /> },
          {
            path: patterns.bayOrder,
            lazy: loadOrderRoute,
            hydrateFallbackElement: <StatusLine>Opening the order …</StatusLine>,
          },
          { path: '*', element: <NoSuchPageRoute /> },
        ],
      },
    ],
  },
])

export function BayApp() {
  // A vehicle may be opened after the network is gone, so its screens are fetched while it is there. Where that fails,
  // the route tries again and says so.
  useEffect(() => void loadOrderRoute().catch(() => undefined), [])
  return (
    <QueryClientProvider client={bayQueryClient}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  )
}
