import { digestOf } from '../content/canonical';

/** The digest of a file's text, found beside the page where the browser can, so that thousands do not hold it up. */
export const fileKey = async (text: string): Promise<string> => {
  // Only pages that came safely, or from this very machine, may ask the browser.
  const { subtle } = globalThis.crypto as { readonly subtle?: SubtleCrypto };
  if (!subtle) return digestOf(text);
  // Of a text alone the canonical form is what the engine writes.
  const bytes = new TextEncoder().encode(JSON.stringify(text));
  const digest = new Uint8Array(await subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
};
