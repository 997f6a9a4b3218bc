/** PEM text (RFC 7468) of DER bytes. */
export const pemOf = (label: string, der: Uint8Array): string => {
  const lines =
    Buffer.from(der)
      .toString('base64')
      .match(/.{1,64}/g) ?? []
  return `-----BEGIN ${label}-----\n${lines.join('\n')}\n-----END ${label}-----\n`
}
