/** Forward secrecy and authenticated encryption only, as RFC 9325, section 4.2, recommends for TLS 1.2; TLS 1.3 has no others. */
const suites = [
  'TLS_AES_256_GCM_SHA384',
  'TLS_CHACHA20_POLY1305_SHA256',
  'TLS_AES_128_GCM_SHA256',
  'ECDHE-ECDSA-AES256-GCM-SHA384',
  'ECDHE-RSA-AES256-GCM-SHA384',
  'ECDHE-ECDSA-CHACHA20-POLY1305',
  'ECDHE-RSA-CHACHA20-POLY1305',
  'ECDHE-ECDSA-AES128-GCM-SHA256',
  'ECDHE-RSA-AES128-GCM-SHA256',
]

/** How the service speaks TLS with its certificate: 1.3 first, 1.2 at least, by suites that we name and not by Node's usual ones. */
export const tlsWith = (certificate: { readonly cert: string; readonly key: string }) =>
  ({
    ...certificate,
    minVersion: 'TLSv1.2',
    maxVersion: 'TLSv1.3',
    ciphers: suites.join(':'),
    honorCipherOrder: true,
  }) as const
