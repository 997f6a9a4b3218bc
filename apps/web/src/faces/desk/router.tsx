import { QueryClientProvider } from '@tanstack/react-query'
import { useEffect } from 'react'
import { createBrowserRouter } from 'react-router'
import { RouterProvider } from 'react-router/dom'
import { patterns, signInPath } from '../../lib/paths.ts'
import { StatusLine } from '../../ui/sentence.tsx'
import { AskForProof } from './ask-for-proof.tsx'
import { DeskLayout } from './layout.tsx'
import { createDeskQueryClient } from './query-client.ts'
import { DeskFaultRoute } from './routes/desk-fault.tsx'
import { NoOrderRoute } from './routes/no-order.tsx'
import { NoSuchPageRoute } from './routes/no-such-page.tsx'
import { SignInRoute } from './routes/sign-in.tsx'
import { TabletsRoute } from './routes/tablets.tsx'
import { TrayRoute } from './routes/tray.tsx'
import { WriteUpRoute } from './routes/write-up.tsx'

/** The sheet of an order, loaded behind the list of orders, which is what the desk shows first. */
const loadOrderRoute = async () => {
  const { DeskOrderRoute } = await import('./routes/desk-order.tsx')
  return { Component: DeskOrderRoute }
}

const loadVehicleRoute = async () => {
  const { VehicleRoute } = await import('./vehicle/vehicle-page.tsx')
  return { Component: VehicleRoute }
}

const loadCustomerRoute = async () => {
  const { CustomerRoute } = await import('./customer/customer-page.tsx')
  return { Component: CustomerRoute }
}

/** What the shop knows about itself, which few open and seldom. */
const loadShopRoute = async () => {
  const { ShopRoute } = await import('./shop/shop-route.tsx')
  return { Component: ShopRoute }
}

const loadDayRoute = async () => {
  const { DayRoute } = await import('./routes/day.tsx')
  return { Component: DayRoute }
}

const loadWallRoute = async () => {
  const { WallRoute } = await import('./wall/wall-route.tsx')
  return { Component: WallRoute }
}

const loadPrintRoute = async () => {
  const { PrintRoute } = await import('./print/print-route.tsx')
  return { Component: PrintRoute }
}

const loadOwnRecordRoute = async () => {
  const { OwnRecordRoute } = await import('./shop/own-record.tsx')
  return { Component: OwnRecordRoute }
}

/** Needed once in the life of a shop. */
const loadFirstShopRoute = async () => {
  const { FirstShopRoute } = await import('./first-shop/first-shop.tsx')
  return { Component: FirstShopRoute }
}

const router = createBrowserRouter([
  { path: patterns.deskSignIn, element: <SignInRoute />, errorElement: <DeskFaultRoute /> },
  {
    path: patterns.firstShop,
    lazy: loadFirstShopRoute,
    errorElement: <DeskFaultRoute />,
    hydrateFallbackElement: <StatusLine>Opening the first page …</StatusLine>,
  },
  {
    path: patterns.wall,
    lazy: loadWallRoute,
    errorElement: <DeskFaultRoute />,
    hydrateFallbackElement: <StatusLine>Opening the floor for the wall.</StatusLine>,
  },
  {
    path: patterns.print,
    lazy: loadPrintRoute,
    errorElement: <DeskFaultRoute />,
    hydrateFallbackElement: <StatusLine>Opening the page to print.</StatusLine>,
  },
  {
    element: <DeskLayout />,
    errorElement: <DeskFaultRoute />,
    children: [
      {
        errorElement: <DeskFaultRoute />,
        children: [
          { path: patterns.desk, element: <NoOrderRoute /> },
          { path: patterns.writeUp, element: <WriteUpRoute /> },
          { path: patterns.tray, element: <TrayRoute /> },
          { path: patterns.tablets, element: <TabletsRoute /> },
          {
            path: patterns.deskOrder,
            lazy: loadOrderRoute,
            hydrateFallbackElement: <StatusLine>Opening the order …</StatusLine>,
          },
          {
            path: patterns.vehicle,
            lazy: loadVehicleRoute,
            hydrateFallbackElement: <StatusLine>Opening the vehicle’s page.</StatusLine>,
          },
          {
            path: patterns.customer,
            lazy: loadCustomerRoute,
            hydrateFallbackElement: <StatusLine>Opening the customer’s page.</StatusLine>,
          },
          {
            path: patterns.shop,
            lazy: loadShopRoute,
            hydrateFallbackElement: <StatusLine>Opening the shop’s pages.</StatusLine>,
          },
          {
            path: patterns.day,
            lazy: loadDayRoute,
            hydrateFallbackElement: <StatusLine>Opening the day.</StatusLine>,
          },
          {
            path: patterns.ownRecord,
            lazy: loadOwnRecordRoute,
            hydrateFallbackElement: <StatusLine>Opening your own page.</StatusLine>,
          },
          { path: '*', element: <NoSuchPageRoute /> },
        ],
      },
    ],
  },
])

const queryClient = createDeskQueryClient(() => {
  const { pathname, search } = router.state.location
  if (pathname !== patterns.deskSignIn) void router.navigate(signInPath(pathname + search), { replace: true })
})

export function DeskApp() {
  // Fetched early, so that the first order opens at once. Where that fails, the route tries again and says so.
  useEffect(() => void loadOrderRoute().catch(() => undefined), [])
  return (
    <QueryClientProvider client={queryClient}>
      <RouterProvider router={router} />
      <AskForProof />
    </QueryClientProvider>
  )
}
