import { keepCompiled } from '../keep-compiled.ts'

/** The service alone, on faces that are built already; `npm run dev` restarts it when a file that it imports changes. */
keepCompiled()
const { serve } = await import('../serve.ts')
await serve(Promise.resolve(), performance.now())
