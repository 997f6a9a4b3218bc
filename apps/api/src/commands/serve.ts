import { serve } from '../serve.ts'

/** The service alone, on faces that are built already; `npm run dev` restarts it when a file that it imports changes. */
await serve(Promise.resolve(), performance.now())
