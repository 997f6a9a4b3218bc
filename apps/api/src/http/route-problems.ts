import type { Endpoint } from '@bayledger/contract/endpoint'
import type { ErrorCode } from '@bayledger/contract/errors'

/** Every problem that a route may answer: its own, and those that follow from what it takes and whom it lets in. */
export const problemsOf = (endpoint: Endpoint): ErrorCode[] => {
  const writes = endpoint.method !== 'GET'
  const codes: ErrorCode[] = [
    ...endpoint.problems,
    'TOO_MANY_REQUESTS',
    'SERVICE_UNAVAILABLE',
    'INTERNAL_FAULT',
    'HEADERS_TOO_LARGE',
    'HOST_UNKNOWN',
    'REQUEST_TOO_SLOW',
    ...(endpoint.params ? (['ADDRESS_UNREADABLE', 'ADDRESS_TOO_LONG'] as const) : []),
    ...accessProblems[endpoint.access.who],
    ...('proof' in endpoint.access ? (['PROOF_NEEDED'] as const) : []),
    ...(writes ? (['REQUEST_FROM_ELSEWHERE'] as const) : []),
    ...(endpoint.body
      ? ([
          'REQUEST_UNREADABLE',
          'REQUEST_TOO_LARGE',
          'REQUEST_NOT_JSON',
          'REQUEST_COMPRESSED',
          'FIELDS_INVALID',
        ] as const)
      : []),
    // A path or query that cannot be read is refused before anything else is.
    ...(endpoint.params || endpoint.query || writes
      ? ([
          'REQUEST_UNREADABLE',
          'REQUEST_NOT_JSON',
          'REQUEST_COMPRESSED',
          'REQUEST_TOO_LARGE',
          'FIELDS_INVALID',
        ] as const)
      : []),
    ...(endpoint.ifMatch ? (['VERSION_MISSING', 'VERSION_STALE', 'FIELDS_INVALID'] as const) : []),
    ...(endpoint.once
      ? (['IDEMPOTENCY_KEY_MISSING', 'IDEMPOTENCY_KEY_REUSED', 'FIELDS_INVALID'] as const)
      : []),
  ]
  return [...new Set(codes)]
}

const accessProblems = {
  public: [],
  device: ['DEVICE_UNKNOWN', 'SESSION_EXPIRED', 'SIGN_IN_UNFINISHED'],
  staff: ['SESSION_MISSING', 'SESSION_EXPIRED', 'ACCESS_REFUSED', 'SIGN_IN_UNFINISHED'],
  desk: ['SESSION_MISSING', 'SESSION_EXPIRED', 'ACCESS_REFUSED', 'SIGN_IN_UNFINISHED'],
  'customer-link': ['LINK_REFUSED'],
} as const satisfies Record<Endpoint['access']['who'], readonly ErrorCode[]>
