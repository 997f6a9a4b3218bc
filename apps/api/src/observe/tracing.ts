import { type Context, ROOT_CONTEXT, SpanKind, SpanStatusCode, TraceFlags, trace } from '@opentelemetry/api'
import type { Answered } from './answered.ts'

export type Tracing = {
  readonly answered: (request: Answered) => void
  /** Sends what was gathered, and ends. */
  readonly stop: () => Promise<void>
}

/**
 * A span for each answered request, sent by OTLP over HTTP to `endpoint` (`…/v1/traces`). Names and attributes are those of the
 * OpenTelemetry semantic conventions for HTTP. The libraries are loaded only here, where somebody wants them.
 */
export const openTracing = async (endpoint: string): Promise<Tracing> => {
  const [{ BatchSpanProcessor, TracerProvider }, { OTLPTraceExporter }, { resourceFromAttributes }] =
    await Promise.all([
      import('@opentelemetry/sdk-trace'),
      import('@opentelemetry/exporter-trace-otlp-http'),
      import('@opentelemetry/resources'),
    ])
  const provider = new TracerProvider({
    resource: resourceFromAttributes({ 'service.name': 'bayledger' }),
    spanProcessors: [new BatchSpanProcessor({ exporter: new OTLPTraceExporter({ url: endpoint }) })],
  })
  const tracer = provider.getTracer('bayledger')
  return {
    answered: ({ method, route, status, seconds, requestId, traceparent }) => {
      const end = Date.now()
      const span = tracer.startSpan(
        `${method} ${route}`,
        {
          kind: SpanKind.SERVER,
          startTime: end - seconds * 1000,
          attributes: {
            'http.request.method': method,
            'http.route': route,
            'http.response.status_code': status,
            'bayledger.request_id': requestId,
          },
        },
        callerOf(traceparent),
      )
      if (status >= 500) span.setStatus({ code: SpanStatusCode.ERROR })
      span.end(end)
    },
    stop: () => provider.shutdown(),
  }
}

/** The caller's span, read from `traceparent` as W3C Trace Context defines version 00 of it. */
const callerOf = (traceparent: string | null): Context => {
  const [, traceId, spanId, flags] =
    traceparent?.match(/^00-([0-9a-f]{32})-([0-9a-f]{16})-([0-9a-f]{2})$/) ?? []
  if (traceId === undefined || spanId === undefined || flags === undefined) return ROOT_CONTEXT
  const traceFlags = Number.parseInt(flags, 16) & TraceFlags.SAMPLED
  return trace.setSpanContext(ROOT_CONTEXT, { traceId, spanId, traceFlags, isRemote: true })
}
