import { QueryClientProvider } from '@tanstack/react-query'
import { createBrowserRouter } from 'react-router'
import { RouterProvider } from 'react-router/dom'
import { patterns } from '../../lib/paths.ts'
import { DeskLayout } from './layout.tsx'
import { deskQueryClient } from './query-client.ts'
import { DeskFaultRoute } from './routes/desk-fault.tsx'
import { DeskOrderRoute } from './routes/desk-order.tsx'
import { NoOrderRoute } from './routes/no-order.tsx'
import { SignInRoute } from './routes/sign-in.tsx'
import { WriteUpRoute } from './routes/write-up.tsx'

const router = createBrowserRouter([
  { path: patterns.deskSignIn, element: <SignInRoute />, errorElement: <DeskFaultRoute /> },
  {
    element: <DeskLayout />,
    errorElement: <DeskFaultRoute />,
    children: [
      {
        errorElement: <DeskFaultRoute />,
        children: [
          { path: patterns.desk, element: <NoOrderRoute /> },
          { path: patterns.writeUp, element: <WriteUpRoute /> },
          { path: patterns.deskOrder, element: <DeskOrderRoute /> },
        ],
      },
    ],
  },
])

export function DeskApp() {
  return (
    <QueryClientProvider client={deskQueryClient}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  )
}
