import { QueryClientProvider } from '@tanstack/react-query'
import { createBrowserRouter } from 'react-router'
import { RouterProvider } from 'react-router/dom'
import { patterns } from '../../lib/paths.ts'
import { BayLayout } from './layout.tsx'
import { bayQueryClient } from './query-client.ts'
import { BayFaultRoute } from './routes/bay-fault.tsx'
import { BayOrderRoute } from './routes/bay-order.tsx'
import { EnrollRoute } from './routes/enroll.tsx'
import { MyVehiclesRoute } from './routes/my-vehicles.tsx'
import { NoSuchPageRoute } from './routes/no-such-page.tsx'
import { BayDoor } from './session/bay-door.tsx'

const router = createBrowserRouter([
  {
    element: <BayLayout />,
    errorElement: <BayFaultRoute />,
    children: [
      { path: patterns.enroll, element: <EnrollRoute /> },
      {
        element: <BayDoor />,
        errorElement: <BayFaultRoute />,
        children: [
          { path: patterns.bay, element: <MyVehiclesRoute /> },
          { path: patterns.bayOrder, element: <BayOrderRoute /> },
          { path: '*', element: <NoSuchPageRoute /> },
        ],
      },
    ],
  },
])

export function BayApp() {
  return (
    <QueryClientProvider client={bayQueryClient}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  )
}
