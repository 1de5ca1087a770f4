import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { complaint, type Read } from './complaint';
import type { Phrase } from './phrase';
import { largestFile } from './readJson';

/**
 * A small file carried in the part of an address that is never sent: `#roof=1.DATA.CHECK`. DATA is the file's text, packed
 * (RFC 1951) and in base64url; CHECK shows that nothing of it was lost or changed on the way.
 */

export const linkKinds = ['roof', 'assignment'] as const;
export type LinkKind = (typeof linkKinds)[number];
export type Linked = { readonly kind: LinkKind; readonly text: string };

const version = '1';
/** Characters. What is longer was not made here, and is not unpacked. */
export const longestLink = 24_000;

/** The fragment with its `#`. */
export const linkOf = ({ kind, text }: Linked): string => {
  const data = toUrl(deflateSync(utf8ToBytes(text), { level: 9 }));
  return `#${kind}=${version}.${data}.${checkOf(kind, data)}`;
};

/** What a fragment carries; undefined where it is none of ours; or why it cannot be read. */
export const readLink = (fragment: string): Read<Linked> | undefined => {
  const kind = linkKinds.find((one) => fragment.startsWith(`#${one}=`));
  if (!kind) return undefined;
  if (fragment.length > longestLink) return no(['linkLong'], ['linkAtMost', longestLink]);
  const [made, data, check, ...more] = fragment.slice(kind.length + 2).split('.');
  if (made !== undefined && /^\d{1,4}$/.test(made) && Number(made) > Number(version))
    return no(['linkNewer'], ['linkOlder']);
  if (made !== version || data === undefined || check === undefined || more.length > 0)
    return no(['linkShort'], ['linkWhole']);
  if (checkOf(kind, data) !== check) return no(['linkChanged'], ['linkWhole']);
  const text = unpacked(data);
  return text === undefined ? no(['linkPacked'], ['linkWhole']) : { ok: true, value: { kind, text } };
};

const no = (wrong: Phrase, accepted: Phrase): Read<never> => ({
  ok: false,
  complaints: [complaint('link', wrong, accepted)],
});

const checkOf = (kind: LinkKind, data: string): string =>
  bytesToHex(sha256(utf8ToBytes(`${kind}|${version}|${data}`))).slice(0, 10);

const toUrl = (bytes: Uint8Array): string =>
  btoa(strFromU8(bytes, true)).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');

/** Stops as soon as more comes out than any file of ours may hold. */
const unpacked = (data: string): string | undefined => {
  try {
    const bytes = strToU8(atob(data.replace(/-/g, '+').replace(/_/g, '/')), true);
    const chunks: Uint8Array[] = [];
    let size = 0;
    const inflate = new Inflate((chunk) => {
      size += chunk.length;
      if (size <= largestFile) chunks.push(chunk);
    });
    for (let at = 0; at < bytes.length && size <= largestFile; at += 512)
      inflate.push(bytes.subarray(at, at + 512), at + 512 >= bytes.length);
    if (size > largestFile) return undefined;
    const all = new Uint8Array(size);
    chunks.reduce((at, chunk) => (all.set(chunk, at), at + chunk.length), 0);
    return new TextDecoder('utf-8', { fatal: true }).decode(all);
  } catch {
    return undefined;
  }
};
