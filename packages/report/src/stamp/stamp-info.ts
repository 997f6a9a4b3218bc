import { ContentInfo, SignedData, TSTInfo } from 'pkijs'

const signedDataId = '1.2.840.113549.1.7.2'
/** id-ct-TSTInfo (RFC 3161, 2.4.2). */
export const stampInfoId = '1.2.840.113549.1.9.16.1.4'

/** A token opened: the signed envelope and what it says. `null` where the bytes are no token of one signer. */
export const readStampInfo = (
  token: Uint8Array,
): { readonly signed: SignedData; readonly info: TSTInfo } | null => {
  try {
    const content = ContentInfo.fromBER(Uint8Array.from(token))
    if (content.contentType !== signedDataId) return null
    const signed = new SignedData({ schema: content.content })
    const { eContentType, eContent } = signed.encapContentInfo
    if (eContentType !== stampInfoId || eContent === undefined || signed.signerInfos.length !== 1) return null
    return { signed, info: TSTInfo.fromBER(eContent.getValue()) }
  } catch {
    return null
  }
}
